import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { say } from '../../engine/words/index.ts';
import { placeAddress } from '../places/address.ts';
import { PLACES } from '../places/registry.ts';
import { useSessionState } from '../session/use-session.ts';

/** On a phone the line is longer than the screen: where she is must be in sight. */
const intoSight = (here: HTMLAnchorElement | null): void =>
  here?.scrollIntoView({ block: 'nearest', inline: 'nearest', behavior: 'instant' });

/** The places of the work as one line in her order; at the foot of a phone, along the top of a larger screen. */
export function PlacesLine({ order, place }: { readonly order: string; readonly place: string }): ReactNode {
  const child = useSessionState((state) => state.child);
  return (
    <nav className="places" aria-label={say('page.places', {}, 'in')}>
      {PLACES.map(({ id, path, word }) => (
        <Link
          key={id}
          ref={path === place ? intoSight : null}
          href={placeAddress(order, child, path)}
          className={path === place ? 'place place-here' : 'place'}
          aria-current={path === place ? 'page' : undefined}
        >
          {say(word, {}, 'in')}
        </Link>
      ))}
    </nav>
  );
}
