/**
 * Figures that only the advice needs: when a thing is due, for how long it holds, what counts as much or
 * little. Most are our choice or common practice, and each says so; see `figure.ts` for what a figure carries.
 */
import { figure } from './figure.ts';

export const advisingFigures = [
  figure({
    key: 'most-unbuilt-bars', title: 'Unbuilt bars that a colony is given at once, at most', topic: 'comb', value: 2, low: 1,
    high: 2,
    unit: 'bars', when: 'nights warm, bees building', basis: { kind: 'common practice', note: 'keepers of top-bar hives' },
  }),
  figure({
    key: 'unbuilt-share', title: 'Share of a comb that is built, below which the bar counts as unbuilt', topic: 'comb',
    value: 0.25,
    low: 0.1, high: 0.5, unit: 'share', when: 'bars beside the brood',
    basis: { kind: 'our choice', why: 'a comb of a quarter of its depth still hangs by itself and is not yet laid in' },
  }),
  figure({
    key: 'bar-draw-days', title: 'From a bare bar to comb that is laid in', topic: 'comb', value: 5, low: 3, high: 10,
    unit: 'd',
    when: 'strong colony, nectar coming in',
    basis: { kind: 'our choice', why: 'about 2 dm² are built a day at best, and the queen lays in cells that are half drawn' },
  }),
  figure({
    key: 'room-warn-days', title: 'Days before the brood nest is full on which room is first spoken of', topic: 'comb',
    value: 10, low: 7,
    high: 14, unit: 'd', when: 'season of building',
    basis: { kind: 'our choice', why: 'one round of visits ahead, and the days a bar takes to be drawn' },
  }),
  figure({
    key: 'room-least-night', title: 'Night, least, for giving a bare bar beside the brood', topic: 'comb', value: 10, low: 7,
    high: 12,
    unit: 'degC', when: 'bar at the edge of the brood',
    basis: { kind: 'common practice', note: 'bare bars only when nights are warm; the number is ours' },
  }),
  figure({
    key: 'brood-comb-share', title: 'Share of a comb with brood, from which it counts as a brood comb', topic: 'brood',
    value: 0.06, low: 0.03,
    high: 0.125, unit: 'share', when: 'both faces together',
    basis: { kind: 'our choice', why: 'half an eighth, the least that the ruler can read' },
  }),
  figure({
    key: 'new-swarm-days', title: 'Days for which a hived swarm counts as new', topic: 'swarms', value: 21, low: 18, high: 24,
    unit: 'd',
    when: 'from hiving', basis: { kind: 'derived', from: ['worker-total-days'], how: 'until its own first bees emerge' },
  }),
  figure({
    key: 'swarm-settle-days', title: 'Days for which a hived swarm is left in peace', topic: 'swarms', value: 2, low: 1,
    high: 3, unit: 'd',
    when: 'from hiving', basis: { kind: 'common practice', note: 'a swarm disturbed at once may leave again' },
  }),
  figure({
    key: 'soft-comb-days', title: 'Days for which new comb bends back by hand', topic: 'comb', value: 7, low: 5, high: 10,
    unit: 'd',
    when: 'from hiving; fresh white comb', basis: { kind: 'common practice', note: 'keepers of top-bar hives' },
  }),
  figure({
    key: 'straight-again-days', title: 'Days between glances for straight comb in a new colony', topic: 'comb', value: 3,
    low: 2, high: 4,
    unit: 'd', when: 'first weeks of building',
    basis: { kind: 'our choice', why: 'a swarm begins a comb every two to three days' },
  }),
  figure({
    key: 'swarm-provision-days', title: 'Days for which a swarm lives on what it carries', topic: 'swarms', value: 3, low: 2,
    high: 5, unit: 'd',
    when: 'building comb, nothing coming in',
    basis: { kind: 'common practice', note: 'from memory; it depends on the days it hung' },
  }),
  figure({
    key: 'swarm-first-eggs', title: 'From hiving a swarm to its first eggs', topic: 'swarms', value: 5, low: 3, high: 8,
    unit: 'd',
    when: 'prime swarm with its laying queen; three weeks and more with a virgin',
    basis: { kind: 'our choice', why: 'the queen lays as soon as cells are half drawn, and needs days to come back to weight' },
  }),
  figure({
    key: 'swarm-young-eggs', title: 'From hiving a swarm with a virgin to its first eggs, at the latest', topic: 'swarms',
    value: 21, low: 14,
    high: 28, unit: 'd', when: 'after-swarm',
    basis: { kind: 'derived', from: ['queen-first-egg-age'], how: 'hived some days old; latest first-egg age' },
  }),
  figure({
    key: 'fed-enough-days', title: 'Days for which a feeding counts', topic: 'food', value: 5, low: 3, high: 7, unit: 'd',
    when: 'syrup',
    basis: { kind: 'our choice', why: 'a feeder is empty within days' },
  }),
  figure({
    key: 'act-now-days', title: 'Days within which an urgent thing is done', topic: 'visits', value: 1, low: 0, high: 2,
    unit: 'd',
    when: 'sealed swarm cells, no food',
    basis: { kind: 'our choice', why: 'a swarm leaves on the first fit day; a colony without food dies in one night' },
  }),
  figure({
    key: 'act-soon-days', title: 'Days within which a thing that is due is done', topic: 'visits', value: 4, low: 2, high: 7,
    unit: 'd',
    when: 'a look that would tell, a second look',
    basis: { kind: 'our choice', why: 'a keeper with a week of work still finds one day' },
  }),
  figure({
    key: 'introduced-rest-days', title: 'Days a colony is left after a queen is introduced', topic: 'queens', value: 7,
    low: 5, high: 10,
    unit: 'd', when: 'queen given by the keeper', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'new-laying-rest-days', title: 'Days a new queen is left after her first eggs', topic: 'queens', value: 7, low: 5,
    high: 14, unit: 'd',
    when: 'queen raised in the colony',
    basis: { kind: 'our choice', why: 'as after an introduction: a young queen is easily balled' },
  }),
  figure({
    key: 'check-interval-rest', title: 'Days between visits outside the swarm season', topic: 'visits', value: 21, low: 14,
    high: 28, unit: 'd',
    when: 'season of flight, nothing seen that asks for more',
    basis: { kind: 'our choice', why: 'one cycle of worker brood: what went wrong is still to be seen' },
  }),
  figure({
    key: 'due-warn-days', title: 'Days before a visit is due on which it is first spoken of', topic: 'visits', value: 2,
    low: 1, high: 3,
    unit: 'd', when: 'round of a small yard', basis: { kind: 'our choice', why: 'so that a fit day is not missed' },
  }),
  figure({
    key: 'swarm-season-first-month', title: 'First month of the swarm season', topic: 'swarms', value: 4, low: 3, high: 5,
    unit: 'month',
    when: 'northern temperate; six months later in the south', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'swarm-season-last-month', title: 'Last month of the swarm season', topic: 'swarms', value: 7, low: 6, high: 8,
    unit: 'month',
    when: 'northern temperate; six months later in the south', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'building-first-month', title: 'First month in which bees build comb', topic: 'comb', value: 4, low: 3, high: 5, unit: 'month',
    when: 'northern temperate; six months later in the south', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'building-last-month', title: 'Last month in which bees build comb', topic: 'comb', value: 8, low: 7, high: 9, unit: 'month',
    when: 'northern temperate; six months later in the south',
    basis: { kind: 'common practice', note: 'an autumn flow may bring a little more' },
  }),
  figure({
    key: 'visits-first-month', title: 'First month in which hives are opened', topic: 'visits', value: 3, low: 2, high: 4,
    unit: 'month',
    when: 'northern temperate; six months later in the south', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'visits-last-month', title: 'Last month in which hives are opened', topic: 'visits', value: 10, low: 9, high: 11,
    unit: 'month',
    when: 'northern temperate; six months later in the south', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'stores-warn-days', title: 'Days of food left, from which stores are called low', topic: 'food', value: 10, low: 7,
    high: 14, unit: 'd',
    when: 'season of flight, without nectar',
    basis: { kind: 'our choice', why: 'a spell of rain of a week, and the days until the next visit' },
  }),
  figure({
    key: 'stores-warn-days-cold', title: 'Days of food left in the cold months, from which stores are called low',
    topic: 'food', value: 30,
    low: 21, high: 45, unit: 'd', when: 'months without visits',
    basis: { kind: 'our choice', why: 'feeding needs a mild day, which may be weeks away' },
  }),
  figure({
    key: 'stores-urgent-days', title: 'Days of food left, from which feeding cannot wait', topic: 'food', value: 3, low: 2,
    high: 5, unit: 'd',
    when: 'without nectar', basis: { kind: 'our choice', why: 'the estimate may be off by half' },
  }),
  figure({
    key: 'strong-colony-bees', title: 'Bees of a strong colony, for sums by the head', topic: 'food', value: 30000,
    low: 20000, high: 40000,
    unit: 'bees', when: 'summer', basis: { kind: 'our choice', why: 'the colony for which the summer use of food is given' },
  }),
  figure({
    key: 'reading-holds-days', title: 'Days after which a reading of stores is too old to act on', topic: 'food', value: 21,
    low: 14, high: 30,
    unit: 'd', when: 'season of flight',
    basis: { kind: 'our choice', why: 'a nectar flow or a dearth of three weeks overturns it' },
  }),
  figure({
    key: 'temper-bad-visits', title: 'Edgy visits without another cause, before temper is called the colony\'s',
    topic: 'temper', value: 2,
    low: 2, high: 4, unit: 'visits', when: 'on different days',
    basis: { kind: 'our choice', why: 'one day tells more of the day than of the queen' },
  }),
  figure({
    key: 'temper-apart-days', title: 'Days between two visits that are judged apart for temper', topic: 'temper', value: 5,
    low: 3, high: 10,
    unit: 'd', when: 'one yard', basis: { kind: 'our choice', why: 'weather and flow change within a week' },
  }),
  figure({
    key: 'temper-within-days', title: 'Days back for which temper is looked at', topic: 'temper', value: 60, low: 40,
    high: 90, unit: 'd',
    when: 'season of flight', basis: { kind: 'our choice', why: 'two months: about as long as the workers of one time live' },
  }),
  figure({
    key: 'requeen-think-days', title: 'Days within which a change of queen is settled', topic: 'temper', value: 21, low: 14,
    high: 42, unit: 'd',
    when: 'temper judged on several visits', basis: { kind: 'our choice', why: 'a queen has to be found or raised first' },
  }),
  figure({
    key: 'sign-stop-days', title: 'Days for which a sign that means stop stands, after it was last seen', topic: 'health',
    value: 60, low: 30,
    high: 90, unit: 'd', when: 'until the authority has spoken',
    basis: { kind: 'our choice', why: 'long enough for a visit and the answer of a laboratory' },
  }),
  figure({
    key: 'sign-ask-days', title: 'Days for which a sign to ask about stands, after it was last seen', topic: 'health',
    value: 21, low: 14,
    high: 30, unit: 'd', when: 'season of flight', basis: { kind: 'our choice', why: 'one cycle of worker brood' },
  }),
  figure({
    key: 'visit-minutes', title: 'Minutes that a visit takes, with lighting up and closing', topic: 'visits', value: 25,
    low: 15, high: 40,
    unit: 'min', when: 'one hive, keeper alone', basis: { kind: 'our choice', why: 'a minute a comb, and ten around it' },
  }),
  figure({
    key: 'glance-minutes', title: 'Minutes that a glance takes', topic: 'visits', value: 5, low: 3, high: 10, unit: 'min',
    when: 'the last two bars', basis: { kind: 'our choice', why: 'two bars and the lid' },
  }),
  figure({
    key: 'no-visit-minutes', title: 'Minutes that a thing done without opening takes', topic: 'visits', value: 5, low: 3,
    high: 10, unit: 'min',
    when: 'feeding, a look from outside', basis: { kind: 'our choice', why: 'the lid stays on, or is lifted once' },
  }),
  figure({
    key: 'lateness-doubles-days', title: 'Days late after which a need counts twice', topic: 'visits', value: 7, low: 4,
    high: 14, unit: 'd',
    when: 'order of the round', basis: { kind: 'our choice', why: 'a week late is as bad as twice as important' },
  }),
  figure({
    key: 'warmest-hour', title: 'Hour of the day at which it is warmest', topic: 'weather', value: 15, low: 14, high: 16,
    unit: 'h',
    when: 'clear day, local time', basis: { kind: 'common practice', note: 'two to three hours after noon; from memory' },
  }),
  figure({
    key: 'opening-first-hour', title: 'First hour of the day that suits opening', topic: 'visits', value: 10, low: 9,
    high: 11, unit: 'h',
    when: 'field bees out', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'opening-last-hour', title: 'Hour of the day after which opening suits no more', topic: 'visits', value: 17, low: 16,
    high: 18,
    unit: 'h', when: 'field bees out', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'opening-most-rain', title: 'Rain of a day, above which no hour suits opening', topic: 'visits', value: 1, low: 0.5,
    high: 3,
    unit: 'mm', when: 'hours of the rain not known',
    basis: { kind: 'our choice', why: 'with less, some hours of the day are dry' },
  }),
] as const;
