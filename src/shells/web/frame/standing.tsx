/** What the keeper should know of the program itself: entries that no server has yet, a store that forgets, a fault. */
import { issueText } from '../../../words/issue-text.ts';
import { useYard } from '../model/use-yard.tsx';
import { useText } from './manner.tsx';
import { dayPart } from './parts.ts';

export function Standing() {
  const { t, manner } = useText();
  const { unsent, trouble, refused, pairing, picture, today, computing, forgets } = useYard();
  const stale = picture !== null && picture.day !== today;
  const lines = [
    ...(unsent !== null && unsent > 0 ? [t('frame.unsent', { count: unsent })] : []),
    ...(pairing ? [t('frame.pairing')] : []),
    ...(refused.length > 0 ? [t('frame.refused', { count: refused.length })] : []),
    ...(stale ? [t(computing ? 'frame.stale-working' : 'frame.stale', { day: dayPart(picture.day) })] : []),
    ...(forgets ? [t('frame.forgets')] : []),
  ];
  return (
    <>
      {lines.length === 0 ? null : (
        <div className="standing" role="status">
          {lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      )}
      {trouble.length === 0 ? null : (
        <div className="trouble" role="alert">
          {trouble.slice(0, 5).map((issue, n) => (
            <p key={n}>{issueText(issue, manner)}</p>
          ))}
        </div>
      )}
    </>
  );
}
