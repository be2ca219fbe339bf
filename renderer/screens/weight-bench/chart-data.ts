import { type Limb, limbs } from '../../../shared/bows.ts';
import { decimal } from '../../../shared/measure.ts';
import type { ForceDrawAnswer, MethodAnswer } from '../../../shared/plan-answer.ts';
import { rangeOf, ticksOf } from '../../parts/charts/chart-rows.ts';
import type { ChartData, ChartSeries } from '../../parts/charts/chart-types.ts';
import { hingeStretches } from './limb-places.ts';
import { hingeLines } from './method-table.ts';
import type { WeightStory } from './weight-story.ts';

export interface Chart {
  title: string;
  caption: string;
  data: ChartData;
}

/** Every weighing, the forecast with its band, the target and where the work stops. */
export function storyChart(story: WeightStory): Chart {
  const { points, forecast, stopBandLbf, targetLbf, rangeLbf } = story;
  const last = points.length;
  const weighed = points.filter(({ kind }) => kind === 'weighed');
  const series: ChartSeries[] = [
    {
      name: 'Weighed (lb)',
      kind: 'points',
      tone: 'ink',
      points: weighed.map(({ place, lbf }) => ({ x: place, y: lbf })),
    },
  ];
  if (forecast !== null) {
    series.push({
      name: 'Forecast, 80 % band (lb)',
      kind: 'points',
      tone: 'accent',
      points: [{ x: forecast.place, y: forecast.lbf }],
    });
  }
  return {
    title: 'Weight story',
    caption: story.caption,
    data: {
      series,
      rules: [
        { axis: 'y', at: targetLbf, text: `target ${decimal(targetLbf)}` },
        ...(stopBandLbf === null
          ? []
          : [
              {
                axis: 'y' as const,
                at: stopBandLbf[1],
                text: `stop at ${stopBandLbf[1].toFixed(1)}`,
              },
            ]),
      ],
      bands:
        stopBandLbf === null
          ? []
          : [
              {
                axis: 'y',
                from: stopBandLbf[0],
                to: stopBandLbf[1],
                tone: 'accent',
                text: 'stop band',
              },
            ],
      spread:
        forecast === null ? null : { x: forecast.place, y: forecast.lbf, band: forecast.bandLbf },
      xLabel: 'Weighing',
      yLabel: 'lb',
      xRange: [0.5, last + 0.5],
      yRange: rangeLbf,
      xTicks: points.map(({ place }) => place),
      xNames: new Map(points.map(({ place, name }) => [place, name])),
      xDigits: 0,
      yDigits: 1,
    },
  };
}

const basisWords: Record<ForceDrawAnswer['basis'], string> = {
  'monotone cubic': 'a smooth curve through the readings',
  'straight line': 'a straight line through two readings',
  model: 'the model, raised or lowered to the present weight',
  'one reading': 'one reading and the model',
};

function drawCaption(answer: ForceDrawAnswer): string {
  const { slopeLbfPerIn, slopeFrom, storedFtLbf, modelledStoredFtLbf, basis } = answer;
  const from = slopeFrom === 'readings' ? 'measured' : 'modelled';
  const stored =
    storedFtLbf === null
      ? `about ${modelledStoredFtLbf.toFixed(1)} ft lb stored, modelled`
      : `${storedFtLbf.toFixed(1)} ft lb stored`;
  const at28 = weightAt('At', answer.at28);
  const own = answer.own === null ? '' : ` ${weightAt("At the customer's own", answer.own)}`;
  return `${slopeLbfPerIn.toFixed(2)} lb an inch at the draw (${from}); ${stored}. ${at28}${own} Now: ${basisWords[basis]}.`;
}

function weightAt(
  words: string,
  { drawIn, forceLbf, note }: { drawIn: number; forceLbf: number | null; note: string },
): string {
  const place = `${words} ${decimal(drawIn, 4)}"`;
  const said = forceLbf === null ? 'no weight told' : `${forceLbf.toFixed(1)} lb`;
  return note === '' ? `${place}: ${said}.` : `${place}: ${said} (${note.replace(/\.$/u, '')}).`;
}

const drawPoints = (points: readonly { drawIn: number; forceLbf: number }[]) =>
  points.map(({ drawIn, forceLbf }) => ({ x: drawIn, y: forceLbf }));

/** Weight over draw: measured, fitted, modelled, and after the recommended way. */
export function forceDrawChart(answer: ForceDrawAnswer): Chart {
  const all: ChartSeries[] = [
    { name: 'Measured (lb)', kind: 'points', tone: 'ink', points: drawPoints(answer.measured) },
    { name: 'Now (lb)', kind: 'line', tone: 'ink', points: drawPoints(answer.curve) },
    {
      name: 'Model (lb)',
      kind: 'line',
      tone: 'quiet',
      isDashed: true,
      points: drawPoints(answer.modelled),
    },
    { name: 'Afterwards (lb)', kind: 'line', tone: 'accent', points: drawPoints(answer.after) },
  ];
  // Where the curve is the model itself, one line says both.
  const isModel = answer.basis === 'model' || answer.basis === 'one reading';
  const series = all.filter(
    ({ name, points }) => points.length > 0 && !(isModel && name.startsWith('Model')),
  );
  const points = series.flatMap((one) => one.points);
  const own = answer.own === null ? [] : [answer.own];
  const draws = [...points.map(({ x }) => x), answer.at28.drawIn, ...own.map((one) => one.drawIn)];
  // Room on the right: the last reading stands whole, not half behind the edge.
  const xRange = rangeOf([...draws, Math.max(...draws) + 0.5], 2);
  // Room above: the names of the draws stand there, clear of the curves.
  const yRange = rangeOf([0, 1.25 * Math.max(0, ...points.map(({ y }) => y))], 10);
  const rules = [
    { axis: 'x' as const, at: answer.at28.drawIn, text: `${decimal(answer.at28.drawIn, 2)}"` },
    ...own
      .filter(({ drawIn }) => Math.abs(drawIn - answer.at28.drawIn) > 0.05)
      .map(({ drawIn }) => ({
        axis: 'x' as const,
        at: drawIn,
        text: `own ${decimal(drawIn, 2)}"`,
      })),
  ];
  return {
    title: 'Force-draw curve',
    caption: drawCaption(answer),
    data: {
      series,
      rules,
      bands: [],
      spread: null,
      xLabel: 'Draw (in, AMO)',
      yLabel: 'lb',
      xRange,
      yRange,
      xDigits: 1,
      yDigits: 1,
    },
  };
}

const limbNames: Record<Limb, string> = { upper: 'Upper limb', lower: 'Lower limb' };

/** Surface strain at full draw along each limb, before and after everything, hinges marked. */
export function strainCharts(plan: MethodAnswer, title: string): Chart[] {
  const { along, peakBefore, peakAfter } = plan.strain;
  if (along.length === 0) return [];
  const percents = along.flatMap(({ before, after }) => [100 * before, 100 * after]);
  const yRange = rangeOf([0, ...percents], 0.1);
  const lengthIn = Math.max(...along.map(({ fromFadeIn }) => fromFadeIn));
  return limbs.map((limb) => {
    const here = along.filter((place) => place.limb === limb);
    const hinges = hingeStretches(plan, limb);
    const said = hingeLines({
      ...plan,
      strain: { ...plan.strain, hinges: plan.strain.hinges.filter((one) => one.limb === limb) },
    });
    const peaks =
      limb === 'upper'
        ? `${title}: peak of both limbs ${(100 * peakAfter).toFixed(2)} % at full draw, was ${(100 * peakBefore).toFixed(2)} %. `
        : '';
    return {
      title: `Strain, ${limbNames[limb].toLowerCase()}`,
      caption: `${peaks}${said.join('. ')}.`,
      data: {
        series: [
          {
            name: 'Before (%)',
            kind: 'line',
            tone: 'ink',
            isDashed: true,
            points: here.map(({ fromFadeIn, before }) => ({ x: fromFadeIn, y: 100 * before })),
          },
          {
            name: 'Afterwards (%)',
            kind: 'line',
            tone: 'accent',
            points: here.map(({ fromFadeIn, after }) => ({ x: fromFadeIn, y: 100 * after })),
          },
        ],
        rules: [],
        bands: hinges.map(([from, to]) => ({
          axis: 'x',
          from: Math.max(0, from - 0.25),
          to: Math.min(lengthIn, to + 0.25),
          tone: 'attention',
          text: 'hinge',
        })),
        spread: null,
        xLabel: 'From the fade (in)',
        yLabel: '%',
        xRange: [0, Math.ceil(lengthIn)],
        yRange,
        xTicks: ticksOf([0, Math.ceil(lengthIn)]),
        xDigits: 1,
        yDigits: 2,
      },
    };
  });
}
