import type { Settings } from '../../store/index.ts';

/** Light, dark, or as the device has it. */
export function applyTheme(theme: Settings['theme']): void {
  const { dataset } = document.documentElement;
  if (theme === 'device') delete dataset.theme;
  else dataset.theme = theme;
}
