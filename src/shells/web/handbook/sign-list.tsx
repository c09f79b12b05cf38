/** The signs that may be seen, described and never named as an illness, by what to do about them. */
import { signs } from '../../../apiary/handbook.ts';
import type { TextKey } from '../../../words/text.ts';
import { useText } from '../frame/manner.tsx';

const levels = ['stop', 'ask', 'note'] as const;

export function SignList() {
  const { t } = useText();
  return (
    <>
      {levels.map((level) => (
        <div key={level}>
          <h3>{t(`sign-level.${level}`)}</h3>
          <ul>
            {signs
              .filter((sign) => sign.level === level)
              .map((sign) => (
                <li key={sign.code}>{t(`sign.${sign.code}` as TextKey)}</li>
              ))}
          </ul>
        </div>
      ))}
    </>
  );
}
