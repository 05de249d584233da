/** Are the zones of a round's upper with more layers the ones called hot and wet? */
import { zoneCodes } from '../foot/index.ts';
import type { RecordId } from '../records/index.ts';
import { layersAndHeat, type LayersAndHeat } from '../rounds/index.ts';
import type { ProjectLog } from './project-log.ts';
import { feetAnswers } from './round-review.ts';

/** The zones in which layers are counted: those of the upper. */
export const layeredZones = zoneCodes.filter((zone) => zone.startsWith('U'));

/** Layers against heat in one round; null where no layers were counted or the round is not in the log. */
export const lookAtLayers = (log: ProjectLog, round: RecordId): LayersAndHeat | null => {
  const layers = (
    log.rounds.find(({ revision }) => revision.id === round)?.body.layers ?? []
  ).filter(({ zone }) => layeredZones.includes(zone));
  if (layers.length === 0) return null;
  const runs = log.pairs.flatMap((pair) => (pair.round === round ? pair.runs : []));
  return layersAndHeat(layers, feetAnswers(runs));
};
