import { type ReactNode, useState } from 'react';
import { type Limb, limbs } from '../../../shared/bows.ts';
import type { MethodAnswer } from '../../../shared/plan-answer.ts';
import { Fold } from '../../parts/fold.tsx';
import { LimbDrawing } from '../../parts/limb-drawing/limb-drawing.tsx';
import {
  type LimbPlace,
  limbPaths,
  scaleOf,
  timesDeeper,
} from '../../parts/limb-drawing/limb-geometry.ts';
import { Panel } from '../../parts/panel.tsx';
import { CutShapeFields } from './cut-shape.tsx';
import { useDesk } from './desk-context.tsx';
import {
  hingeStretches,
  presentPlaces,
  shownFace,
  stationLabel,
  stationText,
  takesThickness,
  takesWidth,
  thicknessPlaces,
  widthPlaces,
} from './limb-places.ts';
import type { MethodColumn } from './method-table.ts';
import { hingeLines, offLines } from './method-table.ts';
import { StationEditor } from './station-editor.tsx';
import { StationTable } from './station-table.tsx';
import classes from './weight-bench.module.css';

export interface ChosenStation {
  limb: Limb;
  index: number;
}

const titles: Record<Limb, string> = { upper: 'UPPER', lower: 'LOWER' };

interface ViewProps {
  places: Record<Limb, LimbPlace[]>;
  plan: MethodAnswer | null;
  chosen: ChosenStation | null;
  onChoose?: (station: ChosenStation) => void;
}

/** Both limbs to one scale, the upper above the lower. */
function Limbs({ places, plan, chosen, onChoose }: ViewProps) {
  const { input } = useDesk();
  const scale = scaleOf(limbs.map((limb) => places[limb]));
  return limbs.map((limb) => {
    const said = plan === null ? 'as it is' : `${offLines(limb, plan[limb]).join(', ')} comes off`;
    return (
      <LimbDrawing
        key={limb}
        title={titles[limb]}
        label={`${titles[limb]} limb, fade on the left, tip on the right: ${said}.`}
        paths={limbPaths(places[limb], scale)}
        lengthIn={scale.lengthIn}
        hinges={plan === null ? [] : hingeStretches(plan, limb)}
        handles={input.bow[limb].stations.map((station, index) => ({
          fromFadeIn: station.fromFadeIn,
          text: stationText(station.fromFadeIn),
          label: stationLabel(limb, station),
          isChosen: chosen?.limb === limb && chosen.index === index,
        }))}
        onChoose={onChoose === undefined ? undefined : (index) => onChoose({ limb, index })}
      />
    );
  });
}

/** How deep the hatched bands are drawn, in words. */
function deeperWords(places: Record<Limb, LimbPlace[]>): string {
  const times = timesDeeper(scaleOf(limbs.map((limb) => places[limb])));
  return times > 1 ? `, drawn ${times} times deeper than it is` : '';
}

function captionOf(plan: MethodAnswer, title: string, places: Record<Limb, LimbPlace[]>): string {
  const off = takesWidth(plan)
    ? `Hatched is what comes off${deeperWords(places)}`
    : 'No width comes off';
  const hinges = plan.strain.hinges.length === 0 ? '' : ` ${hingeLines(plan).join('. ')}.`;
  return `${title}, seen on the ${shownFace(plan.upper)}, both limbs to one scale. ${off}.${hinges}`;
}

/** The limbs to scale with what comes off, their stations, and where the cut runs. */
export function LimbPanel({ shown, note }: { shown: MethodColumn | null; note: ReactNode }) {
  const { input, errors } = useDesk();
  const [chosen, setChosen] = useState<ChosenStation | null>(null);
  const plan = shown?.plan ?? null;
  const places = {
    upper: plan === null ? presentPlaces(input.bow.upper) : widthPlaces(plan.upper),
    lower: plan === null ? presentPlaces(input.bow.lower) : widthPlaces(plan.lower),
  };
  const isWrong = Object.keys(errors).some((path) => /^bow\.(?:upper|lower)\.stations/.test(path));
  return (
    <Panel title="The limbs" actions={note}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing wider than the panel scrolls by keyboard. */}
      <section className={classes.drawing} aria-label="Limbs drawn to scale" tabIndex={0}>
        <Limbs places={places} plan={plan} chosen={chosen} onChoose={setChosen} />
      </section>
      {plan === null || shown === null ? null : (
        <p className={classes.quiet}>{captionOf(plan, shown.title, places)}</p>
      )}
      {plan !== null && takesThickness(plan) ? <OnEdge plan={plan} /> : null}
      <StationEditor chosen={chosen} onClose={() => setChosen(null)} />
      <div className={classes.gap}>
        <Fold title="All stations as a table" said="widths and thicknesses" isWrong={isWrong}>
          <StationTable />
        </Fold>
      </div>
      {plan === null || takesWidth(plan) || shown?.method === 'sanding' ? (
        <div className={classes.gap}>
          <CutShapeFields />
        </div>
      ) : null}
    </Panel>
  );
}

/** The same limbs on edge, where thickness comes off. */
function OnEdge({ plan }: { plan: MethodAnswer }) {
  const places = { upper: thicknessPlaces(plan.upper), lower: thicknessPlaces(plan.lower) };
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing wider than the panel scrolls by keyboard. */}
      <section className={classes.drawing} aria-label="Limbs on edge" tabIndex={0}>
        <Limbs places={places} plan={plan} chosen={null} />
      </section>
      <p className={classes.quiet}>
        On edge, the back on top. Hatched is what comes off{deeperWords(places)}.
      </p>
    </>
  );
}
