/** The simulator's own lawfulness: brood ages and emerges as the numbers say, luck is by colony and day, nothing appears from nowhere. */
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { hiveSwarm, wintering } from './acts.ts';
import { daysBetween } from '../../src/numbers/day.ts';
import { chanceOf } from './chance.ts';
import { ageFace, broodCells, combBrood, faceDm2, foodCells, newComb, roomOf, workersAged } from './comb.ts';
import { honeyKg } from './larder.ts';
import { season } from './laying.ts';
import { readBar } from './observe.ts';
import { randomYard } from './yards.ts';
import { foldJournal } from '../../src/journal/fold.ts';
import { allKinds } from '../../src/apiary/kinds.ts';
import { emptyColonies } from '../../src/colony/state.ts';
import { readSky } from './sky.ts';
import { adults, type World } from './society.ts';
import { step } from './step.ts';

const sky = readSky(readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8'));

function emptyWorld(): World {
  return { day: '2012-12-31', societies: new Map(), happened: [], natural: false };
}

function oneColony(): World {
  const world = emptyWorld();
  wintering(
    world,
    { id: 'one', from: 1, to: 12, combs: 11, bees: 14000, honeyKg: 18, queenDays: 200, vigour: 1, temper: 0.2 },
    chanceOf(3, 'one'),
  );
  return world;
}

function run(world: World, until: string, seed = 3, each: (day: string) => void = () => undefined): void {
  for (const [day, today] of sky) {
    if (day > until) return;
    if (day <= world.day) continue;
    step(world, today, seed);
    each(day);
  }
}

test('Y6 of 100 eggs 94.2 hatch, 86.4 are sealed and 85.1 emerge on day 21 (Fukuda & Sakagami 1968)', () => {
  const face = newComb('c', 1, 1, 0, '2013-01-01').faces[0];
  face.worker[0] = 100;
  const seen: number[] = [];
  let out = 0;
  for (let day = 1; day <= 21; day += 1) {
    out += ageFace(face, 1, 1).workers;
    seen.push(broodCells(face));
  }
  assert.equal(seen[1], 100);
  assert.ok(
    Math.abs((seen[2] ?? 0) - 94.2) < 0.1 && Math.abs((seen[8] ?? 0) - 86.4) < 0.1 && Math.abs(out - 85.1) < 0.1,
    `${seen[2]} ${seen[8]} ${out}`,
  );
  assert.equal(broodCells(face), 0);
});

test('Y6 one face of the trough is the trapezoid inside the bees’ gaps, 8.1 dm2', () => {
  const slope = Math.tan((25 * Math.PI) / 180);
  const top = 460 - 16 / Math.cos((25 * Math.PI) / 180);
  const bottom = top - 2 * 250 * slope;
  assert.ok(Math.abs(faceDm2 - (((top + bottom) / 2) * 250) / 1e4) < 1e-9);
  assert.ok(faceDm2 > 8 && faceDm2 < 8.3);
});

test('Y6 no cell is filled twice: brood and food of every face fit into its wax, on every day of two years', () => {
  const world = oneColony();
  let looked = 0;
  run(world, '2014-12-31', 3, (day) => {
    for (const society of world.societies.values()) {
      for (const comb of society.combs) {
        for (const face of comb.faces) {
          looked += 1;
          assert.ok(
            broodCells(face) + foodCells(face) <= roomOf(comb) * 1.001 + 1e-6,
            `${day} ${comb.id}: ${broodCells(face)} + ${foodCells(face)} of ${roomOf(comb)}`,
          );
          assert.ok(face.honey >= -1e-9 && face.nectar >= -1e-9 && face.bread >= -1e-9, `${day} ${comb.id}`);
        }
      }
    }
  });
  assert.ok(looked > 10000);
});

test('Y6 a colony’s luck hangs on its name and the day, not on who else is there', () => {
  const alone = oneColony();
  const together = oneColony();
  hiveSwarm(together, 'other', 1, 8, 12000, 300, chanceOf(3, 'other'));
  run(alone, '2013-06-30');
  run(together, '2013-06-30');
  const a = alone.societies.get('one');
  const b = together.societies.get('one');
  assert.ok(a && b);
  assert.equal(adults(a), adults(b));
  assert.equal(honeyKg(a), honeyKg(b));
});

test('Y6 another seed gives another year', () => {
  const a = oneColony();
  const b = oneColony();
  run(a, '2013-06-30', 3);
  run(b, '2013-06-30', 4);
  assert.notEqual(adults(a.societies.get('one') ?? assert.fail()), adults(b.societies.get('one') ?? assert.fail()));
});

test('Y6 a colony’s year: small in March, great in June, no brood at Christmas, food for the winter', () => {
  const world = oneColony();
  const society = world.societies.get('one') ?? assert.fail();
  const bees = new Map<string, number>();
  const brood = new Map<string, number>();
  run(world, '2013-12-25', 3, (day) => {
    if (society.combs.length < 18 && day > '2013-05-01' && society.combs.every((comb) => comb.built > 0.5))
      society.to = society.from + society.combs.length;
    bees.set(day, adults(society));
    brood.set(
      day,
      society.combs.reduce((all, comb) => all + combBrood(comb), 0),
    );
  });
  const on = (map: ReadonlyMap<string, number>, day: string): number => map.get(day) ?? assert.fail();
  assert.ok(on(bees, '2013-03-25') < 13300 && on(bees, '2013-03-25') > 5000, `${on(bees, '2013-03-25')}`);
  assert.ok(on(bees, '2013-06-25') > 2 * on(bees, '2013-03-25') && on(bees, '2013-06-25') < 60000, `${on(bees, '2013-06-25')}`);
  assert.ok(on(brood, '2013-06-10') > 15000 && on(brood, '2013-06-10') < 46200, `${on(brood, '2013-06-10')}`);
  assert.ok(on(brood, '2013-12-25') < 500, `${on(brood, '2013-12-25')}`);
  assert.ok(honeyKg(society) > 10, `${honeyKg(society)} kg`);
});

test('Y6 the season of laying is 0 at New Year, above .9 of its best in June, and never above 1', () => {
  assert.equal(season('2013-01-01'), 0);
  assert.ok(season('2013-06-10') > 0.9);
  for (const day of sky.keys()) assert.ok(season(day) <= 1);
});

test('Y6 a swarm on bare bars has no sealed brood for nine days, and eggs within a week', () => {
  const world = emptyWorld();
  run(world, '2014-05-07');
  const swarm = hiveSwarm(world, 'swarm', 1, 8, 12000, 300, chanceOf(5, 'swarm'));
  const sealed = (): number => swarm.combs.reduce((all, comb) => all + workersAged(comb, 9, 20), 0);
  run(world, '2014-05-14', 5, () => assert.equal(sealed(), 0));
  assert.ok(swarm.combs.reduce((all, comb) => all + workersAged(comb, 0, 2), 0) > 300);
  run(world, '2014-05-25', 5);
  assert.ok(sealed() > 0);
});

test('Y6 left alone, a crowded colony begins cells in season and swarms at the first sealed one, when the weather lets it', () => {
  const world: World = { ...emptyWorld(), natural: true };
  wintering(
    world,
    { id: 'wild', from: 1, to: 9, combs: 9, bees: 17000, honeyKg: 18, queenDays: 200, vigour: 1.1, temper: 0.2 },
    chanceOf(8, 'wild'),
  );
  run(world, '2013-09-01', 8);
  const begun = world.happened.find((one) => one.what === 'swarm cells begun') ?? assert.fail('no cells were begun');
  const left = world.happened.find((one) => one.what === 'swarm left') ?? assert.fail('no swarm left');
  const days = daysBetween(begun.day, left.day);
  assert.ok(days >= 8 && days <= 20, `${days} days from the first cups to the swarm`);
  const virgin = world.happened.find((one) => one.what === 'virgin emerged') ?? assert.fail('no virgin emerged');
  assert.ok(virgin.day > left.day && daysBetween(begun.day, virgin.day) >= 16);
  const today = sky.get(left.day) ?? assert.fail();
  assert.ok(today.highC >= 18 && today.rainMm <= 2);
});

test('Y6 the simulator reads no figure and no estimate: of the program it knows days, shapes of entries and names of signs', () => {
  const shapes = ['colony/reading', 'colony/visit', 'colony/signs', 'journal/entry', 'numbers/day'];
  const allowed = (path: string): boolean => shapes.includes(path) || /^(journal|colony|hive|weather)\/kind-[a-z-]+$/.test(path);
  const files = readdirSync('tools/world').filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'));
  assert.ok(files.length > 15);
  let read = 0;
  for (const name of files) {
    for (const found of readFileSync(`tools/world/${name}`, 'utf8').matchAll(/from '\.\.\/\.\.\/src\/([^']+)\.ts'/g)) {
      assert.ok(allowed(found[1] ?? ''), `${name} reads ${found[1]}`);
      read += 1;
    }
  }
  assert.ok(read > 30);
});

test('Y7 what an observer reads is half eighths within a face, near the truth, and leans as the person leans', () => {
  const world = oneColony();
  run(world, '2013-06-01');
  const society = world.societies.get('one') ?? assert.fail();
  const look = { brushed: false, fine: false, cells: true, queenOn: null, countOn: null, light: 'sun' as const };
  const mean = (broodLean: number): number => {
    let all = 0;
    for (let i = 0; i < 60; i += 1) {
      const eye = { name: 'x', broodLean, foodLean: 0, scatter: 0.1, seesCell: 0.7, seesEggs: 0.95 };
      for (const comb of society.combs) {
        const face = readBar(society, comb, eye, look, chanceOf(i, comb.id)).faces[0];
        assert.ok(
          face &&
            face.brood8 !== null &&
            face.food8 !== null &&
            face.brood8 + face.food8 <= 8 &&
            Number.isInteger(face.brood8 * 2),
        );
        all += face.brood8;
      }
    }
    return all / 60;
  };
  const truth = society.combs.reduce((all, comb) => all + (8 * combBrood(comb)) / 0.92 / 0.98 / (2 * roomOf(comb)), 0);
  assert.ok(Math.abs(mean(0) / truth - 1) < 0.05, `${mean(0)} of ${truth}`);
  assert.ok(mean(0.2) > mean(0) * 1.08 && mean(-0.2) < mean(0) * 0.92);
});

test('Y8 random yards are lawful, fold without faults, and are the same for the same seed', () => {
  for (let seed = 1; seed <= 12; seed += 1) {
    const size = { hives: 3, years: 1, visitsPerYear: 14 };
    const journal = randomYard(seed, size);
    assert.deepEqual(foldJournal(journal, allKinds, emptyColonies).faults, [], `seed ${seed}`);
    assert.deepEqual(randomYard(seed, { ...size, checked: false }), journal, `seed ${seed}`);
  }
});
