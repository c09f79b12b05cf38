/**
 * How many queen cells of each kind a state has on average, by whole days in it: begun over some days, open until
 * their age of sealing, torn or left when a virgin is out, and cleared away after. Tables, worked out once.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import { type ChainStateName, chainStates } from './states.ts';

export const cellKinds = ['open', 'sealed', 'torn', 'emerged'] as const;
export type CellKind = (typeof cellKinds)[number];

/** By state: for each day in it four means in the order of `cellKinds`, as they would be counted by a perfect eye. */
export type CellTable = readonly Float64Array[];

export function cellTable(book: FigureBook, memory: Int32Array): CellTable {
  const kinds = castOf(book);
  return chainStates.map(({ name }, state) => {
    const means = new Float64Array(memory[state]! * cellKinds.length);
    for (let day = 0; day < memory[state]!; day += 1) {
      const { open = 0, sealed = 0, torn = 0, emerged = 0 } = kinds[name]?.(day) ?? {};
      means.set([open, sealed, torn, emerged], day * cellKinds.length);
    }
    return means;
  });
}

type Cells = Partial<Record<CellKind, number>>;
type Course = (day: number) => Cells;

function castOf(book: FigureBook): Partial<Record<ChainStateName, Course>> {
  const seal = value(book, 'queen-sealing-age');
  const sealedFor = value(book, 'virgin-emerges-after-sealing');
  const waits = 1 / value(book, 'queen-chain-swarm-leaves');
  const cleared = value(book, 'queen-look-cells-cleared');
  const emergency = value(book, 'emergency-cells-count');
  const few = value(book, 'supersedure-cells-count');
  const many = value(book, 'swarm-cells-count');
  // Emergency cells are begun over brood of some age: so much of the way to sealing is behind them.
  const ahead = seal + sealedFor - value(book, 'emergency-queen-emerges') + 1 + 1 / 2;
  const grow = growth(book);
  const swarm: Course = (age) => grow(many, value(book, 'queen-look-cells-begun-days'), age);
  const peace: Course = (age) => grow(few, 1, age);
  const loss: Course = (age) => grow(emergency, 2, age + ahead);
  const remains = (cells: number): Course => {
    return (day) => ({
      torn: (cells - 1) * Math.exp(-day / cleared),
      emerged: Math.exp(-day / cleared),
      // Rivals still in their cells are killed within a day or two.
      sealed: (cells - 1) * Math.exp(-day - 1),
    });
  };
  return {
    'swarm cells open': swarm,
    'swarm cells sealed': (day) => swarm(day + seal),
    swarmed: (day) => swarm(day + seal + waits),
    'supersedure cells open': peace,
    'supersedure cells sealed': (day) => peace(day + seal),
    'emergency cells open': loss,
    'emergency cells sealed': (day) => loss(day + seal - ahead),
    'mother and virgin': remains(few),
    virgin: remains(emergency),
    'new queen laying': (day) => remains(emergency)(day + value(book, 'queen-first-egg-age')),
  };
}

/** Cells of one raising, `age` days after its first egg, begun evenly over some days. */
function growth(book: FigureBook): (cells: number, begunOver: number, age: number) => Cells {
  const seal = value(book, 'queen-sealing-age');
  const egg = value(book, 'queen-egg-days');
  const cups = value(book, 'queen-look-cups-counted');
  return (cells, begunOver, age) => {
    const days = Math.max(1, Math.round(begunOver));
    let open = 0;
    let sealed = 0;
    for (let begun = 0; begun < days && begun <= age; begun += 1) {
      const old = age - begun;
      if (old >= seal) sealed += 1;
      else open += old > egg ? 1 : cups;
    }
    return { open: (cells * open) / days, sealed: (cells * sealed) / days };
  };
}
