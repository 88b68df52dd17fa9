import type { ReactNode } from 'react';
import { Button } from '../components/index.ts';
import { Form } from './Form.tsx';
import type { useChange } from './use-change.tsx';

type Change = Pick<ReturnType<typeof useChange>, 'submit' | 'trouble' | 'both' | 'busy' | 'forget'>;

type ChangeFormProps = {
  label: string;
  change: Change;
  /** on the button that saves */
  saveWords?: string;
  /** a button between saving and leaving */
  beside?: ReactNode;
  /** where to go without saving */
  onLeave: () => void;
  /** the fields */
  children: ReactNode;
};

/** The form of a change: its fields, both versions where somebody else was faster, saving and leaving. */
export function ChangeForm(props: ChangeFormProps) {
  const { label, change, saveWords = 'Save the change', beside, onLeave, children } = props;
  return (
    <Form
      label={label}
      onSubmit={change.submit}
      trouble={change.trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={change.busy} busyWords="Saving …">
            {saveWords}
          </Button>
          {beside}
          <Button
            onClick={() => {
              change.forget();
              onLeave();
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      {children}
      {change.both}
    </Form>
  );
}
