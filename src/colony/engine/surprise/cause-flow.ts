/**
 * What a flow that began or ended since the last visit does to a particle: on each day since, the income that the
 * particle had is put in place of another. What it had is its season, its bees and its flow as they stand on the
 * visit's day; that bees and season were a little less some days ago is left out.
 */
import { type Cloud, meanOf } from '../../../numbers/particle-filter.ts';
import { eightOfTen } from '../../split-contents.ts';
import { adultsOfParticle, part, particleSize } from '../particle.ts';
import { shareOn } from '../laying.ts';
import { freeCells } from '../room.ts';
import type { Given, Told } from './cause.ts';

/** Multiplies the income of the last days by so much and leaves the flow there; comb is built where more came. */
export function flowTimes(given: Given, times: number, ago: number, values: Float64Array, at: number): void {
  const { engine } = given;
  const { stores, room } = engine;
  const season = Math.max(0, shareOn(engine, given.day, values, at) - stores.leastShare) / (1 - stores.leastShare);
  const bees = adultsOfParticle(values, at);
  const flow = Math.exp(values[at + part.flow]! - stores.flowMean);
  const usual = bees * season * stores.nectarKg;
  const more = usual * (times - flow) * ago;
  const most = freeCells(engine, values, at) * room.honeyKgPerCell;
  values[at + part.honeyKg] = Math.max(0, values[at + part.honeyKg]! + Math.min(more, most));
  if (more > 0) build(given, ago, bees, season, values, at);
  values[at + part.flow] = Math.log(times) + stores.flowMean;
}

/** Comb of the days of flow, at full speed for the bees there are. */
function build({ engine: { room } }: Given, ago: number, bees: number, season: number, values: Float64Array, at: number): void {
  const most = values[at + part.combMost]!;
  const grown = room.builtPerDay * Math.min(1, bees / room.builderBees) * Math.min(1, season) * ago;
  values[at + part.comb] = Math.min(Math.max(most, values[at + part.comb]!), values[at + part.comb]! + grown);
}

/** 0 at the height of the season, down to minus infinity where nothing flowers: a flow neither begins nor ends there. */
export function inFlower({ engine, day }: Given, values: Float64Array, at: number): number {
  const share = shareOn(engine, day, values, at);
  return Math.log(Math.max(0, share - engine.stores.leastShare) / (1 - engine.stores.leastShare));
}

/** Particles of which the flow lies as far from the cloud's middle as one of ten does, on the side of that sign. */
export function flowBeyond(cloud: Cloud, sign: 1 | -1): Told {
  const flowOf = (values: Float64Array, at: number): number => values[at + part.flow]!;
  const mean = meanOf(cloud, particleSize, flowOf);
  const sd = Math.sqrt(meanOf(cloud, particleSize, (values, at) => (flowOf(values, at) - mean) ** 2));
  return (values, at) => sign * (flowOf(values, at) - mean) > eightOfTen * sd;
}
