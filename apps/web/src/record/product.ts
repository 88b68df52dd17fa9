import { text } from './typed.ts';

/** Which oil it was. */
export type ProductFields = { product: string; grade: string; approval: string };

export const NO_PRODUCT: ProductFields = { product: '', grade: '', approval: '' };

export function productFields(entry: Partial<ProductFieldsStored>): ProductFields {
  return {
    product: entry.product ?? '',
    grade: entry.grade ?? '',
    approval: entry.approval ?? '',
  };
}
type ProductFieldsStored = { [K in keyof ProductFields]: string | undefined };

export const readProduct = (fields: ProductFields) => ({
  product: text(fields.product),
  grade: text(fields.grade),
  approval: text(fields.approval),
});
