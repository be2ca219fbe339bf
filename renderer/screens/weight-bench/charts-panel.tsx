import type { Reckoned } from '../../../shared/plan-answer.ts';
import { ChartFigure } from '../../parts/charts/chart-figure.tsx';
import { Mark } from '../../parts/mark.tsx';
import { Panel } from '../../parts/panel.tsx';
import { type Chart, forceDrawChart, storyChart, strainCharts } from './chart-data.ts';
import { useDesk } from './desk-context.tsx';
import type { MethodColumn } from './method-table.ts';
import classes from './weight-bench.module.css';
import { type StoryFacts, weightStoryOf } from './weight-story.ts';

interface ChartsPanelProps {
  answer: Reckoned | null;
  shown: MethodColumn | null;
  story: Pick<StoryFacts, 'weighings'>;
}

const figure = (chart: Chart) => <ChartFigure key={chart.title} {...chart} />;

/** Weights, force over draw and strain of the way that is shown. */
export function ChartsPanel({ answer, shown, story }: ChartsPanelProps) {
  const { input } = useDesk();
  const plan = shown?.plan ?? null;
  const forceDraw = answer?.forceDraw ?? null;
  return (
    <Panel title={shown === null ? 'Pictures' : `Pictures of ${shown.title.toLowerCase()}`}>
      <div className={classes.charts}>
        {figure(storyChart(weightStoryOf({ ...story, wish: input.wish, plan })))}
        {forceDraw === null ? null : (
          <div>
            {figure(forceDrawChart(forceDraw))}
            {forceDraw.warnings.map((sentence) => (
              <p key={sentence}>
                <Mark kind="attention">{sentence}</Mark>
              </p>
            ))}
          </div>
        )}
        {plan === null || shown === null ? null : strainCharts(plan, shown.title).map(figure)}
      </div>
    </Panel>
  );
}
