/** Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one. */
export const NAMING = `
alone	15
alone area	-19
alone fixture	46
alone material	43
alone part	10
alone surface	-12
alone word	-4
alone work	-26
apart false	6
apart true	-36
back 0	46
back 1	47
back 2	9
back 3	-17
back 4	-32
back 5	-22
back 6	-30
back 7	-23
back 8	-23
before another	-64
before more	46
before new	11
before no	40
counted	-13
counted area	-28
counted material	-8
counted part	-11
counted surface	-27
counted tool	-6
counted word	14
counted work	-17
flawed false	41
flawed true	3
goods false false	-66
goods false true	-32
goods true false	70
goods true true	-4
kind area	-21
kind area article	15
kind area count	-29
kind area length	-36
kind area pack	-12
kind area pointer	19
kind area volume	-14
kind area weight	-34
kind fixture	-11
kind fixture area	-38
kind fixture article	-27
kind fixture count	-7
kind fixture length	-48
kind fixture pack	-4
kind fixture pointer	-71
kind fixture volume	-40
kind fixture weight	-5
kind material	19
kind material area	81
kind material article	-12
kind material count	9
kind material length	56
kind material pack	25
kind material pointer	-19
kind material volume	5
kind material weight	55
kind part	7
kind part area	-14
kind part article	6
kind part count	25
kind part length	3
kind part pack	-27
kind part pointer	-5
kind part volume	-25
kind part weight	-37
kind surface	-19
kind surface area	-61
kind surface count	-16
kind surface length	-48
kind surface pack	-25
kind surface pointer	40
kind surface volume	8
kind surface weight	-59
kind tool article	28
kind tool count	12
kind tool length	-21
kind tool pack	-27
kind tool pointer	26
kind tool volume	-22
kind word	-18
kind word area	-73
kind word article	-8
kind word count	-16
kind word length	-37
kind word pack	-13
kind word pointer	-19
kind word volume	-18
kind word weight	-39
kind work	-19
kind work count	-15
kind work pack	-22
label	21
like told 1	-13
like told 2	-26
like told 3	-25
modified	96
more area	-39
more fixture	-51
more material	61
more part	-3
more surface	-25
more tool	-43
more word	-6
never told false	-4
never told true	-33
not sold so	-34
of -	-13
of about	-47
of above	-6
of after	-36
of around	-17
of at	-37
of before	-25
of behind	-37
of by	9
of down	-19
of for	-31
of from	-43
of in	-25
of into	-64
of near	-22
of of	16
of off	-20
of on	-28
of out	-21
of over	-41
of past	-34
of through	-15
of to	-28
of under	-21
of up	-18
of with	-22
of without	13
other room	-32
own code	28
own false	-96
own first area	34
own first code	75
own first finish	-2
own first fixture	12
own first material	42
own first part	64
own first surface	57
own first tool	96
own first word	-11
own goods false	-14
own goods true	42
own head area	-19
own head area count	-34
own head code	67
own head code length	28
own head defect	10
own head defect count	10
own head finish	-35
own head finish count	-14
own head finish length	48
own head finish pack	-51
own head finish volume	8
own head fixture	-11
own head fixture count	7
own head fixture pack	-31
own head material	40
own head material area	45
own head material count	34
own head material length	48
own head material pack	41
own head material volume	49
own head material weight	30
own head part	36
own head part count	30
own head part length	57
own head part pack	45
own head surface	29
own head surface count	36
own head surface pack	-15
own head tool	67
own head tool count	68
own head word	9
own head word article	-34
own head word count	-15
own head word length	70
own head word pack	56
own head word volume	26
own head word weight	57
own last adhesive	37
own last anchors	64
own last blocks	49
own last board	60
own last boards	77
own last bolts	79
own last bracket	42
own last brackets	-2
own last brads	34
own last cabinet screws	48
own last cable	-45
own last cap	47
own last caulk	50
own last cellulose	37
own last clamps	46
own last clips	57
own last couplings	-49
own last deck screws	45
own last discs	71
own last door sweep	61
own last drip edge	38
own last drywall	34
own last elbows	58
own last end caps	-28
own last epoxy	40
own last filler	26
own last filters	49
own last flashing tape	44
own last flat	-45
own last flex	32
own last foam	82
own last foil tape	24
own last glue	57
own last gray	34
own last grout	47
own last hangers	63
own last hidden hangers	32
own last hinges	68
own last hose	22
own last kit	73
own last kits	-7
own last knobs	44
own last lags	75
own last mastic	22
own last mesh	41
own last mesh tape	36
own last mortar	39
own last mud	41
own last panels	50
own last paste	41
own last pins	41
own last pipe	-42
own last please	-24
own last plugs	37
own last ply	48
own last poly	50
own last posts	67
own last primer	-16
own last rapid set	27
own last rods	58
own last roller	57
own last screw	66
own last screws	68
own last sealant	42
own last sealer	38
own last self leveler	34
own last shelf pins	35
own last shims	39
own last silicone	40
own last stain	27
own last structural screws	40
own last studs	57
own last tape	51
own last thinset	45
own last tile	28
own last tiles	37
own last treads	59
own last washers	72
own last white	-7
own last wood filler	42
own last x	59
own of false article	-39
own of false count	17
own of false pack	-11
own of false pointer	3
own of false volume	52
own of false weight	44
own of true area	63
own of true count	35
own of true length	58
own of true pack	58
own of true volume	47
own of true weight	43
own plural	37
own pointing false	34
own pointing true	-60
own true	34
own unit area	66
own unit article	-39
own unit count	20
own unit length	59
own unit pack	41
own unit pointer	3
own unit volume	50
own unit weight	52
own verb	11
own words 1	24
own words 2	48
own words 3	29
own words 4	69
place -	-20
place here	46
place rest	-26
place subject	-7
plural false area true	-15
plural false article -	-20
plural false count false	-17
plural false count true	-48
plural false length false	2
plural false length true	-33
plural false pack -	-4
plural false pack false	-35
plural false pack true	-21
plural false pointer -	-9
plural false volume false	-14
plural false volume true	-42
plural false weight false	-62
plural false weight true	-59
plural true area true	-33
plural true article -	31
plural true count false	-13
plural true count true	45
plural true length false	-20
plural true length true	-17
plural true pack -	4
plural true pack false	-6
plural true pointer -	11
plural true volume false	-22
plural true volume true	4
plural true weight false	28
plural true weight true	52
pointing false	-34
pointing true	60
ran out	41
rank 0	35
rank 0 article	43
rank 0 count	33
rank 0 pointer	70
rank 1	3
rank 1 pointer	61
rank 2	-7
rank 2 article	26
rank 2 count	-8
rank 2 pointer	-67
rank 3	-15
rank 3 article	-48
rank 3 count	-13
rank 3 pointer	-58
rank 4	-15
rank 4 article	-5
rank 4 count	-16
rank 4 pointer	-46
rank 5	-17
rank 5 article	-40
rank 5 count	-15
rank 5 pointer	-45
rank 6	-35
rank 6 article	-53
rank 6 count	-32
rank 6 pointer	-94
said copula	-3
said imperative	-19
said modal	-26
said owed	-14
said past	-4
said present	-15
same unit	9
sentences 0	34
sentences 1	-45
sentences 2	-31
sentences 3	-30
sized	-11
sold so	100
the	-7
told 1	6
told 1 area	-24
told 1 article	-60
told 1 count	21
told 1 length	-21
told 1 pack	-9
told 1 pointer	8
told 1 volume	13
told 1 weight	2
told 2	-19
told 2 article	-78
told 2 count	-23
told 2 length	-21
told 2 pointer	-66
told 2 volume	-36
told 3 count	5
told 3 length	-30
told 3 pack	7
told before	9
told by false	-9
told by true	14
told here	-42
touches false	30
touches true	43
use buy	-15
use have	-6
use need	-8
use use	21
words 1	-33
words 2	4
words 3	34
words 4	15
`;
