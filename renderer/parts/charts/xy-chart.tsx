import {
  CartesianGrid,
  ComposedChart,
  ErrorBar,
  Line,
  ReferenceArea,
  ReferenceLine,
  ResponsiveContainer,
  Scatter,
  XAxis,
  YAxis,
} from 'recharts';
import { chartRows, ticksOf } from './chart-rows.ts';
import type { ChartBand, ChartData, ChartRule, ChartSeries, Tone } from './chart-types.ts';

const colours: Record<Tone, string> = {
  ink: 'var(--ink)',
  accent: 'var(--accent)',
  quiet: 'var(--quiet)',
};
const dashes = '7 5';
const text = { fill: 'var(--ink)', fontSize: 14 };
const axis = { stroke: 'var(--quiet)', tick: { fill: 'var(--quiet)', fontSize: 14 } };

function seriesOf({ name, kind, tone, isDashed }: ChartSeries) {
  const colour = colours[tone];
  const isLine = kind === 'line';
  return (
    <Line
      key={name}
      dataKey={name}
      type="linear"
      stroke={isLine ? colour : 'none'}
      strokeWidth={2}
      {...(isDashed === true ? { strokeDasharray: dashes } : {})}
      dot={isLine ? false : { r: 5, fill: 'var(--surface)', stroke: colour, strokeWidth: 2.5 }}
      activeDot={false}
      connectNulls
      isAnimationActive={false}
    />
  );
}

/** Words of upright lines stand left of them, each a line lower than the one before. */
function ruleOf({ axis: which, at, text: value }: ChartRule, place: number) {
  return (
    <ReferenceLine
      key={`${which} ${at} ${value}`}
      {...(which === 'x' ? { x: at } : { y: at })}
      stroke="var(--ink)"
      strokeDasharray="2 4"
      label={
        which === 'x'
          ? { ...text, value, position: 'insideTopRight', dy: place * 18 }
          : { ...text, value, position: 'insideBottomLeft' }
      }
    />
  );
}

function bandOf({ axis: which, from, to, tone, text: value }: ChartBand) {
  return (
    <ReferenceArea
      key={`${which} ${from} ${to}`}
      {...(which === 'x' ? { x1: from, x2: to } : { y1: from, y2: to })}
      fill={`var(--${tone}-soft)`}
      fillOpacity={1}
      stroke={`var(--${tone})`}
      strokeWidth={1}
      {...(which === 'x' ? { label: { ...text, value, position: 'insideTop' as const } } : {})}
    />
  );
}

/** The picture alone; whoever shows it says the same in words. */
export default function XyChart({ data, height }: { data: ChartData; height: number }) {
  const { series, rules, bands, spread, xNames } = data;
  const xText = (x: number) => xNames?.get(x) ?? x.toFixed(data.xDigits);
  const spreads =
    spread === null
      ? []
      : [{ x: spread.x, y: spread.y, off: [spread.y - spread.band[0], spread.band[1] - spread.y] }];
  return (
    <ResponsiveContainer width="100%" height={height}>
      <ComposedChart
        data={chartRows(series)}
        margin={{ top: 12, right: 16, bottom: 20, left: 0 }}
        accessibilityLayer={false}
      >
        <CartesianGrid stroke="var(--rule)" vertical={false} />
        <XAxis
          {...axis}
          dataKey="x"
          type="number"
          domain={[...data.xRange]}
          allowDataOverflow
          ticks={[...(data.xTicks ?? ticksOf(data.xRange))]}
          interval="preserveStartEnd"
          tickFormatter={xText}
          label={{ value: data.xLabel, position: 'insideBottom', offset: -14, ...text }}
        />
        <YAxis
          {...axis}
          width={64}
          domain={[...data.yRange]}
          allowDataOverflow
          ticks={ticksOf(data.yRange, 5)}
          tickFormatter={(y: number) => y.toFixed(data.yDigits)}
          label={{ value: data.yLabel, angle: -90, position: 'insideLeft', offset: 12, ...text }}
        />
        {bands.map(bandOf)}
        {series.map(seriesOf)}
        {spreads.length === 0 ? null : (
          <Scatter data={spreads} dataKey="y" fill="var(--accent)" isAnimationActive={false}>
            <ErrorBar
              dataKey="off"
              direction="y"
              width={14}
              strokeWidth={2.5}
              stroke="var(--accent)"
              isAnimationActive={false}
            />
          </Scatter>
        )}
        {rules.map(ruleOf)}
      </ComposedChart>
    </ResponsiveContainer>
  );
}
