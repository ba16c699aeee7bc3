/** The two fonts of every sheet, as TrueType bytes. Noto Sans, SIL Open Font Licence 1.1 (assets/fonts/OFL.txt). */
export interface PaperFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}
