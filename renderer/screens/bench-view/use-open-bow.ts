import { useState } from 'react';
import { useLocation } from 'wouter';
import { api } from '../../api/client.ts';
import { sentenceOf } from '../../api/errors.ts';

/** Opens the bench view of the order with a number that was scanned; says so where there is none. */
export function useOpenBow() {
  const [, go] = useLocation();
  const [trouble, setTrouble] = useState<string | null>(null);
  const open = async (number: string): Promise<void> => {
    setTrouble(null);
    try {
      const results = await api.find({ text: number });
      const order = results.find(({ kind, title }) => kind === 'order' && title === number);
      if (order === undefined) setTrouble(`No order has the number ${number}.`);
      else go(`/bench/${order.id}`);
    } catch (error) {
      setTrouble(sentenceOf(error));
    }
  };
  return { open, trouble };
}
