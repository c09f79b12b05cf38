/**
 * What is seen without opening, or by the way: pollen carried in, how many fly, comb being built. Each says little:
 * pollen comes in a little without brood too, flight hangs on the hour, and nobody builds in a dearth. They tell
 * best when they contradict what is believed.
 */
import type { Observation } from '../../../numbers/particle-filter.ts';
import { nextUnit } from '../../../numbers/streams.ts';
import type { EngineConstants } from '../constants.ts';
import { shareOn } from '../laying.ts';
import { adultsOfParticle, openOfParticle, part } from '../particle.ts';

export interface PollenLook {
  readonly seen: boolean;
  /** Day number: by the season pollen is there to be had. */
  readonly day: number;
}

export interface FlightLook {
  readonly flight: 'none' | 'few' | 'many';
}

export interface BuildingLook {
  readonly seen: boolean;
  readonly day: number;
}

type Told<Seen> = Observation<EngineConstants, Seen>;

/** Drawn as 1 for seen; a missing `like` is taken as a look in the height of the season. */
export const pollenSeen: Told<PollenLook> = {
  density: (c, values, at, { seen, day }) => either(pollenChance(c, values, at, day), seen),
  draw: (c, values, at, stream, like) => Number(nextUnit(stream) < pollenChance(c, values, at, like?.day ?? c.season.peak)),
};

/** Drawn as 0, 1, 2 for none, few, many. */
export const flightSeen: Told<FlightLook> = {
  density: (c, values, at, { flight }) => Math.log(flightChance(c, values, at, flight)),
  draw: (c, values, at, stream) => {
    const unit = nextUnit(stream);
    const none = flightChance(c, values, at, 'none');
    return unit < none ? 0 : unit < none + flightChance(c, values, at, 'few') ? 1 : 2;
  },
};

/** Comb with a fresh edge. Drawn as 1 for seen. */
export const buildingSeen: Told<BuildingLook> = {
  density: (c, values, at, { seen, day }) => either(buildingChance(c, values, at, day), seen),
  draw: (c, values, at, stream, like) => Number(nextUnit(stream) < buildingChance(c, values, at, like?.day ?? c.season.peak)),
};

/** Open brood calls for pollen; without it less is fetched. */
function pollenChance(c: EngineConstants, values: Float64Array, at: number, day: number): number {
  const o = c.outside;
  const hungry = 1 - Math.exp(-openOfParticle(values, at, c.sealAge) / o.pollenBrood);
  const season = Math.min(1, shareOn(c, day, values, at) / c.stores.leastShare);
  return season * (o.pollenWithout + (o.pollenWith - o.pollenWithout) * hungry);
}

/** Many is what a full-sized colony shows on most good hours. */
function flightChance(c: EngineConstants, values: Float64Array, at: number, flight: FlightLook['flight']): number {
  const o = c.outside;
  const full = adultsOfParticle(values, at) / (o.flightBees + adultsOfParticle(values, at));
  const none = o.flightNone + (1 - 2 * o.flightNone) * Math.exp(-adultsOfParticle(values, at) / o.flightFew);
  if (flight === 'none') return none;
  return (1 - none) * (flight === 'many' ? full : 1 - full);
}

/** They build where there is a flow and a bar to build on. */
function buildingChance(c: EngineConstants, values: Float64Array, at: number, day: number): number {
  const o = c.outside;
  if (values[at + part.comb]! >= values[at + part.combMost]!) return o.buildingLeast;
  const flow = shareOn(c, day, values, at) * Math.exp(values[at + part.flow]!);
  const chance = flow / (1 + flow);
  return o.buildingLeast + (1 - 2 * o.buildingLeast) * chance;
}

function either(chance: number, seen: boolean): number {
  return Math.log(seen ? chance : 1 - chance);
}
