import { StrikeOutButton, type StrikeOutInput } from '../../parts/strike-out.tsx';
import { useOrderCommand } from './use-order-command.ts';

interface StrikeOutProps {
  /** What is struck out, for the button's name: `the weighing of 12 Dec`. */
  what: string;
  record: { id: string; rowVersion: number };
  fn: (input: StrikeOutInput) => Promise<unknown>;
}

/** Takes a record of an order out of the count; the order is read again. */
export function StrikeOut({ fn, ...about }: StrikeOutProps) {
  return <StrikeOutButton {...about} command={useOrderCommand(fn)} />;
}
