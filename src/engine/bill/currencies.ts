/**
 * Currencies by their codes of three letters and the number of decimals of their smallest part (ISO 4217:2015, list
 * one of its maintenance agency as of 2024; from memory, held against the list of the JavaScript engine in the tests).
 * Funds, precious metals and codes for testing are left out: nobody pays for a dress with them.
 */
const DECIMALS: Readonly<Record<number, string>> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF',
  2: `AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP
    CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR
    JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN
    NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP
    SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD YER ZAR ZMW ZWG`,
  3: 'BHD IQD JOD KWD LYD OMR TND',
};

const CURRENCIES: ReadonlyMap<string, number> = new Map(
  Object.entries(DECIMALS).flatMap(([decimals, codes]) =>
    codes.split(/\s+/).map((code): [string, number] => [code, Number(decimals)]),
  ),
);

/** A code of ISO 4217 in capital letters; made by `currencyOf` only. */
export type Currency = string & { readonly iso4217: true };

/** Every currency that can be reckoned in, by code. */
export const CURRENCY_CODES: readonly Currency[] = [...CURRENCIES.keys()].sort() as Currency[];

/**
 * Signs that are written before the amount and that a reader takes for one currency only where the code does not stand
 * by it. The dollar, the rupee and the pound of other countries keep their codes.
 */
const SIGNS: Readonly<Record<string, string>> = {
  EUR: '€',
  GBP: '£',
  GHS: 'GH₵',
  INR: '₹',
  JPY: '¥',
  NGN: '₦',
  USD: '$',
  ZAR: 'R',
};

/** The currency that a code or one of the known signs means; null for any other text. */
export function currencyOf(text: string): Currency | null {
  const plain = text.trim();
  const code = Object.keys(SIGNS).find((known) => SIGNS[known] === plain) ?? plain.toUpperCase();
  return CURRENCIES.has(code) ? (code as Currency) : null;
}

/** Digits after the point: 2 for the pound, 0 for the yen, 3 for the dinar of Kuwait. */
export function decimalsOf(currency: Currency): number {
  const decimals = CURRENCIES.get(currency);
  if (decimals === undefined) throw new Error(`No currency "${currency}"`);
  return decimals;
}

/** The sign of a currency, or its code where it has no sign of its own. */
export const signOf = (currency: Currency): string => SIGNS[currency] ?? currency;
