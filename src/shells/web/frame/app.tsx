/**
 * The whole of the screens: which one stands where. The round is in the first load; everything else
 * comes when it is asked for, from the device itself once the program is kept there.
 */
import { lazy, Suspense } from 'react';
import { Redirect, Route, Router, Switch, useLocation, useRoute } from 'wouter';
import { sharedDefs } from '../../../sheets/marks.ts';
import { useYard } from '../model/use-yard.tsx';
import { RoundScreen } from '../round/round-screen.tsx';
import { Boundary } from './boundary.tsx';
import { DayLine } from './day-line.tsx';
import { Drawn } from './drawn.tsx';
import { usePreferences, useText } from './manner.tsx';
import { Navigation } from './navigation.tsx';
import { Screen } from './screen.tsx';
import { Standing } from './standing.tsx';
import { useWide } from './wide.ts';

const OpenDemo = lazy(() => import('../start/open-demo.tsx').then((file) => ({ default: file.OpenDemo })));
const ColonyScreen = lazy(() => import('../colony/colony-screen.tsx').then((file) => ({ default: file.ColonyScreen })));
const StartScreen = lazy(() => import('../start/start-screen.tsx').then((file) => ({ default: file.StartScreen })));
const VisitScreen = lazy(() => import('../visit/visit-screen.tsx').then((file) => ({ default: file.VisitScreen })));
const SumsScreen = lazy(() => import('../sums/sums-screen.tsx').then((file) => ({ default: file.SumsScreen })));
const HandbookScreen = lazy(() => import('../handbook/handbook-screen.tsx').then((file) => ({ default: file.HandbookScreen })));
const JournalScreen = lazy(() => import('../journal/journal-screen.tsx').then((file) => ({ default: file.JournalScreen })));
const RecordScreen = lazy(() => import('../record/record-screen.tsx').then((file) => ({ default: file.RecordScreen })));
const PaperScreen = lazy(() => import('../paper/paper-screen.tsx').then((file) => ({ default: file.PaperScreen })));
const SettingsScreen = lazy(() => import('../settings/settings-screen.tsx').then((file) => ({ default: file.SettingsScreen })));

export function App() {
  return (
    <Router>
      <Framed />
    </Router>
  );
}

function Framed() {
  const { t } = useText();
  const { book, phase, entries, picture, computing } = useYard();
  const [location] = useLocation();
  const [onVisit] = useRoute('/visit/:colony');
  const { preferences } = usePreferences();
  const unstarted = (book === null && preferences.book === null) || (phase === 'ready' && entries.length === 0);
  if (onVisit && !unstarted) {
    return (
      <>
        <Marks />
        <Boundary
          instead={(fault, again) => (
            <main>
              <Failed fault={fault} again={again} />
            </main>
          )}
        >
          <Suspense fallback={<Waiting />}>
            <Route path="/visit/:colony">
              <VisitScreen />
            </Route>
          </Suspense>
        </Boundary>
      </>
    );
  }
  return (
    <div className="frame" data-computing={computing || phase === 'reading'}>
      <Marks />
      <a className="skip" href="#screen">
        {t('frame.skip')}
      </a>
      <Navigation />
      <div>
        <header>
          <DayLine />
          <Standing />
        </header>
        <main id="screen" tabIndex={-1}>
          <Boundary key={partOf(location)} instead={(fault, again) => <Failed fault={fault} again={again} />}>
            <Suspense fallback={<Waiting />}>
              <Switch>
                <Route path="/sums/:key?">
                  <SumsScreen />
                </Route>
                <Route path="/handbook">
                  <HandbookScreen />
                </Route>
                <Route path="/journal">
                  <JournalScreen />
                </Route>
                <Route path="/settings">
                  <SettingsScreen />
                </Route>
                <Route path="/demo">
                  <OpenDemo />
                </Route>
                <Route path="/start">
                  <StartScreen />
                </Route>
                {unstarted ? (
                  <Route>
                    <StartScreen />
                  </Route>
                ) : null}
                {picture === null ? (
                  <Route>
                    <Waiting />
                  </Route>
                ) : null}
                <Route path="/paper">
                  <PaperScreen />
                </Route>
                <Route path="/record">
                  <RecordScreen />
                </Route>
                <Route path="/colony/:colony">{({ colony }) => <RoundAndColony colony={colony} />}</Route>
                <Route path="/">
                  <RoundAndColony colony={null} />
                </Route>
                <Route>
                  <Redirect to="/" />
                </Route>
              </Switch>
            </Suspense>
          </Boundary>
        </main>
      </div>
    </div>
  );
}

/** Round and Colony stand together; any other screen is a part of its own. A fault of one part ends when the keeper goes to another. */
function partOf(location: string): string {
  const first = location.split('/')[1] ?? '';
  return first === 'colony' ? '' : first;
}

/** On a laptop the round stays at the left while a colony is read; on a phone, and on paper, there is room for one of them. */
function RoundAndColony({ colony }: { readonly colony: string | null }) {
  const wide = useWide();
  const { picture } = useYard();
  const chosen = colony ?? picture?.round[0]?.colony ?? null;
  if (!wide) return colony === null ? <RoundScreen chosen={null} takesFocus /> : <ColonyScreen colony={colony} takesFocus />;
  return (
    <div className="twofold">
      <section className={colony === null ? '' : 'beside'}>
        <RoundScreen chosen={chosen} takesFocus={colony === null} />
      </section>
      <section className={colony === null ? 'beside' : ''}>
        <Suspense>{chosen === null ? null : <ColonyScreen key={chosen} colony={chosen} takesFocus={colony !== null} />}</Suspense>
      </section>
    </div>
  );
}

/** The patterns of all marks, once on the page: every strip and face points to them. */
const sprite = sharedDefs();

function Marks() {
  return <Drawn svg={sprite} className="sprite" />;
}

function Waiting() {
  const { t } = useText();
  return (
    <Screen title={t('frame.opening')}>
      <p role="status">{t('frame.reading-journal')}</p>
    </Screen>
  );
}

function Failed({ fault, again }: { readonly fault: Error; readonly again: () => void }) {
  const { t } = useText();
  return (
    <Screen title={t('frame.failed')}>
      <p role="alert">{t('frame.failed-line', { fault: fault.message })}</p>
      <div className="acts">
        <button type="button" className="go" onClick={again}>
          {t('frame.again')}
        </button>
      </div>
    </Screen>
  );
}
