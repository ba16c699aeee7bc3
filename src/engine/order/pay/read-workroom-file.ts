import * as v from 'valibot';
import type { Saying, WordKey } from '../../words/index.ts';
import { LARGEST_ORDER } from '../largest-order.ts';
import { readJson } from '../read-json.ts';
import { shown } from '../shown.ts';
import { WORKROOM_FORM, WORKROOM_PARTS, type WorkroomFile } from './workroom-form.ts';

export type ReadWorkroomFile =
  | { readonly ok: true; readonly workroom: WorkroomFile }
  | { readonly ok: false; readonly problems: readonly { readonly path: string; readonly say: Saying }[] };

/** Reads a workroom from the text of its file. Only its form is looked at; what its texts say, the order finds out. */
export function readWorkroomFile(text: string): ReadWorkroomFile {
  const refuse = (path: string, key: WordKey, values = {}): ReadWorkroomFile => ({
    ok: false,
    problems: [{ path, say: { key, values } }],
  });
  if (text.length > LARGEST_ORDER) return refuse('', 'order.too-large', { most: LARGEST_ORDER / 1_000_000 });
  if (text.trim() === '') return refuse('', 'order.empty');
  const json = readJson(text);
  if (!json.ok) {
    const { code, ...values } = json.problem;
    const why: Saying = { key: `order.${code}` satisfies WordKey, values };
    return refuse('', 'pay.workroom-broken', { why });
  }
  const read = v.safeParse(WORKROOM_FORM, json.value);
  if (read.success) return { ok: true, workroom: read.output };
  const problems = read.issues.map((issue) => {
    const keys = (issue.path ?? []).map(({ key }) => key);
    const path = keys.map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`)).join('');
    const isUnknown = issue.type === 'strict_object' && issue.expected === 'never';
    const known =
      keys.length === 1 ? Object.keys(WORKROOM_PARTS).join(', ') : issue.message.replaceAll(' ', ', ');
    const values = { found: shown(isUnknown ? keys.at(-1) : issue.input), known };
    const key: WordKey = isUnknown ? 'pay.unknown-field' : 'pay.workroom-form';
    return { path: path.replace(/^\./, ''), say: { key, values } };
  });
  return { ok: false, problems };
}
