import { type ReactNode, useId } from 'react';
import { pathBounds } from '../../../engine/geometry/index.ts';
import {
  FILL_GREYS,
  hatchLines,
  LINE_STYLES,
  type LineName,
  type Mark,
  type Page,
} from '../../../engine/sheet/index.ts';
import { pathData } from '../../parts/path-data.ts';

/**
 * What is printed on a page, as SVG in mm: the same marks that go into the PDF, in the same greys, since paper stays
 * paper in the dark too. Stands inside an `svg` element whose unit is 1 mm.
 */
export function PageMarks({ page }: { readonly page: Page }): ReactNode {
  const id = useId();
  return <Marks marks={page.marks} id={id} />;
}

function Marks({ marks, id }: { readonly marks: readonly Mark[]; readonly id: string }): ReactNode {
  // A page never changes its marks, so their places tell them apart.
  // biome-ignore lint/suspicious/noArrayIndexKey: see above.
  return marks.map((mark, i) => <OneMark key={i} mark={mark} id={`${id}-${i}`} />);
}

const ANCHORS = { left: 'start', centre: 'middle', right: 'end' } as const;

function OneMark({ mark, id }: { readonly mark: Mark; readonly id: string }): ReactNode {
  switch (mark.kind) {
    case 'stroke':
      return <path d={pathData(mark.path)} {...strokeLook(mark.line)} />;
    case 'fill':
      return <path d={pathData(mark.outline)} fill={grey(FILL_GREYS[mark.fill])} />;
    case 'hatch': {
      const lines = hatchLines(mark.hatch, mark.scale, pathBounds(mark.outline));
      if (lines.length === 0) return null;
      return (
        <>
          <clipPath id={id}>
            <path d={pathData(mark.outline)} />
          </clipPath>
          <path d={lines.map(pathData).join('')} clipPath={`url(#${id})`} {...strokeLook('hatch')} />
        </>
      );
    }
    case 'text': {
      const { x, y } = mark.at;
      return (
        <text
          x={x}
          y={y}
          fontSize={mark.size}
          fontWeight={mark.weight === 'bold' ? 700 : 400}
          textAnchor={ANCHORS[mark.align]}
          {...(mark.turn === 0 ? {} : { transform: `rotate(${mark.turn} ${x} ${y})` })}
        >
          {mark.text}
        </text>
      );
    }
    case 'group': {
      const { a, b, c, d, e, f } = mark.frame;
      const { clip } = mark;
      return (
        <g transform={`matrix(${[a, b, c, d, e, f].join(' ')})`}>
          {clip !== null && (
            <clipPath id={`${id}-box`}>
              <rect
                x={clip.minX}
                y={clip.minY}
                width={clip.maxX - clip.minX}
                height={clip.maxY - clip.minY}
              />
            </clipPath>
          )}
          <g {...(clip === null ? {} : { clipPath: `url(#${id}-box)` })}>
            <Marks marks={mark.marks} id={id} />
          </g>
        </g>
      );
    }
  }
}

function strokeLook(name: LineName): object {
  const { width, dash, grey: level } = LINE_STYLES[name];
  return {
    fill: 'none',
    stroke: grey(level),
    strokeWidth: width,
    strokeLinejoin: 'round',
    ...(dash.length === 0 ? {} : { strokeDasharray: dash.join(' ') }),
  };
}

/** 0 is black; the greys are those of the sheets, not colours of the page. */
function grey(level: number): string {
  const part = Math.round(level * 255);
  return `rgb(${part},${part},${part})`;
}
