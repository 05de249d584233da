/** Whose feet wore the shoe and how they answered: layers against heat, feet against the brief, the panel. */
import type { FeetLook, PanelCheck } from '../../../core/review/index.ts';
import type { LayersAndHeat } from '../../../core/rounds/index.ts';
import { percentOf } from '../../words/figures.ts';
import { feetLines, layersLine } from '../../words/say-blueprint.ts';
import { panelInWords } from '../../words/say-panel.ts';
import { table } from '../table.ts';
import { heading, type Printing } from './printed.ts';

/** Layers of material against heat and wet in a round. */
export const layersOf = (layers: LayersAndHeat, round: string, { speaker }: Printing): string => {
  const said = speaker.desk.blueprint;
  const percent = (share: number) => percentOf(share, speaker.number);
  return [
    heading(`${said.layersTitle}, ${round}`),
    layersLine(layers, speaker),
    ...(layers.askedRuns === 0
      ? []
      : [
          table(
            [
              { title: said.layersZone },
              { title: said.layersCount, right: true },
              { title: said.layersRuns, right: true },
              { title: said.layersTesters, right: true },
            ],
            layers.zones.map(({ zone, layers: count, runs, runShare, testers, testerShare }) => [
              `${zone} ${speaker.glossary.zones[zone].name}`,
              String(count),
              `${runs}/${layers.askedRuns} (${percent(runShare?.lower ?? 0)} … ${percent(runShare?.upper ?? 1)})`,
              `${testers}/${layers.askedTesters} (${percent(testerShare?.lower ?? 0)} … ${percent(testerShare?.upper ?? 1)})`,
            ]),
          ),
        ]),
  ].join('\n');
};

/** Whose feet the panel has. */
export const feetOf = (feet: FeetLook, { speaker }: Printing): string =>
  [heading(speaker.desk.blueprint.feet), ...feetLines(feet, speaker)].join('\n');

/** Whether the testers answer steadily, and whom to ask what; nothing where nobody logged a run. */
export const panelOf = (panel: PanelCheck, { speaker }: Printing): string[] => {
  const said = panelInWords(panel, speaker);
  if (!said) return [];
  const { noQuestion, questions, agreement, correlations, error } = said;
  const asked = noQuestion === null ? questions : [noQuestion];
  return [
    heading(speaker.desk.panel.check.title),
    [...asked, agreement, ...correlations.map((line) => `- ${line}`), error].join('\n'),
  ];
};
