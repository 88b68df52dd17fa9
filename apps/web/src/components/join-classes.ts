/** Class names that apply, in one string. */
export function joinClasses(...names: (string | false | null | undefined)[]): string {
  return names.filter(Boolean).join(' ');
}
