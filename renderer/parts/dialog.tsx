import { Modal, type ModalProps } from '@mantine/core';
import { useFocusBack } from './use-focus-back.ts';

/** A dialog that is there as long as it is open; after it the focus is where it was before. */
export function Dialog(props: Omit<ModalProps, 'opened'>) {
  useFocusBack();
  return <Modal opened {...props} />;
}
