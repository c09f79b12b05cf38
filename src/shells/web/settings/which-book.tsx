/** Which journal is open: the demo yard or the keeper's own. They never mix; each has a database of its own. */
import { useLocation } from 'wouter';
import { usePreferences, useText } from '../frame/manner.tsx';
import type { Book } from '../model/preferences.ts';
import { useYard } from '../model/use-yard.tsx';

export function WhichBook() {
  const { t } = useText();
  const { prefer } = usePreferences();
  const { book, openBook } = useYard();
  const [, go] = useLocation();

  async function open(chosen: Book): Promise<void> {
    prefer({ book: chosen });
    go('/');
    await openBook(chosen);
  }

  return (
    <section>
      <h2>{t('settings.book')}</h2>
      <p>{book === null ? t('settings.book-none') : t(`settings.book-${book}`)}</p>
      <div className="acts">
        {book === 'own' ? null : (
          <button type="button" onClick={() => void open('own')}>
            {t('settings.open-own')}
          </button>
        )}
        {book === 'demo' ? null : (
          <button type="button" onClick={() => void open('demo')}>
            {t('settings.open-demo')}
          </button>
        )}
      </div>
    </section>
  );
}
