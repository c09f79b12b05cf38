/**
 * The making of pictures: the newest day and entries win, an answer to an older question is dropped. What
 * was advised and forecast at the end of a visit is then kept as it was issued.
 */
import { foreseeOne, foreseeYard, toldToday } from './foresight.ts';
import { snapshotOf } from './snapshot.ts';
import type { Aside } from './shown.ts';
import { append } from './yard-entries.ts';
import type { YardStore } from './yard-store.ts';
import { change, setObserver, type Work } from './yard-work.ts';

export async function compute(work: Work): Promise<void> {
  const { store } = work;
  const { phase, book } = work.state;
  if (phase !== 'ready' || store === null || book === null) return;
  const ticket = ++work.asked;
  change(work, { computing: true });
  const shown = await show(work, store, ticket);
  if (!shown) return;
  adoptKeeper(work, work.state.aside);
  // Not waited for: the picture stands, and the model may take its time.
  void follow(work, store, ticket);
}

/** Has a picture made and shows it; false when somebody asked anew meanwhile, or the engine stopped. */
async function show(work: Work, store: YardStore, ticket: number): Promise<boolean> {
  const { entries, today } = work.state;
  try {
    const shown = await work.around.computePicture(entries, today, toldToday(work));
    if (ticket !== work.asked || work.store !== store) return false;
    change(work, { ...shown, computing: false });
    // A snapshot that cannot be kept costs a moment at the next start, nothing else.
    void store.snapshots.put('shown', snapshotOf(shown)).catch(() => undefined);
    return true;
  } catch (error) {
    if (ticket === work.asked) stopped(work, error);
    return false;
  }
}

/**
 * What comes after the picture: the model on the colonies just visited, what is issued of them, then the rest, and
 * one picture with it all.
 */
async function follow(work: Work, store: YardStore, ticket: number): Promise<void> {
  try {
    await keepIssued(work, store, ticket);
    if (ticket === work.asked && (await foreseeYard(work, store, ticket))) await show(work, store, ticket);
  } catch (error) {
    if (ticket === work.asked && work.store === store) stopped(work, error);
  }
}

function stopped(work: Work, error: unknown): void {
  const issue = { code: 'engine-stopped', path: 'picture', found: String(error), expected: 'a picture' };
  change(work, { computing: false, trouble: [issue] });
}

/** What was advised and forecast at the end of a visit is kept as it was issued, so that it can be scored. */
async function keepIssued(work: Work, store: YardStore, ticket: number): Promise<void> {
  for (const colony of [...work.justVisited]) {
    // A model that stops must not keep the plain forecast from being issued.
    const foreseen = await foreseeOne(work, store, colony, ticket).catch(() => null);
    if (ticket !== work.asked || work.store !== store) return;
    const { advice, forecast } = await work.around.issuedFor(colony, work.state.today, foreseen);
    if (work.store !== store || !work.justVisited.delete(colony)) return;
    const kept = await append(work, [
      { kind: 'advice-issued', body: advice },
      { kind: 'forecast-issued', body: forecast },
    ]);
    if (!kept.ok) change(work, { trouble: kept.issues });
  }
}

/** A device that nobody has been named for is the keeper's, once the journal says who that is. */
function adoptKeeper(work: Work, { observers }: Aside): void {
  if (observers.length === 0 || observers.some((one) => one.id === work.state.observer)) return;
  const keeper = observers.find((one) => one.role === 'keeper') ?? observers[0];
  if (keeper !== undefined) setObserver(work, keeper.id);
}
