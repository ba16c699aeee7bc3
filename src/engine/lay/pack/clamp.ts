/** The value brought into `from..to`; with a step, onto the nearest `from + k * step` that lies within. */
export function clamp(value: number, from: number, to: number, step: number): number {
  const within = value > to ? Math.max(to, from) : Math.max(value, from);
  if (step === 0) return within;
  const most = Math.floor((to - from) / step + 1e-9);
  const k = Math.min(Math.round((within - from) / step), Math.max(0, most));
  return from + k * step;
}
