import { decimal, inchFraction } from '../../../shared/measure.ts';
import { Mark } from '../../parts/mark.tsx';
import { BigButton } from './big-button.tsx';
import classes from './panels.module.css';
import {
  type CutFace,
  type CutPlace,
  faceKey,
  faceText,
  limbWord,
  placeKey,
  type RemeasureEntry,
  waitingFace,
  waitingPlace,
  widthTrouble,
} from './remeasure-entry.ts';
import { bothWays } from './stepping.ts';

interface Measured {
  entry: RemeasureEntry;
  /** Goes back to one by its key; null where they are only read. */
  onGo: ((key: string) => void) | null;
}

export function Widths({ places, entry, onGo }: Measured & { places: readonly CutPlace[] }) {
  if (places.length === 0) return null;
  const waiting = onGo === null ? null : waitingPlace(places, entry);
  return (
    <ul className={classes.widths} aria-label="Widths">
      {places.map((place) => {
        const widthIn = entry.widthsIn[placeKey(place)];
        const trouble = widthIn === undefined ? null : widthTrouble(place, widthIn);
        const name = `${limbWord(place.limb)} ${inchFraction(place.fromFadeIn)}`;
        const said = widthIn === undefined ? '–, to be measured' : bothWays(widthIn);
        const label = [`${name} ${said}`, 'inches from the fade', trouble];
        return (
          <li key={placeKey(place)}>
            <Tile
              name={name}
              value={widthIn === undefined ? '–' : widthIn.toFixed(3)}
              trouble={trouble}
              label={label.filter((text) => text !== null).join(', ')}
              isWaiting={place === waiting}
              onGo={onGo === null ? null : () => onGo(placeKey(place))}
            />
          </li>
        );
      })}
    </ul>
  );
}

export function Faces({ faces, entry, onGo }: Measured & { faces: readonly CutFace[] }) {
  if (faces.length === 0) return null;
  const waiting = onGo === null ? null : waitingFace(faces, entry);
  return (
    <ul className={classes.widths} aria-label="Off the faces">
      {faces.map((face) => {
        const thou = entry.facesThou[faceKey(face)];
        const value = thou == null ? '–' : `${decimal(thou, 2)} thou`;
        const said = thou === null ? 'not measured' : thou === undefined ? '–' : value;
        return (
          <li key={faceKey(face)}>
            <Tile
              name={`${limbWord(face.limb)} ${face.face}`}
              value={thou === null ? 'as meant' : value}
              trouble={null}
              label={`${faceText(face)}: ${said}`}
              isWaiting={face === waiting}
              onGo={onGo === null ? null : () => onGo(faceKey(face))}
            />
          </li>
        );
      })}
    </ul>
  );
}

interface TileProps {
  name: string;
  value: string;
  trouble: string | null;
  label: string;
  isWaiting: boolean;
  onGo: (() => void) | null;
}

function Tile({ name, value, trouble, label, isWaiting, onGo }: TileProps) {
  const shown = (
    <span className={classes.tile}>
      <span className={classes.quiet}>{name}</span> <span>{value}</span>
      {trouble === null ? null : <Mark kind="attention">{trouble}</Mark>}
    </span>
  );
  if (onGo === null) return shown;
  return (
    <BigButton pressed={isWaiting} label={label} onClick={onGo}>
      {shown}
    </BigButton>
  );
}
