import type { ReactNode } from 'react';
export function Start(): ReactNode {
  return null;
}
