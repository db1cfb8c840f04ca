// Answer: one of the three figures that the page opens with; the console prints the same. In: nothing. Out: its type.
export interface AnswerFigure {
  readonly question: string;
  readonly figure: string;
  readonly detail: string;
}
