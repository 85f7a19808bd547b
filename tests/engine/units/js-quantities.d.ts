declare module 'js-quantities' {
  interface Quantity {
    to(unit: string): Quantity;
    readonly scalar: number;
  }
  export default function quantity(value: number, unit: string): Quantity;
}
