/** How the model of a colony is kept, what it is asked for, and how what is read errs: numbers of the working, not of bees. */
import { type Topic, figure } from './figure.ts';

function choice<const K extends string, const U extends string>(
  key: K,
  title: string,
  [topic, unit, when]: readonly [Topic, U, string],
  [low, value, high]: readonly [number, number, number],
  why: string,
) {
  return figure({ key, title, topic, value, low, high, unit, when, basis: { kind: 'our choice', why } });
}

const seeing = [
  choice(
    'engine-bars-scale-spread',
    'How far bars with bees at a glance lie from a careful count',
    ['visits', 'log', 'bars counted from above'],
    [0.3, 0.45, 0.6],
    'quick counts have a scale of their own for each hand; published ones lay at a third of careful ones',
  ),
  choice(
    'engine-bars-noise',
    'How a quick count of bars with bees errs',
    ['visits', 'log', 'bars counted from above'],
    [0.2, 0.23, 0.3],
    'published pairs differ by about 0.25; in winter by 0.6',
  ),
  choice(
    'engine-honey-scale-spread',
    'How honey read from eighths differs from hand to hand',
    ['visits', 'log', 'eighths of food'],
    [0.15, 0.25, 0.35],
    'comb is thicker than it looks, or thinner; nectar is taken for honey',
  ),
  choice(
    'engine-honey-noise',
    'How honey read from eighths errs',
    ['visits', 'log', 'eighths of food'],
    [0.15, 0.25, 0.35],
    'as sealed brood, and the filling of cells beside',
  ),
  choice(
    'engine-built-noise',
    'How the built area of all combs errs',
    ['visits', 'log', 'eighths of the outline'],
    [0.1, 0.15, 0.25],
    'built shares are read to half an eighth and carried from visit to visit',
  ),
  choice(
    'engine-least-honey',
    'Honey below which a reading only says that it is little',
    ['visits', 'kg', 'eighths of food'],
    [0.2, 0.4, 0.8],
    'half an eighth of one comb',
  ),
  choice(
    'engine-unopened-spread',
    'How far combs left shut may hold otherwise than expected',
    ['visits', 'log', 'all combs left shut'],
    [0.5, 0.8, 1],
    'they were seen at an earlier visit, or never',
  ),
  choice(
    'engine-as-expected-spread',
    'How far combs that were only said to be as expected may hold otherwise',
    ['visits', 'log', 'all combs so read'],
    [0.4, 0.6, 0.9],
    'an eye that finds nothing strange passes half as much and nearly twice as much; what is filled in is no count of its own',
  ),
] as const;

const telling = [
  choice(
    'engine-particles',
    'Particles that stand for one colony',
    ['visits', 'particles', 'all colonies'],
    [300, 500, 2000],
    'the ranges of made-up colonies hold with it; a yard of two years is read in half the time that a thousand take',
  ),
  choice(
    'engine-particles-first',
    'Particles that stand for one colony before its first visits',
    ['visits', 'particles', 'all colonies'],
    [500, 1000, 4000],
    'of a thousand, ten explain a first visit at once; taken in by parts, twice the usual number is enough',
  ),
  choice(
    'engine-first-visits',
    'Visits after which the usual number of particles will do',
    ['visits', 'visits', 'all colonies'],
    [1, 2, 4],
    'the second visit tells how the first was counted',
  ),
  choice(
    'engine-ahead-particles',
    'Particles that live through the days ahead',
    ['visits', 'particles', 'all colonies'],
    [200, 400, 1000],
    'a chance of one in a hundred still rests on four of them',
  ),
  choice(
    'engine-resample-below',
    'Effective share of the particles below which they are drawn anew',
    ['visits', 'share', 'all colonies'],
    [0.3, 0.5, 1],
    'common for particle filters',
  ),
  choice(
    'engine-part-least',
    'Effective share of the particles below which a visit is taken in by parts',
    ['visits', 'share', 'all colonies'],
    [0.1, 0.3, 0.5],
    'many channels at once leave ten of a thousand; in parts each step leaves some hundred apart',
  ),
  choice(
    'engine-stir-kept',
    'Of each particle’s way from the mean, what stays when the cloud was drawn anew and is stirred',
    ['visits', 'share', 'all colonies'],
    [0.5, 0.6, 0.95],
    'mean and spread stay as they were; the more stays the more copies pass for particles of their own, and ranges are too narrow',
  ),
  choice(
    'engine-stir-least-cells',
    'Cells of open and of sealed brood, each, from which brood is stirred with the rest',
    ['visits', 'cells', 'all colonies'],
    [100, 300, 1000],
    'less is a patch or two, whose logarithm would count for more than all the others',
  ),
  choice(
    'engine-horizon-days',
    'Days ahead for which chances are told',
    ['visits', 'd', 'all colonies'],
    [21, 42, 63],
    'two rounds of brood: what is laid today has become bees',
  ),
  choice(
    'engine-turnover-days',
    'Days ahead and behind for which a change of queens is followed',
    ['queens', 'd', 'summer'],
    [56, 70, 84],
    'nine tenths of the bees are the new queen’s by some eight weeks; and some days for her to begin',
  ),
  choice(
    'engine-guard-age',
    'Age from which bees guard and forage',
    ['adults', 'd', 'summer'],
    [12, 14, 21],
    'two to three weeks in the house come first; guards are among the first to leave it',
  ),
  choice(
    'engine-line-days',
    'Days between the points of a line that is drawn',
    ['visits', 'd', 'all colonies'],
    [1, 3, 7],
    'bees change little in less',
  ),
  choice(
    'engine-least-chance',
    'Chance below which no day is told for what may come',
    ['visits', 'share', 'all colonies'],
    [0.01, 0.03, 0.05],
    'fifteen particles of five hundred: their days would be noise',
  ),
] as const;

export const engineTellingFigures = [...seeing, ...telling] as const;
