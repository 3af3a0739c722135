/** Written by tests/learn/orderDoubts.ts: a sign that a line of the order is still to buy, and hundredths for it. */
export const ORDER_DOUBTS = `
count many	-14
count none	-14
count one	19
days 0	27
days 0 times 1	14
days 0 times 2	16
days 1	23
days 1 times 1	21
days 2	24
days 2 times 1	21
days 3	-7
days 3 times 1	-7
days 4	-33
days 4 times 1	-25
days 4 times 2	-9
days 5	-40
days 5 times 1	-43
days 5 times 2	7
head known false	-39
head known true	18
known 0 of 1	-7
known 0 of 2	-18
known 1 of 1	-14
known 1 of 2	7
known 2 of 2	21
known 2 of 3	9
known 3 of 3	13
known 4 of 3	-7
known 5 of 3	-14
notes 0	62
notes 1	19
notes 2	-7
notes 3	-72
notes 4	-25
others 0	-21
others 1	28
rule list/need	17
rule material/need	-15
said 0	-21
said 1	12
said 2	18
sure 5	-52
sure 6	-6
sure 7	-6
sure 9	49
times 1	-12
times 2	16
unit bag	-10
unit box	-14
unit bucket	-7
unit each	12
unit ft	-6
unit gal	13
unit length	-21
unit null	-14
unit pair	5
unit qt	39
unit roll	6
unit sheet	-7
use false	-29
use true	28
`;
