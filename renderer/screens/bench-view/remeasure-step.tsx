import { FaceRemeasure } from './face-remeasure.tsx';
import { ReadBack } from './read-back.tsx';
import {
  type CutFace,
  type CutPlace,
  faceKey,
  type RemeasureEntry,
  remeasureSaid,
  waitingPlace,
} from './remeasure-entry.ts';
import { Faces, Widths } from './remeasure-tiles.tsx';
import { useBenchKeys } from './use-bench-keys.ts';
import { WidthRemeasure } from './width-remeasure.tsx';

export interface RemeasureStepProps {
  places: readonly CutPlace[];
  faces: readonly CutFace[];
  entry: RemeasureEntry;
  onChange: (entry: RemeasureEntry) => void;
  busy: boolean;
  onSave: () => void;
}

/** After a cut: widths one place after another, then the faces, read back before they are saved. */
export function RemeasureStep(props: RemeasureStepProps) {
  const { places, faces, entry } = props;
  if (entry.isReading) return <Said {...props} />;
  const isAtFace = entry.at !== null && faces.some((face) => faceKey(face) === entry.at);
  const isWidthNext = waitingPlace(places, entry) !== null && !isAtFace;
  if (isWidthNext || faces.length === 0) return <WidthRemeasure {...props} />;
  return <FaceRemeasure {...props} />;
}

function Said({ places, faces, entry, onChange, busy, onSave }: RemeasureStepProps) {
  const back = () => onChange({ ...entry, isReading: false });
  useBenchKeys({ onConfirm: onSave, onBack: back });
  return (
    <ReadBack
      said={remeasureSaid(places, faces, entry)}
      more={
        <>
          <Widths places={places} entry={entry} onGo={null} />
          <Faces faces={faces} entry={entry} onGo={null} />
        </>
      }
      busy={busy}
      onYes={onSave}
      onNo={back}
    />
  );
}
