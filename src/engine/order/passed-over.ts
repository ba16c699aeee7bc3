/** Valibot passes over `prototype`, and finds the names that every object has in any list of fields. */
export const isPassedOver = (name: string): boolean => name === 'prototype' || name in Object.prototype;
