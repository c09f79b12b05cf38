/** The plain form of a step of the visit: title, what is asked, and the large way on at the bottom. */
import { type ReactNode, useEffect, useRef } from 'react';
import { useText } from '../frame/manner.tsx';
import { issueText } from '../../../words/issue-text.ts';
import type { Trouble } from './session.ts';
import { useHand } from './use-session.ts';

interface ShellProps {
  readonly title: string;
  readonly children: ReactNode;
  readonly foot?: ReactNode;
  readonly trouble?: Trouble | null;
}

export function Shell({ title, children, foot, trouble = null }: ShellProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus({ preventScroll: true }), [title]);
  return (
    <main className="visit visit-plain">
      <header className="visit-head">
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
      </header>
      {trouble === null ? null : <TroubleLine trouble={trouble} />}
      <div className="visit-body">{children}</div>
      {foot === undefined ? null : <div className="visit-end">{foot}</div>}
    </main>
  );
}

export function TroubleLine({ trouble }: { readonly trouble: Trouble }) {
  const { t, manner } = useText();
  const { session } = useHand();
  if (trouble.kind === 'draft not kept')
    return (
      <p className="visit-told visit-stop" role="alert">
        {t('visiting.draft-not-kept')}
      </p>
    );
  const why = trouble.issues.map((issue) => issueText(issue, manner)).join(' ');
  return (
    <div className="visit-told visit-stop" role="alert">
      <p>{t('visiting.not-stored', { why })}</p>
      <button type="button" onClick={() => void session.again()}>
        {t('visiting.store-again')}
      </button>
    </div>
  );
}
