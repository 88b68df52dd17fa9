/**
 * The parts screens are made of. All of them take plain words; none fetches anything.
 *
 * - `Button {look?: main|plain|quiet, reason?, busy?, busyWords?}`: `reason` disables it and is shown.
 *   `ButtonLink {href, look?}`: the same look for a link.
 * - `Field {label, hint?, error?, optional?}`: frame of a control; `error` stands beside it and is read out.
 *   `TextField {...Field, suffix?, figures?, ...input}`, `NoteField`, `DateField`, `SelectField {options}`
 *   take `register(name)` of react-hook-form as it is.
 * - `QuantityField {...Field, value: {text, unit}, onChange, units: {value, words}[]}`: as typed.
 * - `Choice {label, value, onChange, options: {value, words, hint?}[], size?: large|small, layout?: flow|pairs|stack, error?}`: chips,
 *   64 px when large. `Stepper {...Field, value, onChange, min?, max?, step?, unit?}`: minus, number, plus.
 * - `Tick {label, checked, onChange, hint?}`: so or not so.
 * - `StateWord {kind, words, detail?}`, `StateMark {kind}`: `kind` is the `mark` that `itemWords` of the
 *   engine's display gives, or `laidUp`.
 * - `Amount {figure, unit, size?: body|large}`: tabular figures, the unit beside them.
 * - `PageAnswer {about, children, beneath?, action?}`: first thing on every screen, the answer as its
 *   heading; `action` is the screen's main button, at the foot of a phone (`ActionBar`).
 * - `Why {of, children, words?, beside?}`: reasons, opened on demand. `useToast()({words, detail?, undo?, tone?, id?})`.
 * - `Notice {tone?: plain|alarm|caution, title?, actions?}`, `EmptyState {title, children, actions?}`,
 *   `Skeleton {of, rows?}`.
 *
 * Where an error is said (`refusalWords` of `client/refusal-words.ts` decides): beside the field if it
 * names one; in a `Notice` at the button if it concerns the whole form; in a toast if it came from a
 * press that has no form (undo, retry); by the route's `error.tsx` if the page has nothing to show.
 */
export { Amount } from './Amount.tsx';
export { Button } from './Button.tsx';
export { ButtonLink } from './ButtonLink.tsx';
export { Choice } from './Choice.tsx';
export { DateField } from './DateField.tsx';
export { EmptyState } from './EmptyState.tsx';
export { joinClasses } from './join-classes.ts';
export { NoteField } from './NoteField.tsx';
export { Notice } from './Notice.tsx';
export { PageAnswer } from './PageAnswer.tsx';
export { QuantityField } from './QuantityField.tsx';
export { type Option, SelectField } from './SelectField.tsx';
export { Skeleton } from './Skeleton.tsx';
export { StateMark } from './StateMark.tsx';
export { StateWord } from './StateWord.tsx';
export { Stepper } from './Stepper.tsx';
export { TextField } from './TextField.tsx';
export { Tick } from './Tick.tsx';
export { ToastProvider, useToast } from './Toast.tsx';
export { Why } from './Why.tsx';
