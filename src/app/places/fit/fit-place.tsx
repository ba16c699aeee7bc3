import { type ReactNode, useEffect, useState } from 'react';
import { countOf, type Finding, LEVELS, type OrderProblem } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { useChild, useTell, useUnits } from '../../session/use-session.ts';
import { findingId, useLook, useLooking } from '../../shell/looking.ts';
import { Everyone } from './everyone.tsx';
import { FindingRow } from './finding-row.tsx';
import { RepairButtons } from './repair-buttons.tsx';
import { withoutPath } from './told-check.ts';
import '../../look/fit.css';

/** What fits the child that is shown and what does not: by level, each with its place, what to do, and ways to mend it. */
export function FitPlace(): ReactNode {
  const { work, index: child } = useChild();
  const units = useUnits();
  const look = useLook();
  const { report, problems, old } = work;
  const [open, setOpen] = useOpenFinding(child);
  useEffect(() => () => look({ markShown: null }), [look]);
  const findings = old ? [] : (report?.findings ?? []);
  const isFine = !LEVELS.some((level) => level !== 'ok' && countOf(findings, level) > 0);
  return (
    <div className="stack">
      <h2>{say('page.fit.of', { child: work.name }, units)}</h2>
      <Everyone />
      {problems.length > 0 && <Problems problems={problems} />}
      {report === null && problems.length === 0 && <p>{say('page.fit.waiting', {}, units)}</p>}
      {findings.length > 0 && isFine && (
        <p className="right">{say('page.fit.fine', { count: findings.length }, units)}</p>
      )}
      {LEVELS.map((level) => (
        <Level key={level} level={level} findings={findings} open={open} onOpen={setOpen} />
      ))}
    </div>
  );
}

/** Which finding is open: the one that she touched in the list, or by its mark on the table. */
function useOpenFinding(child: number) {
  const [open, setOpen] = useState<{ readonly child: number; readonly index: number } | null>(null);
  const markShown = useLooking((state) => state.markShown);
  const look = useLook();
  useEffect(() => {
    const [, index] = /^finding-(\d+)$/.exec(markShown ?? '') ?? [];
    if (index !== undefined && markShown === findingId(Number(index)))
      setOpen({ child, index: Number(index) });
  }, [markShown, child]);
  // A mark belongs to the child on the table.
  // biome-ignore lint/correctness/useExhaustiveDependencies: on another child only.
  useEffect(() => look({ markShown: null }), [child, look]);
  const choose = (index: number | null): void => {
    if (index === null) look({ markShown: null });
    setOpen(index === null ? null : { child, index });
  };
  return [open?.child === child ? open.index : null, choose] as const;
}

function Problems({ problems }: { readonly problems: readonly OrderProblem[] }): ReactNode {
  const units = useUnits();
  return (
    <section className="level">
      <h3>{say('page.fit.cannot', {}, units)}</h3>
      <ul className="findings">
        {problems.map((problem) => (
          <Problem key={`${problem.path} ${problem.code}`} problem={problem} />
        ))}
      </ul>
    </section>
  );
}

function Problem({ problem }: { readonly problem: OrderProblem }): ReactNode {
  const tell = useTell();
  const [fault] = useState({ of: 'problem' as const, problem });
  const [head = '', ...rest] = tell(withoutPath(problem.say));
  return (
    <li className="finding finding-stop finding-open" data-finding={problem.code}>
      <p className="finding-said">{`${head.toUpperCase()}${rest.join('')}`}</p>
      <div className="finding-inside">
        <RepairButtons fault={fault} onMended={() => {}} />
      </div>
    </li>
  );
}

function Level({
  level,
  findings,
  open,
  onOpen,
}: {
  readonly level: Finding['level'];
  readonly findings: readonly Finding[];
  readonly open: number | null;
  readonly onOpen: (index: number | null) => void;
}): ReactNode {
  const units = useUnits();
  const here = [...findings.entries()].filter(([, finding]) => finding.level === level);
  if (here.length === 0) return null;
  const list = (
    <ul className="findings">
      {here.map(([index, finding]) => (
        <FindingRow key={index} finding={finding} index={index} open={open === index} onOpen={onOpen} />
      ))}
    </ul>
  );
  if (level === 'ok') {
    return (
      <details>
        <summary>{say('page.fit.level.ok', { count: here.length }, units)}</summary>
        {list}
      </details>
    );
  }
  return (
    <section className="level">
      <h3>{say(`page.fit.level.${level}`, {}, units)}</h3>
      {list}
    </section>
  );
}
