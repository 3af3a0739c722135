/** Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one. */
export const NAMING = `
alone	5
alone area	-21
alone fixture	39
alone material	20
alone part	22
alone word	-15
alone work	-32
apart false	-8
apart true	-33
back 0	46
back 1	50
back 2	7
back 3	-20
back 4	-32
back 5	-21
back 6	-27
back 7	-28
back 8	-26
before another	-69
before more	36
before new	19
before no	27
counted	-14
counted area	-3
counted fixture	7
counted material	-11
counted part	-19
counted surface	-26
counted tool	8
counted word	13
flawed false	37
flawed true	3
goods false false	-63
goods false true	-32
goods true false	66
goods true true	-3
kind area	-22
kind area area	-61
kind area article	14
kind area count	-31
kind area length	-34
kind area pack	-17
kind area pointer	24
kind area volume	-5
kind area weight	-26
kind fixture	-16
kind fixture area	-37
kind fixture article	-8
kind fixture count	-15
kind fixture length	-49
kind fixture pack	-7
kind fixture pointer	-95
kind fixture volume	-33
kind fixture weight	-17
kind material	26
kind material area	90
kind material count	19
kind material length	64
kind material pack	28
kind material pointer	-34
kind material volume	10
kind material weight	52
kind part	10
kind part area	-12
kind part article	6
kind part count	29
kind part length	16
kind part pack	-31
kind part pointer	30
kind part volume	-27
kind part weight	-45
kind surface	-18
kind surface area	-39
kind surface article	-21
kind surface count	-14
kind surface length	-48
kind surface pack	-25
kind surface pointer	29
kind surface volume	7
kind surface weight	-56
kind tool	-5
kind tool article	59
kind tool length	-35
kind tool pack	-26
kind tool pointer	21
kind tool volume	-17
kind word	-21
kind word area	-81
kind word article	-22
kind word count	-23
kind word length	-42
kind word pack	-10
kind word pointer	-21
kind word volume	-33
kind word weight	-32
kind work	-9
kind work pack	-13
label	16
like told 1	-6
like told 2	-28
like told 3	-28
modified	108
more area	-43
more fixture	-38
more material	65
more part	24
more surface	-7
more tool	15
more word	-23
never told false	-5
never told true	-30
not sold so	-33
of -	-10
of about	-44
of above	-9
of after	-36
of along	-18
of around	-14
of at	-38
of before	3
of behind	-27
of below	-37
of between	-94
of by	-29
of down	-18
of for	-13
of from	-32
of in	-26
of into	-71
of near	-21
of of	14
of off	-20
of on	-36
of out	-20
of over	-37
of past	-31
of through	-21
of to	-26
of under	-27
of up	-14
of with	-15
of without	17
other room	-26
own false	-108
own first area	-23
own first code	81
own first finish	11
own first fixture	22
own first material	44
own first part	62
own first surface	56
own first tool	105
own first word	-22
own goods false	-20
own goods true	42
own head area	-39
own head area count	-56
own head code	82
own head defect	9
own head defect count	9
own head finish	-13
own head finish count	8
own head finish length	22
own head finish pack	-50
own head finish volume	23
own head fixture count	4
own head fixture pack	-27
own head material	37
own head material area	46
own head material count	38
own head material length	35
own head material pack	37
own head material volume	38
own head material weight	28
own head part	37
own head part count	31
own head part length	80
own head part pack	44
own head surface	25
own head surface count	31
own head surface pack	-16
own head tool	67
own head tool count	69
own head word	9
own head word article	-35
own head word count	-20
own head word length	13
own head word pack	68
own head word volume	45
own head word weight	64
own last adhesive	41
own last anchor	65
own last anchors	65
own last base	85
own last blocks	50
own last blue tape	40
own last board	3
own last boards	79
own last bolt	66
own last bolts	78
own last bonding primer	37
own last bracket	39
own last brackets	19
own last brads	37
own last brushes	67
own last bulbs	27
own last cabinet screws	50
own last cable	-35
own last cap	49
own last casing	39
own last caulk	53
own last ceiling white	64
own last cellulose	46
own last clamps	50
own last clips	51
own last color	54
own last construction adhesive	52
own last contractor bags	68
own last couplings	-40
own last cut	-26
own last deck screws	45
own last discs	74
own last door sweep	61
own last doors	-35
own last drip edge	39
own last drywall	35
own last elbow	51
own last elbows	71
own last enamel	53
own last end caps	-27
own last epoxy	43
own last filler	29
own last filters	55
own last flashing tape	50
own last flat	-64
own last flex	-31
own last foam	87
own last foil tape	28
own last gasket	54
own last glue	67
own last gray	51
own last grout	68
own last hangers	60
own last hidden hangers	35
own last hinges	61
own last hose	29
own last instead	6
own last kit	72
own last kits	-13
own last knobs	42
own last lacquer	-52
own last lags	69
own last longer	-26
own last mastic	42
own last mesh	38
own last mesh tape	44
own last mortar	46
own last mud	42
own last nail plates	45
own last nails	36
own last old work boxes	62
own last outlets	-54
own last panels	45
own last paste	42
own last pins	51
own last pipe	-36
own last plates	76
own last please	-28
own last plugs	36
own last ply	50
own last poly	49
own last posts	61
own last primer	-13
own last rapid set	31
own last red	6
own last ring	95
own last rods	57
own last roller	56
own last satin	42
own last screw	-15
own last screws	67
own last sealant	47
own last sealer	40
own last self leveler	37
own last shelf pins	33
own last shims	54
own last silicone	47
own last stain	28
own last structural screws	47
own last studs	51
own last supply lines	68
own last tapcons	50
own last tape	56
own last thinset	48
own last tile	46
own last tiles	32
own last toggle bolts	59
own last toggles	42
own last treads	50
own last trim screws	50
own last varnish	39
own last washers	79
own last wax ring	66
own last white	-12
own last wire nuts	43
own last wood filler	44
own last x	81
own of false article	-39
own of false count	17
own of false length	64
own of false pack	-17
own of false pointer	14
own of false volume	12
own of false weight	44
own of true area	63
own of true count	40
own of true length	39
own of true pack	59
own of true volume	58
own of true weight	45
own plural	36
own pointing false	32
own pointing true	-66
own true	32
own unit area	65
own unit article	-39
own unit count	20
own unit length	43
own unit pack	40
own unit pointer	14
own unit volume	46
own unit weight	51
own verb	19
own words 1	24
own words 2	48
own words 3	26
own words 4	82
place -	-19
place here	46
place rest	-26
place subject	-6
plural false area true	-19
plural false article -	-14
plural false count false	-17
plural false count true	-46
plural false length true	-9
plural false pack false	-26
plural false pack true	-16
plural false pointer -	-16
plural false volume false	-8
plural false volume true	-18
plural false weight false	-79
plural false weight true	-54
plural true area true	-35
plural true article -	23
plural true count false	-15
plural true count true	46
plural true length false	-25
plural true length true	-37
plural true pack false	-14
plural true pack true	-7
plural true pointer -	14
plural true volume false	-52
plural true weight false	49
plural true weight true	49
pointing false	-32
pointing true	66
ran out	55
rank 0	36
rank 0 article	54
rank 0 count	33
rank 0 pointer	55
rank 1	4
rank 1 count	3
rank 1 pointer	43
rank 2	-5
rank 2 article	24
rank 2 count	-6
rank 2 pointer	-36
rank 3	-16
rank 3 article	-36
rank 3 count	-15
rank 3 pointer	-30
rank 4	-18
rank 4 article	-22
rank 4 count	-18
rank 4 pointer	-46
rank 5	-19
rank 5 article	-56
rank 5 count	-16
rank 5 pointer	-46
rank 6	-36
rank 6 article	-69
rank 6 count	-33
rank 6 pointer	-106
said copula	-5
said imperative	-21
said modal	-12
said none	-2
said owed	-11
said past	-5
said present	-9
same unit	7
sentences 0	32
sentences 1	-44
sentences 2	-31
sentences 3	-31
sized	-11
sold so	107
told 1	12
told 1 area	-28
told 1 article	-23
told 1 count	28
told 1 length	-26
told 1 pack	-6
told 1 pointer	-25
told 1 volume	28
told 1 weight	-5
told 2	-30
told 2 article	-100
told 2 count	-31
told 2 length	-20
told 2 pack	-15
told 2 pointer	-75
told 2 volume	-31
told 3	-18
told 3 count	-7
told 3 length	-36
told 3 pack	-5
told 3 pointer	-30
told 3 volume	-49
told before	10
told by false	-3
told by true	7
told here	-48
touches false	44
touches true	10
use buy	-30
use use	24
words 1	-27
words 2	4
words 3	18
words 4	10
`;
