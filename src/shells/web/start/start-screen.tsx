/** The first screen: the demo yard to look at, or a yard of one's own from three questions about its first hive. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { issueText } from '../../../words/issue-text.ts';
import { Drawn } from '../frame/drawn.tsx';
import { usePreferences, useText } from '../frame/manner.tsx';
import { Screen } from '../frame/screen.tsx';
import { deviceTimeZone } from '../model/clock.ts';
import { newId } from '../model/notes.ts';
import type { Book } from '../model/preferences.ts';
import { useYard } from '../model/use-yard.tsx';
import { askPersistence } from '../model/keeping.ts';
import { HiveQuestions } from './hive-questions.tsx';
import { type HiveMeasures, hiveNote } from './hive-note.ts';
import { sampleStrip } from './sample-strip.ts';

export function StartScreen() {
  const { t } = useText();
  const { preferences, prefer } = usePreferences();
  const { openBook, book, entries } = useYard();
  const [, go] = useLocation();
  const [asking, setAsking] = useState(preferences.book === 'own');

  async function open(chosen: Book): Promise<void> {
    prefer({ book: chosen });
    // First the way, then the work: whoever goes on while the book is opened must not be called back.
    if (chosen === 'demo') go('/');
    else setAsking(true);
    await openBook(chosen);
  }

  const ownStands = book === 'own' && entries.length > 0;
  return (
    <Screen title={t('start.title')}>
      <Drawn svg={sampleStrip(t('start.picture'))} className="drawn sample" />
      <p className="lead">{t('start.lead')}</p>
      <section className="ways-in">
        <div>
          <h2>{t('start.demo')}</h2>
          <p>{t('start.demo-line')}</p>
          <button type="button" className={asking ? '' : 'go'} onClick={() => void open('demo')}>
            {t('start.open-demo')}
          </button>
        </div>
        <div>
          <h2>{t('start.own')}</h2>
          {ownStands ? (
            <button type="button" className="go" onClick={() => go('/')}>
              {t('start.open-own')}
            </button>
          ) : null}
          {!ownStands && asking && book === 'own' ? <FirstHive /> : null}
          {!ownStands && !(asking && book === 'own') ? (
            <>
              <p>{t('start.own-line')}</p>
              <button type="button" className="go" onClick={() => void open('own')}>
                {t('start.begin-own')}
              </button>
            </>
          ) : null}
        </div>
      </section>
      <p className="soft small">{t('start.law')}</p>
    </Screen>
  );
}

function FirstHive() {
  const { t, manner } = useText();
  const { append, observer, setObserver, today } = useYard();
  const [, go] = useLocation();
  const [faults, setFaults] = useState<readonly string[]>([]);

  async function begin(measures: HiveMeasures): Promise<void> {
    const stored = await append([
      {
        kind: 'yard',
        at: today,
        body: { name: t('start.yard-name'), latitude: null, longitude: null, timeZone: deviceTimeZone() },
      },
      { kind: 'observer', at: today, body: { observer, name: t('start.keeper-name'), role: 'keeper' } },
      hiveNote({ ...measures, hive: newId(), name: t('start.hive-name', { n: 1 }) }, today),
    ]);
    if (!stored.ok) {
      setFaults(stored.issues.map((issue) => issueText(issue, manner)));
      return;
    }
    askPersistence();
    setObserver(observer);
    go('/?hive=swarm');
  }

  return (
    <>
      <p>{t('start.three')}</p>
      <HiveQuestions submit={t('start.set-up')} onDone={(measures) => void begin(measures)} />
      {faults.map((fault) => (
        <p key={fault} className="fault" role="alert">
          {fault}
        </p>
      ))}
    </>
  );
}
