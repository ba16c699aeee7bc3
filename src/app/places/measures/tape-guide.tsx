import type { ReactNode } from 'react';
import { type BodyValue, NINETY_PERCENT } from '../../../engine/body/index.ts';
import {
  LANDMARKS,
  type LandmarkId,
  type MeasurePicture,
  measurePicture,
  type TakenId,
} from '../../../engine/sheet/index.ts';
import type { UnitSystem } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { pathData } from '../../parts/path-data.ts';
import { useUnits } from '../../session/use-session.ts';

/** Where the tape runs, how it is laid, and of a value that was filled in how sure it is and where it comes from. */
export function TapeGuide({
  id,
  value = null,
}: {
  readonly id: TakenId;
  readonly value?: BodyValue | null;
}): ReactNode {
  const units = useUnits();
  const picture = measurePicture(id);
  const how = say(`measure.${id}.how`, {}, units);
  const about = say(
    'measuring.picture',
    { view: { word: `measuring.view.${picture.view}` }, measure: { word: `measure.${id}` }, how },
    units,
  );
  const letters = new Set(picture.letters.map(({ letter }) => letter));
  const marked = (Object.entries(LANDMARKS) as [LandmarkId, string][]).filter(([, letter]) =>
    letters.has(letter),
  );
  return (
    <figure className="tape-guide">
      <TapePicture picture={picture} about={about} />
      <figcaption className="small">
        <p>{how}</p>
        {marked.map(([landmark, letter]) => (
          <p key={landmark}>
            <strong>
              {say('page.measures.letter', { letter, name: { word: `landmark.${landmark}` } }, units)}
            </strong>{' '}
            {say(`landmark.${landmark}.how`, {}, units)}
          </p>
        ))}
        {value !== null && value.from === 'estimated' && <Source value={value} units={units} />}
      </figcaption>
    </figure>
  );
}

function Source({
  value,
  units,
}: {
  readonly value: Extract<BodyValue, { from: 'estimated' }>;
  readonly units: UnitSystem;
}): ReactNode {
  const band = NINETY_PERCENT * value.spread;
  return (
    <p className="tape-source">
      <strong>{say('page.measures.source', {}, units)}</strong> {say(value.rule, {}, units)}{' '}
      {say('page.measures.band', { least: { mm: value.mm - band }, most: { mm: value.mm + band } }, units)}
    </p>
  );
}

/** Size of a letter, as a share of the height of the picture. */
const LETTER = 0.062;

function TapePicture({
  picture: { window, parts, letters },
  about,
}: {
  readonly picture: MeasurePicture;
  readonly about: string;
}): ReactNode {
  const { minX, minY, maxX, maxY } = window;
  const size = (maxY - minY) * LETTER;
  return (
    <svg
      className="tape-picture"
      viewBox={[minX, minY, maxX - minX, maxY - minY].join(' ')}
      role="img"
      aria-label={about}
    >
      {parts.map(({ look, path }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a picture keep their order.
        <path key={i} className={`tape-${look}`} d={pathData(path)} />
      ))}
      {letters.map(({ letter, at, aside }) => (
        <g key={`${letter} ${at.x}`} className="tape-letter">
          <circle cx={at.x} cy={at.y} r={size * 0.24} />
          <text x={at.x + aside.x * size} y={at.y + aside.y * size} fontSize={size} dy="0.36em">
            {letter}
          </text>
        </g>
      ))}
    </svg>
  );
}
