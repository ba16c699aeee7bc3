import { useEffect } from 'react';
import type { Session } from '../session/session.ts';

/** Ctrl+Z and Ctrl+Y (with Shift: redo). In a field that she is typing in, the field's own undo comes first. */
export function useKeys(session: Session): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if (event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) session.redo();
      else session.undo();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [session]);
}
