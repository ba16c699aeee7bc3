import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PackItem, PackProblem } from '../../src/engine/lay/pack/index.ts';

/** The open instances of the literature; their sources stand in `instances/SOURCES.md`. */
const FOLDER = join('bench', 'lay', 'instances');
export const GARMENTS = ['albano', 'dagli', 'mao', 'shirts'] as const;
export const OTHERS = ['fu', 'jakobs1', 'shapes0', 'shapes1'] as const;

export interface Instance {
  readonly name: string;
  readonly problem: PackProblem;
  readonly area: number;
}

interface InstanceFile {
  readonly name: string;
  readonly stripWidth: number;
  readonly allowedRotationsDeg: readonly (0 | 90 | 180 | 270)[];
  readonly totalArea: number;
  readonly items: readonly {
    readonly demand: number;
    readonly polygon: readonly (readonly [number, number])[];
  }[];
}

/** An instance with its standard rotations and its true strip width. */
export function readInstance(name: string): Instance {
  const file: InstanceFile = JSON.parse(readFileSync(join(FOLDER, `${name}.json`), 'utf8'));
  const items = file.items.flatMap(({ demand, polygon }): readonly PackItem[] => {
    const variants = file.allowedRotationsDeg.map((degrees) => ({ outline: turned(polygon, degrees) }));
    return Array.from({ length: demand }, () => ({ variants }));
  });
  return { name: file.name, problem: { width: file.stripWidth, items }, area: file.totalArea };
}

function turned(
  polygon: InstanceFile['items'][number]['polygon'],
  degrees: 0 | 90 | 180 | 270,
): Float64Array {
  const turn = {
    0: ([x, y]: readonly [number, number]) => [x, y],
    90: ([x, y]: readonly [number, number]) => [-y, x],
    180: ([x, y]: readonly [number, number]) => [-x, -y],
    270: ([x, y]: readonly [number, number]) => [y, -x],
  }[degrees];
  return Float64Array.from(polygon.flatMap((point) => turn(point)));
}

export interface Known {
  readonly record: number;
  /** Average of the guided cuckoo search of 2013, in 10 to 20 minutes. */
  readonly cuckoo: number;
}

/** Published densities, per cent. */
export function knownDensities(name: string): Known {
  const rows = readFileSync(join(FOLDER, 'best-known.csv'), 'utf8')
    .split('\n')
    .map((row) => row.split(','))
    .filter(([instance]) => instance === name.toUpperCase());
  const of = (method: string, column: number): number =>
    Number(rows.find((row) => row[1]?.startsWith(method))?.[column] ?? Number.NaN);
  return { record: of('sparrow (record', 3), cuckoo: of('GCS', 4) };
}
