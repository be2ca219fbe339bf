/** What the main process tells the core process. A port rides along with `port`. */
export type CoreMessage = { type: 'port' } | { type: 'stop' };

export function isCoreMessage(data: unknown): data is CoreMessage {
  if (typeof data !== 'object' || data === null || !('type' in data)) return false;
  return data.type === 'port' || data.type === 'stop';
}
