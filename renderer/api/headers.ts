import { deviceHeader, personHeader } from '../../shared/contract/base.ts';
import { session } from './session.ts';

/** Who is calling and from which device; both doors read these. */
export function callHeaders(): Record<string, string> {
  const { personId, device } = session();
  return { [deviceHeader]: device, ...(personId === null ? {} : { [personHeader]: personId }) };
}
