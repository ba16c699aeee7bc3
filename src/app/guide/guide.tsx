import { type ReactNode, useEffect, useState } from 'react';
import { Link } from 'wouter';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say, type WordKey } from '../../engine/words/index.ts';
import { afterFrame } from '../device/after-frame.ts';
import { useDevice } from '../device/device.tsx';
import { Button } from '../parts/button.tsx';
import { pathData } from '../parts/path-data.ts';
import { GUIDE_CHILD } from './guide-dress.ts';
import { GUIDE_PARTS, type GuidePart, type GuidePicture, guidePicture } from './guide-pictures.ts';
import '../look/guide.css';

/** What is said about each part, in its order; its caution, where someone could be hurt. */
const SAID: Readonly<Record<GuidePart, { readonly steps: readonly WordKey[]; readonly caution?: WordKey }>> =
  {
    measure: {
      steps: ['page.guide.measure.1', 'page.guide.measure.2', 'page.guide.measure.3'],
      caution: 'page.guide.measure.caution',
    },
    block: { steps: ['page.guide.block.1', 'page.guide.block.2', 'page.guide.block.3'] },
    'drop-shoulder': { steps: ['page.guide.drop-shoulder.1', 'page.guide.drop-shoulder.2'] },
    yoke: { steps: ['page.guide.yoke.1', 'page.guide.yoke.2'], caution: 'page.guide.yoke.caution' },
    lay: { steps: ['page.guide.lay.1', 'page.guide.lay.2'] },
    print: { steps: ['page.guide.print.1', 'page.guide.print.2'] },
    sew: {
      steps: ['page.guide.sew.1', 'page.guide.sew.2', 'page.guide.sew.3'],
      caution: 'page.guide.sew.caution',
    },
  };

/** How a dress is made, in short, with pictures that the engine draws while it is read. */
export function Guide(): ReactNode {
  const { units } = useDevice().settings;
  const pictures = usePictures(units);
  useEffect(() => {
    document.title = `${say('page.guide', {}, 'in')} - ${say('page.name', {}, 'in')}`;
  }, []);
  return (
    <main className="book guide">
      <div className="row row-wrap">
        <Button look="quiet" onPress={() => history.back()}>
          {say('page.guide.back', {}, 'in')}
        </Button>
        <Link href="/" className="button button-quiet">
          {say('page.to-book', {}, 'in')}
        </Link>
      </div>
      <h1>{say('page.guide.title', {}, 'in')}</h1>
      <p>{say('page.guide.about', { child: GUIDE_CHILD }, 'in')}</p>
      {GUIDE_PARTS.map((part) => {
        const { steps, caution } = SAID[part];
        return (
          <section key={part} className="part" aria-labelledby={`guide-${part}`}>
            <h2 id={`guide-${part}`}>{say(`page.guide.${part}`, {}, 'in')}</h2>
            <Picture
              picture={pictures.get(part) ?? null}
              about={say(`page.guide.${part}.picture`, {}, 'in')}
            />
            <ol className="guide-steps">
              {steps.map((step) => (
                <li key={step}>{say(step, {}, 'in')}</li>
              ))}
            </ol>
            {caution !== undefined && (
              <p className="guide-caution">
                <strong>{say('page.guide.caution', {}, 'in')}</strong> {say(caution, {}, 'in')}
              </p>
            )}
          </section>
        );
      })}
    </main>
  );
}

/** One picture after another, so that the words can be read at once. */
function usePictures(units: UnitSystem): ReadonlyMap<GuidePart, GuidePicture> {
  const [drawn, setDrawn] = useState<ReadonlyMap<GuidePart, GuidePicture>>(new Map());
  useEffect(() => {
    let stop = (): void => {};
    const next = ([part, ...rest]: readonly GuidePart[]): void => {
      if (part === undefined) return;
      stop = afterFrame(() => {
        const picture = guidePicture(part, units);
        setDrawn((before) => new Map(before).set(part, picture));
        next(rest);
      });
    };
    next(GUIDE_PARTS);
    return () => stop();
  }, [units]);
  return drawn;
}

/** Type of the words in a picture, as a share of its width. */
const TYPE = 0.032;

function Picture({
  picture,
  about,
}: {
  readonly picture: GuidePicture | null;
  readonly about: string;
}): ReactNode {
  if (picture === null)
    return <p className="guide-picture quiet">{say('page.guide.picture.draws', {}, 'in')}</p>;
  const { minX, minY, maxX, maxY } = picture.bounds;
  const margin = Math.max(maxX - minX, maxY - minY) * 0.04;
  const width = maxX - minX + 2 * margin;
  const box = [minX - margin, minY - margin, width, maxY - minY + 2 * margin];
  const size = Math.max(width, box[3] ?? 0) * TYPE;
  return (
    <figure className="guide-figure">
      <svg className="guide-picture" viewBox={box.join(' ')} role="img" aria-label={about}>
        {picture.lines.map(({ look, path }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a picture keep their order.
          <path key={i} className={`guide-${look}`} d={pathData(path)} />
        ))}
        {picture.words.map(({ text, at }) => (
          <text key={`${text} ${at.x} ${at.y}`} x={at.x} y={at.y} fontSize={size} dy="-0.3em">
            {text}
          </text>
        ))}
      </svg>
      <figcaption className="quiet small">{about}</figcaption>
    </figure>
  );
}
