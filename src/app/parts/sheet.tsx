import type { ReactNode } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Button } from './button.tsx';

interface SheetProps {
  readonly open: boolean;
  readonly title: string;
  readonly onClose: () => void;
  /** The word on the button that closes it. */
  readonly close: string;
  readonly children: ReactNode;
}

/** A task laid over the page: from the foot of a phone, in the middle of a larger screen. Escape and tapping beside it close. */
export function Sheet({ open, title, onClose, close, children }: SheetProps): ReactNode {
  return (
    <ModalOverlay
      className="overlay"
      isOpen={open}
      isDismissable
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <Modal className="sheet">
        <Dialog className="sheet-inside">
          <div className="sheet-head">
            <Heading slot="title">{title}</Heading>
            <Button look="quiet" onPress={onClose}>
              {close}
            </Button>
          </div>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** Asks before something that undo does not bring back. Prefer undo. */
export function Confirm({
  open,
  title,
  children,
  action,
  cancel,
  onAction,
  onCancel,
}: {
  readonly open: boolean;
  readonly title: string;
  readonly children: ReactNode;
  readonly action: string;
  readonly cancel: string;
  readonly onAction: () => void;
  readonly onCancel: () => void;
}): ReactNode {
  return (
    <ModalOverlay
      className="overlay"
      isOpen={open}
      isKeyboardDismissDisabled={false}
      onOpenChange={(isOpen) => {
        if (!isOpen) onCancel();
      }}
    >
      <Modal className="sheet">
        <Dialog role="alertdialog" className="sheet-inside">
          <Heading slot="title">{title}</Heading>
          <div>{children}</div>
          <div className="row row-end">
            <Button look="quiet" onPress={onCancel}>
              {cancel}
            </Button>
            <Button look="main" onPress={onAction}>
              {action}
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
