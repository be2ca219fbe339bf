import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Message } from '../../../../shared/contract/messages.ts';
import { api, orpc } from '../../../api/client.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { saveFile } from '../../../parts/save-file.ts';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { mailtoOf } from './mailto.ts';
import type { Written } from './message-form.tsx';
import classes from './messages.module.css';

interface MessageActionsProps {
  written: Written;
  onErrors: (errors: Record<string, string>) => void;
  onDone: () => void;
}

function missingOf({ toWhom, body }: Written): Record<string, string> {
  return {
    ...(toWhom.trim() === '' ? { toWhom: 'Say who it goes to.' } : {}),
    ...(body.trim() === '' ? { body: 'Write the message.' } : {}),
  };
}

/** The ways a message leaves the program; each is kept on the order. */
export function MessageActions({ written, onErrors, onDone }: MessageActionsProps) {
  const { order } = useOrder();
  const shop = useQuery(orpc.shop.get.queryOptions());
  const [said, setSaid] = useState('');
  const record = useOrderCommand(api.messages.record);
  const save = useOrderCommand(api.messages.saveFile, saveFile);
  const { step, toWhom, subject, body } = written;
  const common = { orderId: order.card.id, step, toWhom, subject, body };
  const mailto = mailtoOf(toWhom, subject, body);
  const ready = () => {
    const missing = missingOf(written);
    onErrors(missing);
    return Object.keys(missing).length === 0;
  };
  const keep = async (handed: Exclude<Message['handed'], 'file'>, channel: Message['channel']) => {
    const sentAt = new Date().toISOString();
    return (await record.run({ ...common, handed, channel, sentAt })) !== undefined;
  };
  const copy = async () => {
    if (!ready()) return;
    try {
      await navigator.clipboard.writeText(`${subject}\n\n${body}`);
    } catch {
      setSaid('The browser does not let the program copy. Select the text and copy it yourself.');
      return;
    }
    if (await keep('copied', 'other')) setSaid('Copied, and kept on the order.');
  };
  const file = async () => {
    if (!ready()) return;
    const papers = written.papers.map((kind) => ({
      kind,
      format: shop.data?.paperFormat ?? 'letter',
      copy: 'customer' as const,
      aboutId: null,
    }));
    const made = await save.run({ ...common, papers });
    if (made !== undefined) setSaid(`Saved as ${made.name}, and kept on the order.`);
  };
  const failed = { ...record.details, ...save.details };
  return (
    <>
      <div className={classes.buttons}>
        <Button loading={save.busy} onClick={() => void file()}>
          Save as a mail file
        </Button>
        {mailto === null ? null : (
          <Button
            component="a"
            variant="default"
            href={mailto}
            target="_blank"
            rel="noreferrer"
            onClick={(event) => {
              if (ready()) void keep('mail-program', 'email');
              else event.preventDefault();
            }}
          >
            Open in the mail program
          </Button>
        )}
        <Button variant="default" onClick={() => void copy()}>
          Copy
        </Button>
        <Button
          variant="default"
          onClick={() => void (ready() && keep('noted', 'phone').then((ok) => ok && onDone()))}
        >
          Said by phone
        </Button>
        <Button variant="subtle" onClick={onDone}>
          Close
        </Button>
      </div>
      <p className={classes.quiet}>
        {mailto === null
          ? 'This is too long to hand to a mail program whole: save it as a mail file, or copy it.'
          : 'The mail program takes the words only. Papers go along in the mail file.'}
      </p>
      {Object.entries(failed).map(([field, sentence]) => (
        <Mark key={field} kind="stop">
          {sentence}
        </Mark>
      ))}
      <CommandError command={record} />
      <CommandError command={save} />
      <p role="status" className={classes.quiet}>
        {said}
      </p>
    </>
  );
}
