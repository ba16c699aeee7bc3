import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { inUnits } from '../../parts/shown-length.ts';
import { Switch } from '../../parts/switch.tsx';
import { useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { changeDesk } from './desk.ts';
import { FORMATS, formatsOf, paperOfDraft, withFurther, withMain } from './edit-paper.ts';

/** What the sheets overlap by where the order says nothing, mm. */
const OVERLAP = 10;

/** On which paper the pattern is printed, how much the pages overlap, and what becomes of straight pieces. */
export function YourPaper(): ReactNode {
  const session = useSession();
  const units = useUnits();
  const paper = useOrderFile((file) => file.paper);
  const problem = useProblemAt('paper.overlap');
  const formats = formatsOf(paper);
  const [main = 'A4'] = formats;
  const rectangles = paper?.rectangles ?? (main === 'A0' || main === '36 in roll' ? 'full' : 'figures');
  return (
    <section className="part">
      <h3>{say('page.paper.paper', {}, units)}</h3>
      <Choice
        label={say('page.paper.format', {}, units)}
        value={main}
        options={FORMATS.map((id) => ({ id, text: id }))}
        onChange={(format) => {
          session.change({ key: 'page.did.paper-format', values: { what: format } }, (file) => {
            paperOfDraft(file).formats = withMain(formats, format);
          });
          changeDesk({ path: '' });
        }}
      />
      <div className="fields">
        <LengthField
          label={say('page.paper.overlap', {}, units)}
          value={paper?.overlap}
          units={units}
          byRule={inUnits(OVERLAP, units)}
          about={say('page.paper.overlap.about', {}, units)}
          problem={problem}
          onDone={session.settle}
          onChange={(text) =>
            session.change(
              { key: 'page.did.paper-overlap', values: {} },
              (file) => {
                const draft = paperOfDraft(file);
                if (text === undefined) delete draft.overlap;
                else draft.overlap = text;
              },
              { cause: 'paper.overlap' },
            )
          }
        />
        <Choice
          label={say('page.paper.rectangles', {}, units)}
          value={rectangles}
          options={(['full', 'figures'] as const).map((id) => ({
            id,
            text: say(`page.paper.rectangles.${id}`, {}, units),
          }))}
          about={say('page.paper.rectangles.about', {}, units)}
          onChange={(chosen) =>
            session.change({ key: 'page.did.paper-rectangles', values: {} }, (file) => {
              paperOfDraft(file).rectangles = chosen;
            })
          }
        />
      </div>
      <details>
        <summary>{say('page.paper.format.also', {}, units)}</summary>
        <p className="quiet small">{say('page.paper.format.also.about', {}, units)}</p>
        {FORMATS.filter((format) => format !== main).map((format) => (
          <Switch
            key={format}
            label={format}
            value={formats.includes(format)}
            onChange={(on) =>
              session.change({ key: 'page.did.paper-format', values: { what: format } }, (file) => {
                paperOfDraft(file).formats = withFurther(formats, format, on);
              })
            }
          />
        ))}
      </details>
    </section>
  );
}
