import { Button } from '@mantine/core';
import { useState } from 'react';
import { attachmentSubjectLabels } from '../../../shared/attachments.ts';
import type { Attachment } from '../../../shared/contract/attachments.ts';
import { momentText } from '../days.ts';
import { Facts } from '../facts.tsx';
import { Mark } from '../mark.tsx';
import { sizeText } from '../save-file.ts';
import { DescribeForm, StrikeForm } from './photo-forms.tsx';
import { PhotoSaving } from './photo-saving.tsx';
import { titleOf } from './photo-words.ts';
import classes from './photos.module.css';

function factsOf(file: Attachment): [string, string][] {
  const size =
    file.widthPx === null || file.heightPx === null
      ? ''
      : `${file.widthPx} x ${file.heightPx} px, `;
  return [
    ['Shows', attachmentSubjectLabels[file.about]],
    ['Order', file.orderNumber ?? ''],
    ['Taken', file.takenAt === null ? '' : `${momentText(file.takenAt)}, by the camera's clock`],
    ['Added', `${momentText(file.addedAt)}, ${file.personName}`],
    ['File', `${file.fileName}, ${size}${sizeText(file.bytes)}`],
  ];
}

/** What is known about a file, beside its large view, and what can be done with it. */
export function PhotoFacts({ file }: { file: Attachment }) {
  const [form, setForm] = useState<'describe' | 'strike' | null>(null);
  const isStruck = file.struckReason !== null;
  const close = () => setForm(null);
  return (
    <div className={classes.side}>
      <h3 className={classes.heading}>{titleOf(file)}</h3>
      {isStruck ? <Mark kind="stop">Struck out: {file.struckReason}</Mark> : null}
      <Facts facts={factsOf(file)} />
      {form === 'describe' ? <DescribeForm file={file} onDone={close} /> : null}
      {form === 'strike' ? <StrikeForm file={file} onDone={close} /> : null}
      {form === null ? (
        <>
          <PhotoSaving file={file} />
          <div className={classes.buttons}>
            <Button variant="default" onClick={() => setForm('describe')}>
              Describe
            </Button>
            {isStruck ? null : (
              <Button variant="subtle" color="gray" c="dimmed" onClick={() => setForm('strike')}>
                Strike out
              </Button>
            )}
          </div>
        </>
      ) : null}
    </div>
  );
}
