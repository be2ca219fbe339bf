import { Slider } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { type CSSProperties, useState } from 'react';
import type { LimbOutline } from '../../../../shared/contract/inscriptions.ts';
import {
  cardWidthIn,
  emPerCapital,
  lineStepPerCapital,
  usualLetterHeightIn,
} from '../../../../shared/inscription.ts';
import { orpc } from '../../../api/client.ts';
import { useOrder } from '../order-screen.tsx';
import classes from './true-size.module.css';

/** How far along the limb the outline is drawn, inches. */
const reachIn = 7;
const inches = (value: number, zoom: number) => `${value * zoom}in`;

/** The lines as large as they will stand on the bow, as far as the screen tells the truth. */
export function TrueSize({ lines }: { lines: string }) {
  const { order } = useOrder();
  const [zoom, setZoom] = useState(1);
  const suggested = useQuery(
    orpc.inscriptions.suggest.queryOptions({ input: { orderId: order.card.id } }),
  );
  const height = order.inscriptionLayout?.letterHeightIn ?? usualLetterHeightIn;
  const isLower = /\blower\b/i.test(order.inscriptionLayout?.position ?? '');
  const outline = suggested.data?.outlines.find(
    ({ limb }) => limb === (isLower ? 'lower' : 'upper'),
  );
  const style: CSSProperties = {
    fontSize: inches(height * emPerCapital, zoom),
    lineHeight: inches(height * lineStepPerCapital, zoom),
  };
  return (
    <figure className={classes.figure} aria-label="Proof at true size">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region is reached by keyboard. */}
      <section className={classes.stage} tabIndex={0} aria-label="Lines at true size">
        {outline === undefined ? null : <Outline outline={outline} zoom={zoom} />}
        <pre className={classes.lines} style={style}>
          {lines}
        </pre>
      </section>
      <figcaption className={classes.caption}>
        {outline === undefined
          ? 'The limb was not measured: no outline.'
          : `Edges of the ${outline.limb} limb from its fade line on, as measured.`}
      </figcaption>
      <CardCheck zoom={zoom} />
      <div className={classes.zoom}>
        <span id="true-size-zoom">Zoom: {Math.round(zoom * 100)} %</span>
        <Slider
          aria-labelledby="true-size-zoom"
          thumbLabel="Zoom of the proof, percent"
          min={50}
          max={300}
          step={1}
          value={Math.round(zoom * 100)}
          label={(value) => `${value} %`}
          onChange={(value) => setZoom(value / 100)}
        />
      </div>
    </figure>
  );
}

/** A payment card laid on the screen shows whether the size is true; the slider puts it right. */
function CardCheck({ zoom }: { zoom: number }) {
  return (
    <div>
      <div className={classes.scroll}>
        <div className={classes.card} style={{ width: inches(cardWidthIn, zoom) }} />
      </div>
      <p className={classes.caption}>
        This bar is as wide as a payment card, 85.60 mm (ISO/IEC 7810, ID-1, 85.60 x 53.98 mm).
        Screens differ: lay a card on it and move the zoom until both match. The printed proof is
        what counts.
      </p>
    </div>
  );
}

function Outline({ outline, zoom }: { outline: LimbOutline; zoom: number }) {
  const within = outline.stations.filter(({ fromFadeIn }) => fromFadeIn <= reachIn);
  const beyond = outline.stations.find(({ fromFadeIn }) => fromFadeIn > reachIn);
  const stations = beyond === undefined ? within : [...within, beyond];
  const widest = Math.max(...stations.map(({ widthIn }) => widthIn));
  const edge = (side: 1 | -1) =>
    stations
      .map(({ fromFadeIn, widthIn }) => `${fromFadeIn},${widest / 2 + (side * widthIn) / 2}`)
      .join(' ');
  return (
    <svg
      className={classes.outline}
      style={{ width: inches(reachIn, zoom), height: inches(widest, zoom) }}
      viewBox={`0 0 ${reachIn} ${widest}`}
      aria-hidden="true"
    >
      <polyline points={edge(-1)} vectorEffect="non-scaling-stroke" />
      <polyline points={edge(1)} vectorEffect="non-scaling-stroke" />
    </svg>
  );
}
