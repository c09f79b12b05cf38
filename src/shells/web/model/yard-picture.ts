/**
 * The making of pictures: the newest day and entries win, an answer to an older question is dropped. What
 * was advised and forecast at the end of a visit is then kept as it was issued.
 */
import { snapshotOf } from './snapshot.ts';
import type { Aside } from './shown.ts';
import { append } from './yard-entries.ts';
import { change, setObserver, type Work } from './yard-work.ts';

export async function compute(work: Work): Promise<void> {
  const { store } = work;
  const { phase, book, entries, today } = work.state;
  if (phase !== 'ready' || store === null || book === null) return;
  const ticket = ++work.asked;
  change(work, { computing: true });
  try {
    const shown = await work.around.computePicture(entries, today);
    if (ticket !== work.asked || work.store !== store) return;
    change(work, { ...shown, computing: false });
    adoptKeeper(work, shown.aside);
    await keepIssued(work);
    // A snapshot that cannot be kept costs a moment at the next start, nothing else.
    void store.snapshots.put('shown', snapshotOf(shown)).catch(() => undefined);
  } catch (error) {
    if (ticket !== work.asked) return;
    const issue = { code: 'engine-stopped', path: 'picture', found: String(error), expected: 'a picture' };
    change(work, { computing: false, trouble: [issue] });
  }
}

/** What was advised and forecast at the end of a visit is kept as it was issued, so that it can be scored. */
async function keepIssued(work: Work): Promise<void> {
  const colonies = [...work.justVisited];
  work.justVisited.clear();
  for (const colony of colonies) {
    const { advice, forecast } = await work.around.issuedFor(colony, work.state.today);
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
