import type { GeometryVersion } from '../../../../shared/contract/geometry.ts';
import { api } from '../../../api/client.ts';
import { useCommand } from '../../../api/command.ts';
import { momentText } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import { StrikeOutButton } from '../../../parts/strike-out.tsx';
import classes from './stations.module.css';
import { VersionTable } from './version-table.tsx';

function aboutText(version: GeometryVersion): string {
  return [
    `Measured ${momentText(version.measuredAt)} by ${version.personName}`,
    version.orderNumber === null ? '' : `order ${version.orderNumber}`,
    version.limbSetName === null ? '' : `limbs ${version.limbSetName}`,
    version.comparedWith === null ? '' : `changes since version ${version.comparedWith}`,
  ]
    .filter(Boolean)
    .join(', ');
}

function StrikeVersion({ version }: { version: GeometryVersion }) {
  const command = useCommand(api.geometry.strikeOut);
  return <StrikeOutButton what={`version ${version.version}`} record={version} command={command} />;
}

function Version({ version, isNewest }: { version: GeometryVersion; isNewest: boolean }) {
  const { struckReason, note } = version;
  return (
    <Fold
      title={`Version ${version.version}`}
      startsOpen={isNewest}
      said={struckReason === null ? aboutText(version) : 'struck out'}
    >
      <p className={classes.quiet}>{aboutText(version)}</p>
      {note === '' ? null : <p className={classes.note}>{note}</p>}
      <VersionTable version={version} />
      {struckReason === null ? (
        <StrikeVersion version={version} />
      ) : (
        <p className={classes.note}>Struck out, does not count: {struckReason}</p>
      )}
    </Fold>
  );
}

/** Every measuring of the limbs, newest first; the newest stands open. */
export function GeometryVersions({ versions }: { versions: readonly GeometryVersion[] }) {
  if (versions.length === 0) {
    return <p className={classes.quiet}>The limbs were not measured yet.</p>;
  }
  const newest = versions.find((version) => version.struckReason === null);
  return versions.map((version) => (
    <Version key={version.id} version={version} isNewest={version === newest} />
  ));
}
