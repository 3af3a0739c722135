/** Written by `tests/learn/naming.ts`: a sign and its weight a line. */
export const FIGURE = `after at part	0.27
after on word	-0.15
after term size	0.66
after word surface	-0.19
article a	-0.16
article the	0.23
behind at -1	-0.32
behind at -2	0.26
behind at -4	-0.21
behind at here-before	0.31
behind by +1	-0.18
behind by -1	-0.39
behind by -2	0.25
behind by -4	-0.21
behind by here-before	0.62
behind deep +1	-0.13
behind deep -1	0.27
behind deep -2	0.17
behind deep here-before	0.22
behind end +1	-0.20
behind end -4	-0.15
behind end here-before	0.30
behind from here-before	0.21
behind in -1	0.13
behind in -4	-0.19
behind in here-after	-0.18
behind in here-before	0.38
behind of +1	-0.16
behind of -4	-0.23
behind of here-before	0.41
behind off +1	-0.17
behind off -1	0.21
behind off -2	-0.18
behind off -3	-0.31
behind off -4	-0.15
behind off here-before	0.60
behind on +1	-0.18
behind on -2	0.18
behind on -3	0.31
behind on -4	-0.25
behind on here-after	-0.18
behind over -1	-0.17
behind over here-before	0.37
behind quantity -1	0.17
behind short -3	-0.15
behind short here-before	0.39
behind term +1	-0.21
behind term -2	0.15
behind term -3	-0.26
behind term -4	-0.32
behind term here-after	0.17
behind term here-before	0.44
behind to -3	-0.27
behind to here-before	0.30
behind wide -1	-0.23
behind wide here-before	0.43
behind with here-before	0.23
behind word -2	-0.15
behind word -4	-0.15
behind word here-before	0.32
between 	0.30
between about	-0.39
between at	0.42
between be	-0.40
between by	-0.15
between is	0.22
between say	-0.30
carried	0.34
carried -1 pointer	0.45
carried -2 none	-0.20
carried -2 pointer	0.59
carried -3 pointer	0.49
carried -4 none	-0.47
carried -4 pointer	0.26
carried here-before none	0.25
carried here-before own	0.16
carried here-before pointer	0.49
counted percent	0.33
far after 0	0.20
far after 1	-0.20
far after 13+	-0.23
far after 5-7	-0.15
far after 8-12	-0.14
far before 0	0.32
far before 1	0.17
far before 13+	-0.29
far before 3-4	0.18
far before 5-7	0.32
frame copula +1	-0.14
frame copula -1	0.13
frame copula -4	-0.25
frame copula here-before	0.36
frame imperative +1	-0.36
frame imperative -1	0.43
frame imperative -2	-0.68
frame imperative -4	0.20
frame imperative here-after	-0.14
frame imperative here-before	0.41
frame modal -1	0.34
frame modal -2	0.25
frame modal -4	-0.25
frame modal here-before	-0.15
frame none +1	-0.21
frame none -3	-0.13
frame none -4	-0.14
frame none here-before	0.45
frame owed +1	-0.26
frame owed -1	0.14
frame owed -2	-0.14
frame owed -4	-0.34
frame owed here-before	0.65
frame past +1	-0.16
frame past -2	0.18
frame past -3	-0.40
frame past here-before	0.38
frame present +1	-0.27
frame present -4	-0.30
frame present here-before	0.43
heading	-0.19
heading +1	-0.20
heading -2	-0.38
heading -3	-0.16
join	-0.15
join +1	-0.14
join +1 tool	-0.13
join -2 fixture	0.21
join -3	-0.16
join area	-0.13
join finish+size	-0.24
join fixture+tool	-0.13
join fixture+work	-0.13
join leads from	-0.17
join leads on quantity	-0.14
join leads quantity word	-0.13
join leads term by	-0.17
join leads verb quantity	0.14
join leads with quantity	0.13
join leads word term	0.21
join leads word verb quantity	0.15
join links 	0.17
join links at quantity	0.30
join links at word	0.81
join links at word term	-0.17
join links behind	0.68
join links by term verb	0.15
join links for	0.21
join links of	0.35
join links on quantity	-0.16
join links quantity at	0.29
join links quantity from	-0.37
join links quantity of	0.26
join links quantity on	0.14
join links term	0.32
join links term at	0.21
join links term quantity at	-0.24
join links to	0.19
join links verb	0.13
join links verb out	0.26
join links verb quantity off	0.42
join links verb with	0.15
join links with quantity	0.19
join links word quantity	-0.30
join links word quantity word	-0.19
join links word term	0.17
join links word verb quantity	0.15
join links word verb word	-0.18
join links word word word	-0.16
join material+tells	0.17
join part+tool	0.15
join same-after	0.21
join same-after material	0.19
join same-after part	0.20
join same-after size	0.18
join same-after surface	0.22
join same-after verbish	0.18
join same-before tells	-0.13
join size 2	-0.14
join size+area	0.24
join size+finish	-0.38
join size+fixture	0.13
join size+part	0.25
join sizes 3+1	0.14
join surface+defect	0.14
join tells+fixture	0.26
join tool+surface	-0.14
join verbish	-0.14
join verbish+area	0.13
kind +1 area	-0.14
kind +1 material	-0.15
kind +1 part	-0.23
kind +1 size	-0.13
kind +1 surface	-0.26
kind +1 tool	-0.15
kind -1 area	-0.16
kind -1 defect	-0.37
kind -1 finish	-0.52
kind -1 fixture	0.52
kind -1 material	0.27
kind -1 part	0.27
kind -1 surface	0.21
kind -1 word	-0.17
kind -2 area	-0.36
kind -2 finish	-0.24
kind -2 fixture	0.33
kind -2 material	0.17
kind -2 part	-0.15
kind -2 size	0.29
kind -2 verbish	-0.18
kind -2 work	-0.20
kind -3 part	-0.14
kind -3 surface	-0.21
kind -4 fixture	-0.21
kind -4 surface	-0.23
kind area	-0.14
kind defect	-0.19
kind finish	-0.20
kind fixture	0.18
kind here-after defect	-0.15
kind here-after fixture	-0.22
kind here-after size	0.63
kind here-after verbish	-0.14
kind here-before finish	0.26
kind here-before fixture	0.31
kind here-before material	0.29
kind here-before part	0.72
kind here-before size	0.26
kind here-before surface	0.49
kind here-before tells	-0.36
kind here-before verbish	0.16
kind here-before word	0.15
kind material	0.14
kind part	0.13
kind size	0.17
kind tells	-0.15
kind word	-0.13
kind work	-0.14
lead a -1	0.18
lead a -2	0.26
lead a -3	-0.31
lead a -4	-0.16
lead about -1	0.14
lead about -2	-0.15
lead about -4	-0.24
lead about here-after	0.23
lead about here-before	0.30
lead at -2	-0.18
lead at -3	-0.18
lead at -4	-0.33
lead at here-before	0.68
lead by -1	-0.17
lead by -2	0.18
lead by -4	-0.18
lead by here-before	0.37
lead defect -1	-0.27
lead defect here-before	0.39
lead fixture here-before	0.33
lead in -1	-0.22
lead in -2	0.31
lead mark -1	-0.18
lead material -2	-0.14
lead material here-before	0.32
lead out -2	-0.45
lead over -1	-0.35
lead over -2	-0.15
lead part here-before	0.28
lead size -1	-0.24
lead size -2	0.13
lead size -4	-0.13
lead size here-after	0.25
lead surface -1	0.18
lead surface -2	-0.14
lead surface here-before	0.20
lead to -4	-0.16
lead to here-before	0.33
lead up -2	-0.15
lead up here-before	0.22
lead verbish -1	0.14
lead verbish -4	-0.13
lead verbish here-after	-0.16
lead verbish here-before	0.44
lead word -2	0.24
lead word -3	-0.19
lead word -4	-0.22
lead word here-after	-0.14
lead word here-before	0.35
lemma be object	-0.26
lemma be subject	0.28
lemma go subject	0.18
lemma have subject	0.22
lemma say subject	-0.31
not-carried	-0.31
not-carried +1 pointer	-0.19
not-carried +1 tells	-0.17
not-carried -1 own	-0.21
not-carried -1 pointer	-0.18
not-carried -2 none	-0.35
not-carried -2 own	-0.13
not-carried -2 pointer	-0.42
not-carried -3 pointer	-0.28
not-carried -3 tells	-0.27
not-carried -4 pointer	-0.31
not-carried -4 tells	-0.16
not-carried here-after none	0.20
not-carried here-before none	0.49
not-carried here-before own	0.43
not-carried here-before pointer	0.20
not-carried here-before tells	-0.56
opens-with +1	-0.48
opens-with -1	0.59
opens-with -3	-0.36
opens-with here-after	0.21
part +1 bare	-0.18
part +1 object	-0.13
part +1 opens	-0.24
part +1 subject	-0.18
part +1 subject-late	-0.14
part -1 bare	-0.26
part -1 opens	0.36
part -1 subject	0.33
part -1 subject-late	-0.31
part -2 subject	0.14
part -2 subject-late	-0.13
part -3 bare	-0.26
part -3 subject	-0.13
part -3 subject-late	-0.13
part -4 object	-0.14
part -4 subject	-0.16
part -4 subject-late	-0.16
part bare defect	-0.14
part bare fixture	0.20
part bare material	0.16
part bare word	-0.23
part here-before bare	0.51
part here-before object	0.19
part here-before opens	0.36
part here-before subject	0.49
part here-before subject-late	-0.16
part object	-0.20
part object defect	-0.18
part object finish	-0.15
part object size	0.23
part object tool	-0.18
part object verbish	-0.20
part opens	0.18
part opens area	-0.18
part opens fixture	0.40
part opens material	0.24
part opens part	0.28
part opens size	0.22
part opens verbish	0.62
part opens word	-0.15
part subject	0.22
part subject fixture	0.22
part subject material	0.23
part subject surface	0.21
part subject tells	-0.18
part subject verbish	0.26
part subject work	-0.14
part subject-late	-0.20
part subject-late area	-0.29
part subject-late fixture	-0.16
part subject-late surface	-0.15
part subject-late tool	-0.17
part subject-late word	-0.15
prep after	-0.50
prep around	-0.16
prep at	-0.18
prep before	-0.27
prep behind	-0.32
prep below	-0.16
prep by	-0.47
prep for	-0.22
prep from	-0.42
prep here-after from	0.16
prep here-after in	-0.13
prep here-after of	-0.27
prep here-before at	-0.21
prep here-before by	-0.67
prep here-before in	-0.22
prep here-before of	0.32
prep here-before to	-0.16
prep in	-0.16
prep of	-0.19
prep off	-0.28
prep other after	-0.48
prep other around	-0.16
prep other at	-0.19
prep other before	-0.17
prep other behind	-0.27
prep other by	-0.29
prep other for	-0.19
prep other from	-0.24
prep other in	-0.14
prep other of	-0.26
prep other off	-0.24
prep other out	-0.24
prep other to	-0.24
prep other up	0.27
prep other with	-0.18
prep out	-0.46
prep to	-0.23
prep toward	-0.37
prep under	-0.17
prep with	-0.21
rank after 2	-0.17
rank after 4	-0.14
rank before 0	0.23
rank before 1	0.19
rank before 4	-0.30
says past	-0.19
sentences -1	-0.40
sentences -1 bare	-0.21
sentences -1 opens	-0.39
sentences -1 subject	-0.31
sentences -1 subject-late	-0.15
sentences -2	-0.22
sentences -2 subject	-0.24
sentences 1	-0.20
sentences 1 bare	-0.14
sentences 1 opens	-0.19
sentences 1 subject	-0.23
size 1	-0.18
size 2	0.13
size 3	0.34
stands-off-after	-0.17
subject none +1	-0.20
subject none -2	-0.17
subject none -3	-0.15
subject none here-after	0.14
subject none here-before	0.50
subject own +1	-0.13
subject own -1	-0.22
subject own -4	-0.15
subject own here-before	0.47
subject person +1	-0.14
subject person -1	0.50
subject person -2	-0.34
subject person -4	-0.23
subject pointer +1	-0.27
subject pointer -1	0.29
subject pointer -2	0.24
subject pointer -4	-0.33
subject pointer here-after	-0.23
subject pointer here-before	0.33
subject tells +1	-0.18
subject tells -2	0.34
subject tells -3	-0.27
subject tells -4	-0.18
subject tells here-before	-0.52
touches-after	0.21
touches-before	0.30
unit area material	0.72
unit area word	-0.55
unit length area	-0.17
unit length defect	-0.17
unit length finish	-0.22
unit length fixture	0.19
unit length tool	-0.13
unit none defect	-0.18
unit none fixture	0.15
unit none material	0.38
unit none part	0.30
unit none size	0.15
unit none tells	-0.33
unit none word	-0.32
unit percent area	0.14
unit percent defect	-0.18
unit percent fixture	0.14
unit percent size	0.18
unit percent surface	0.55
unit percent tells	-0.34
unit percent word	-0.44
unit temperature area	0.14
use buy	-0.22
use have	-0.17
use say	0.23
use see	0.38
use work	-0.14
where +1	-0.20
where -4	-0.20
where here-before	0.43
whole after at part	0.54
whole after of material	0.56
whole after on word	-0.22
whole after term defect	0.17
whole after term size	0.20
whole after term surface	0.17
whole after word material	-0.13
whole after word surface	-0.31
whole after word word	-0.15
whole article none	-0.22
whole behind across here-before	0.55
whole behind at -1	-0.38
whole behind at -3	-0.14
whole behind at -4	-0.16
whole behind at here-after	0.37
whole behind at here-before	0.22
whole behind by +1	-0.17
whole behind by -1	-0.21
whole behind by -2	0.78
whole behind by -3	-0.19
whole behind by -4	-0.20
whole behind by here-before	0.37
whole behind deep +1	-0.14
whole behind deep -2	-0.22
whole behind deep -4	-0.13
whole behind end +1	-0.19
whole behind end here-before	0.15
whole behind from here-after	0.30
whole behind from here-before	0.17
whole behind in here-before	0.31
whole behind of -1	-0.38
whole behind of -4	-0.14
whole behind of here-after	0.45
whole behind off -3	-0.13
whole behind off here-before	0.20
whole behind on -1	-0.25
whole behind on -2	-0.45
whole behind on -4	-0.16
whole behind on here-before	-0.24
whole behind over here-before	0.25
whole behind short -1	-0.15
whole behind short -3	-0.14
whole behind short -4	-0.13
whole behind term +1	-0.17
whole behind term -2	0.24
whole behind term -3	-0.15
whole behind term -4	-0.22
whole behind term here-after	0.34
whole behind term here-before	0.34
whole behind to here-after	0.26
whole behind to here-before	-0.14
whole behind wide -1	-0.14
whole behind wide here-before	0.14
whole behind with -1	0.27
whole behind word +1	-0.17
whole behind word -4	-0.22
whole behind word here-after	-0.21
whole behind word here-before	0.13
whole between about	0.31
whole between at	0.14
whole between be	0.26
whole between by	0.16
whole between maybe	0.22
whole carried	0.28
whole carried -1 own	0.49
whole carried -1 pointer	0.14
whole carried -2 none	0.52
whole carried -2 own	0.60
whole carried -2 pointer	0.40
whole carried -3 none	-0.27
whole carried -3 pointer	-0.13
whole carried -4 none	-0.15
whole carried here-before pointer	0.46
whole counted pack	-0.13
whole counted percent	0.56
whole far after 0	0.22
whole far after 13+	-0.19
whole far after 5-7	-0.13
whole far after 8-12	-0.18
whole far before 1	0.13
whole far before 13+	-0.31
whole far before 2	0.20
whole frame copula +1	-0.17
whole frame copula -4	-0.17
whole frame copula here-before	0.32
whole frame imperative -2	-0.45
whole frame imperative -4	0.32
whole frame modal -1	0.45
whole frame modal -2	-0.17
whole frame modal -4	-0.20
whole frame modal here-after	0.26
whole frame modal here-before	0.13
whole frame none +1	-0.23
whole frame none -2	0.14
whole frame none -4	-0.24
whole frame owed -3	-0.13
whole frame owed -4	-0.16
whole frame owed here-before	0.47
whole frame past +1	-0.15
whole frame past -2	-0.13
whole frame past -3	-0.23
whole frame past -4	-0.14
whole frame past here-after	0.17
whole frame past here-before	0.29
whole frame present +1	-0.19
whole frame present -1	0.31
whole frame present -4	-0.22
whole frame present here-after	0.27
whole frame present here-before	0.22
whole heading +1	-0.16
whole heading -2	-0.39
whole heading -3	0.42
whole heading -4	-0.14
whole kind +1 defect	-0.21
whole kind +1 fixture	-0.13
whole kind +1 material	-0.13
whole kind +1 part	-0.17
whole kind -1 area	0.35
whole kind -1 defect	-0.31
whole kind -1 finish	-0.23
whole kind -1 part	0.20
whole kind -1 tells	-0.15
whole kind -1 tool	0.18
whole kind -1 verbish	-0.18
whole kind -2 area	-0.32
whole kind -2 finish	-0.14
whole kind -2 fixture	0.83
whole kind -2 size	-0.16
whole kind -2 verbish	-0.16
whole kind -2 word	-0.15
whole kind -2 work	-0.18
whole kind -3 area	0.18
whole kind -3 defect	-0.14
whole kind -3 fixture	-0.16
whole kind -3 part	-0.16
whole kind -3 verbish	-0.15
whole kind -4 surface	-0.15
whole kind finish	-0.16
whole kind here-after finish	-0.20
whole kind here-after fixture	-0.22
whole kind here-after material	0.59
whole kind here-after part	0.67
whole kind here-after surface	0.38
whole kind here-after tells	-0.15
whole kind here-after verbish	0.21
whole kind here-after word	-0.22
whole kind here-before area	-0.33
whole kind here-before defect	0.71
whole kind here-before finish	0.13
whole kind here-before surface	0.21
whole kind here-before tells	0.15
whole kind here-before verbish	0.24
whole kind here-before word	0.24
whole kind word	-0.17
whole kind work	-0.17
whole lead a -1	0.13
whole lead a -2	0.56
whole lead a -3	-0.23
whole lead a -4	-0.14
whole lead about -4	-0.19
whole lead about here-after	0.18
whole lead about here-before	0.41
whole lead at -1	0.14
whole lead at -2	-0.37
whole lead at -4	-0.25
whole lead at here-before	0.35
whole lead by -2	0.57
whole lead by -4	-0.16
whole lead defect -1	-0.29
whole lead defect -2	-0.15
whole lead defect here-after	0.44
whole lead defect here-before	0.42
whole lead fixture here-before	0.33
whole lead in -1	-0.14
whole lead mark -1	-0.14
whole lead material -3	0.22
whole lead material here-after	0.31
whole lead out -1	-0.20
whole lead over -2	-0.17
whole lead over here-before	0.28
whole lead size -1	-0.27
whole lead size -3	0.21
whole lead surface -1	-0.21
whole lead surface -2	-0.18
whole lead surface -3	-0.21
whole lead surface here-before	0.24
whole lead to -1	-0.14
whole lead to -4	-0.18
whole lead to here-before	0.35
whole lead up here-before	0.26
whole lead verbish -1	0.24
whole lead verbish -3	-0.22
whole lead verbish here-after	0.30
whole lead verbish here-before	0.14
whole lead word -3	-0.20
whole lead word -4	-0.14
whole lead word here-after	0.19
whole lead word here-before	0.20
whole lemma be subject-late	0.34
whole lemma get object	0.35
whole lemma have object	0.49
whole lemma sit object	0.21
whole lemma want object	-0.13
whole not-carried	-0.36
whole not-carried +1 none	-0.15
whole not-carried +1 pointer	-0.14
whole not-carried -1 none	-0.18
whole not-carried -1 own	-0.28
whole not-carried -2 none	-0.32
whole not-carried -2 own	-0.25
whole not-carried -2 pointer	-0.40
whole not-carried -3 own	-0.14
whole not-carried -3 pointer	-0.14
whole not-carried -3 tells	-0.19
whole not-carried -4 none	-0.17
whole not-carried -4 pointer	-0.17
whole not-carried -4 tells	-0.13
whole not-carried here-after none	0.35
whole not-carried here-after pointer	0.41
whole not-carried here-before own	0.21
whole not-carried here-before pointer	0.17
whole opens-with +1	-0.18
whole opens-with -2	0.34
whole opens-with -3	-0.19
whole opens-with -4	-0.20
whole opens-with here-after	0.27
whole part +1 bare	-0.16
whole part +1 object	-0.14
whole part +1 opens	-0.17
whole part +1 subject	-0.13
whole part -1 subject-late	-0.13
whole part -2 subject-late	0.28
whole part -3 bare	-0.17
whole part -3 subject-late	-0.18
whole part -4 object	-0.14
whole part -4 opens	-0.14
whole part bare area	0.41
whole part bare defect	-0.15
whole part bare fixture	0.15
whole part bare material	-0.21
whole part bare size	0.29
whole part bare surface	0.15
whole part bare tells	-0.23
whole part bare verbish	0.31
whole part bare word	-0.25
whole part here-after subject-late	0.44
whole part here-before object	0.51
whole part here-before subject-late	0.41
whole part object finish	-0.14
whole part object tool	-0.21
whole part object verbish	-0.13
whole part opens area	0.25
whole part opens defect	0.21
whole part opens fixture	0.21
whole part opens material	-0.16
whole part opens size	-0.21
whole part opens verbish	-0.23
whole part opens word	-0.15
whole part opens work	-0.16
whole part subject area	-0.20
whole part subject defect	-0.13
whole part subject tool	0.15
whole part subject-late	0.15
whole part subject-late area	-0.31
whole part subject-late fixture	0.40
whole part subject-late material	0.30
whole part subject-late part	0.51
whole part subject-late surface	0.18
whole part subject-late verbish	0.46
whole prep above	0.24
whole prep after	-0.14
whole prep along	0.40
whole prep at	-0.15
whole prep before	-0.16
whole prep behind	0.34
whole prep below	0.45
whole prep by	-0.36
whole prep here-after above	0.27
whole prep here-after at	0.32
whole prep here-after from	0.17
whole prep here-after in	-0.24
whole prep here-after off	0.28
whole prep here-after to	-0.21
whole prep here-before at	-0.48
whole prep here-before by	-0.32
whole prep here-before in	0.19
whole prep here-before on	-0.16
whole prep into	0.24
whole prep other at	-0.16
whole prep other behind	-0.17
whole prep other by	-0.29
whole prep other for	0.21
whole prep other from	-0.24
whole prep other in	-0.13
whole prep other into	0.23
whole prep other off	-0.28
whole prep other out	-0.16
whole prep other over	-0.21
whole prep other under	-0.14
whole prep over	-0.17
whole prep toward	-0.57
whole rank after 2	-0.13
whole rank after 4	-0.15
whole rank before 0	0.13
whole rank before 4	-0.24
whole sentences -1	-0.35
whole sentences -1 bare	-0.20
whole sentences -1 object	-0.20
whole sentences -1 opens	-0.23
whole sentences -1 subject	-0.16
whole sentences -1 subject-late	-0.28
whole sentences -2	-0.22
whole sentences -2 bare	-0.16
whole sentences -2 object	-0.13
whole sentences -2 subject	-0.18
whole sentences -2 subject-late	-0.16
whole sentences 1	-0.22
whole sentences 1 bare	-0.17
whole sentences 1 opens	-0.17
whole sentences 1 subject	-0.17
whole size 3	-0.15
whole subject none +1	-0.21
whole subject none -1	-0.14
whole subject none -4	-0.14
whole subject none here-after	0.14
whole subject own +1	-0.15
whole subject own -2	-0.17
whole subject own here-before	0.23
whole subject person -1	0.42
whole subject person -2	-0.14
whole subject person -4	-0.22
whole subject person here-before	0.25
whole subject pointer +1	-0.17
whole subject pointer -2	0.21
whole subject pointer -3	-0.16
whole subject pointer -4	-0.23
whole subject pointer here-after	0.24
whole subject pointer here-before	0.39
whole subject tells -2	0.16
whole subject tells -3	-0.19
whole subject tells -4	-0.16
whole touches-after	0.23
whole touches-before	0.13
whole unit area material	0.26
whole unit area word	-0.19
whole unit length finish	-0.20
whole unit length fixture	0.16
whole unit length tells	-0.16
whole unit length tool	-0.21
whole unit length verbish	-0.14
whole unit length word	-0.15
whole unit length work	-0.16
whole unit none defect	-0.16
whole unit none material	-0.13
whole unit none tells	0.13
whole unit none verbish	0.21
whole unit percent area	-0.14
whole unit percent defect	-0.22
whole unit percent material	-0.16
whole unit pressure word	-0.37
whole unit temperature area	-0.19
whole unit temperature part	0.18
whole unit temperature word	-0.20
whole unit voltage word	-0.13
whole use have	0.13
whole use need	-0.14
whole use other	-0.13
whole use use	-0.24
whole where +1	-0.17
whole where -4	-0.17
whole where here-before	0.21`;

export const FLAW = `after at defect	-0.29
after at fixture	0.16
after at material	0.31
after at word	-0.32
after by defect	-0.19
after end defect	-0.20
after for defect	-0.13
after in defect	-0.15
after in material	0.46
after in word	0.33
after on defect	-0.31
after on material	0.67
after on surface	0.40
after quantity defect	-0.26
after quantity fixture	0.30
after quantity material	0.52
after quantity part	0.34
after quantity surface	0.31
after quantity verbish	-0.23
after quantity word	-0.30
after term fixture	0.51
after term part	0.24
after term surface	0.14
after word area	0.27
after word defect	-0.22
after word material	0.40
after word part	0.26
after word surface	0.36
after word verbish	-0.15
article a	-0.21
article none	-0.15
article other	-0.19
article the	0.35
behind about here-before	0.44
behind at +1	-0.17
behind at -2	-0.40
behind at -3	-0.15
behind at -4	-0.22
behind at here-before	0.70
behind by -2	-0.27
behind by here-after	0.31
behind down +1	-0.20
behind down here-after	0.53
behind end -2	-0.13
behind end -3	0.13
behind end here-after	-0.20
behind end here-before	0.22
behind for here-after	-0.42
behind from -2	-0.17
behind from here-after	0.20
behind from here-before	0.35
behind in +1	-0.26
behind in -1	0.16
behind in here-after	0.23
behind mark -1	-0.20
behind mark -2	0.15
behind mark here-after	-0.13
behind mark here-before	0.29
behind off -1	-0.30
behind off -3	-0.31
behind off here-after	0.42
behind off here-before	0.48
behind on +1	-0.16
behind on -1	-0.19
behind on -4	-0.16
behind on here-after	0.28
behind out -2	0.16
behind out here-after	-0.19
behind out here-before	0.30
behind quantity -1	-0.18
behind quantity -2	0.20
behind quantity -3	-0.31
behind quantity -4	-0.45
behind quantity here-after	0.33
behind quantity here-before	0.31
behind term +1	-0.22
behind term -1	-0.22
behind term -3	-0.28
behind term -4	-0.23
behind term here-after	0.39
behind term here-before	0.63
behind up here-before	0.22
behind word +1	-0.19
behind word -4	-0.18
behind word here-after	0.20
behind word here-before	0.21
between 	0.26
between are	0.32
counted pressure	-0.40
far after 1	0.30
far after 8-12	-0.16
far before 0	0.27
far before 13+	-0.28
far before 2	0.22
far before 3-4	0.25
frame copula -4	-0.17
frame copula here-before	0.17
frame imperative +1	0.39
frame imperative -1	-0.33
frame imperative -2	0.27
frame imperative -3	-0.33
frame imperative -4	-0.28
frame imperative here-after	-0.46
frame imperative here-before	0.70
frame modal -1	-0.31
frame modal -2	0.15
frame modal -3	-0.14
frame modal -4	-0.57
frame modal here-after	0.70
frame none +1	-0.25
frame none -2	-0.17
frame none here-after	0.17
frame none here-before	0.33
frame owed +1	-0.21
frame owed -1	-0.48
frame owed -2	-0.33
frame owed -3	-0.31
frame owed -4	-0.26
frame owed here-after	0.60
frame owed here-before	0.55
frame past +1	-0.15
frame past -4	-0.23
frame past here-after	0.19
frame past here-before	0.34
frame present +1	-0.43
frame present -1	0.38
frame present -4	-0.26
frame present here-before	0.35
heading +1	-0.23
heading -1	-0.17
heading -2	0.59
heading -3	0.16
heading here-after	-0.26
heading here-before	0.34
join	-0.31
join +1	-0.17
join -2 fixture	0.14
join -3	-0.19
join fixture+fixture	0.16
join leads on term verb	0.14
join leads quantity of	-0.23
join leads verb off	0.20
join leads verb with	0.34
join links along	-0.14
join links at word	0.19
join links behind	0.41
join links by	0.52
join links for	0.29
join links of	0.13
join links on	0.15
join links on term verb	0.60
join links over	0.21
join links quantity from	-0.14
join links quantity mark	-0.16
join links term word	-0.15
join links verb mark	0.52
join links verb on	-0.13
join links verb word term	-0.17
join links verb word word	-0.14
join links word quantity word	-0.16
join links word verb at	-0.15
join links word verb in	0.16
join links word word word	0.20
join material+fixture	0.16
join same-after fixture	0.33
join size 2	-0.20
join size 3	-0.17
join size+finish	-0.15
join size+surface	-0.14
join size+verbish	0.14
join sizes 1+3	-0.17
join sizes 2+1	-0.17
join sizes 2+3	-0.13
join surface+fixture	0.18
join tells+fixture	0.17
join tool+verbish	0.28
kind +1 area	-0.20
kind +1 material	-0.14
kind +1 size	-0.21
kind +1 verbish	-0.20
kind +1 word	-0.14
kind -1 defect	-0.14
kind -1 finish	-0.17
kind -1 part	0.16
kind -1 size	0.13
kind -1 tells	-0.29
kind -1 tool	0.21
kind -2 defect	-0.15
kind -2 finish	-0.30
kind -2 size	-0.22
kind -2 surface	0.15
kind -2 tells	0.42
kind -2 tool	-0.34
kind -2 word	-0.13
kind -2 work	-0.23
kind -3 fixture	0.29
kind -3 material	-0.14
kind -3 size	-0.15
kind -3 tool	-0.14
kind -4 part	-0.18
kind -4 surface	-0.15
kind -4 tool	-0.20
kind defect	-0.23
kind finish	-0.17
kind fixture	0.17
kind here-after area	0.39
kind here-after defect	-0.26
kind here-after finish	0.16
kind here-after fixture	0.19
kind here-after material	0.50
kind here-after part	0.41
kind here-after size	0.53
kind here-after surface	0.40
kind here-after tool	-0.16
kind here-before defect	0.20
kind here-before fixture	0.27
kind here-before material	0.46
kind here-before part	0.61
kind here-before size	0.28
kind here-before surface	0.26
kind here-before tool	0.41
kind here-before verbish	-0.30
kind here-before word	-0.42
kind material	0.14
kind part	0.21
kind word	-0.20
lead a -2	-0.42
lead a -3	-0.21
lead a -4	-0.19
lead a here-after	0.58
lead a here-before	0.18
lead area -1	-0.24
lead area -2	0.26
lead area -4	-0.13
lead area here-after	0.40
lead area here-before	-0.23
lead fixture -1	-0.15
lead fixture -2	-0.14
lead fixture here-after	-0.20
lead fixture here-before	0.53
lead material here-before	0.28
lead part -1	-0.19
lead part here-after	-0.16
lead part here-before	0.46
lead quantity -1	0.32
lead quantity -4	-0.32
lead quantity here-after	-0.19
lead quantity here-before	0.58
lead size -1	-0.20
lead size here-after	0.15
lead surface here-after	-0.16
lead surface here-before	0.39
lead the -2	-0.40
lead the -4	-0.29
lead the here-after	0.72
lead verbish -1	0.23
lead verbish -2	-0.46
lead verbish -3	0.27
lead verbish here-after	-0.20
lead verbish here-before	0.30
lead word -2	0.28
lead word -4	-0.28
lead word here-before	0.19
lemma be object	-0.28
lemma be subject	0.49
lemma be subject-late	-0.16
lemma go object	0.42
lemma have object	-0.27
lemma have subject	0.27
lemma leave object	0.18
lemma say object	1.00
not-told	-0.36
not-told +1	-0.14
not-told -4	-0.20
not-told here-after	-0.25
not-told here-before	0.70
opens-with -2	-0.20
opens-with -3	-0.15
opens-with -4	-0.23
opens-with here-after	0.47
part +1 object	-0.19
part +1 opens	-0.23
part +1 subject-late	-0.16
part -1 opens	0.15
part -1 subject-late	-0.28
part -2 bare	-0.25
part -2 opens	0.19
part -3 bare	0.14
part -3 object	-0.15
part -3 subject-late	-0.18
part -4 object	-0.17
part -4 opens	-0.18
part -4 subject-late	-0.18
part bare	-0.14
part bare defect	-0.15
part bare finish	0.38
part bare material	-0.16
part bare part	0.21
part bare word	-0.25
part here-after opens	0.64
part here-after subject	0.65
part here-after subject-late	0.16
part here-before bare	-0.26
part here-before object	0.31
part here-before opens	0.49
part here-before subject	0.28
part object	-0.13
part object defect	-0.20
part object finish	-0.29
part object fixture	0.13
part object part	0.28
part object tells	-0.23
part object tool	-0.26
part opens	0.22
part opens defect	-0.21
part opens fixture	0.37
part opens material	0.20
part opens part	0.18
part opens size	0.20
part opens surface	0.32
part opens tells	0.36
part opens tool	-0.35
part opens verbish	0.19
part opens work	0.17
part subject	0.14
part subject area	0.30
part subject defect	-0.60
part subject fixture	0.17
part subject material	0.24
part subject surface	0.17
part subject tells	-0.36
part subject tool	0.68
part subject verbish	-0.16
part subject-late	-0.14
part subject-late area	-0.28
part subject-late fixture	-0.29
part subject-late material	0.32
part subject-late size	0.35
part subject-late surface	-0.23
part subject-late verbish	-0.16
part subject-late word	-0.13
prep across	-0.18
prep along	0.43
prep around	0.46
prep at	-0.16
prep before	-0.28
prep below	-0.46
prep by	-0.42
prep down	0.22
prep for	-0.17
prep from	-0.22
prep here-after at	-0.16
prep here-after by	-0.26
prep here-after from	-0.26
prep here-after in	0.35
prep here-after of	-0.34
prep here-after off	0.41
prep here-after on	0.35
prep here-after over	-0.44
prep here-after to	-0.51
prep here-after with	-0.28
prep here-before by	-0.68
prep here-before in	-0.59
prep here-before on	-0.38
prep into	-0.26
prep of	-0.17
prep other along	0.24
prep other at	-0.14
prep other before	-0.20
prep other by	-0.24
prep other for	-0.28
prep other from	-0.21
prep other in	-0.13
prep other of	-0.13
prep other off	-0.13
prep other on	-0.15
prep other out	-0.13
prep other to	-0.17
prep other up	-0.18
prep other with	-0.16
prep out	-0.19
prep over	-0.59
prep to	-0.24
prep toward	-0.46
prep under	-0.25
prep without	-0.31
rank after 3	-0.14
rank before 0	0.17
rank before 3	-0.13
rank before 4	-0.18
sentences -1	-0.30
sentences -1 bare	-0.15
sentences -1 object	-0.18
sentences -1 opens	-0.15
sentences -1 subject	-0.20
sentences -1 subject-late	-0.21
sentences -2	-0.16
sentences -2 opens	-0.13
sentences 1	-0.29
sentences 1 bare	-0.33
sentences 1 object	-0.16
sentences 1 opens	-0.38
size 1	-0.23
size 2	0.14
size 3	0.44
stands-off-after	0.15
subject none +1	-0.24
subject none -2	-0.15
subject none -4	-0.13
subject none here-after	0.14
subject none here-before	0.38
subject own -4	-0.18
subject own here-before	0.32
subject person -2	-0.47
subject person -3	-0.22
subject person -4	-0.19
subject person here-after	0.43
subject pointer +1	-0.17
subject pointer -3	-0.19
subject pointer -4	-0.34
subject pointer here-after	0.34
told -1	0.89
told -2	0.76
told -3	0.26
told -4	0.64
told defect	-0.67
told fixture	0.37
told here-after	0.50
told here-before	0.13
told material	0.37
told part	0.38
told size	0.16
told surface	0.44
told tool	-0.30
told verbish	0.23
told word	0.42
touches-after	0.14
touches-before	0.30
unit none defect	-0.23
unit none finish	-0.17
unit none fixture	0.15
unit none material	0.15
unit none part	0.23
unit none word	-0.19
use have	-0.13
use measure	-0.14
use see	0.25
where +1	-0.16
where -4	-0.21
where here-after	0.16
where here-before	0.27
whole after at fixture	-0.13
whole after at material	-0.15
whole after in defect	-0.17
whole after in material	0.23
whole after in word	0.15
whole after on word	-0.17
whole after quantity defect	-0.14
whole after quantity fixture	0.19
whole after quantity material	-0.21
whole after quantity part	0.18
whole after term area	-0.18
whole after term fixture	0.32
whole after term part	-0.22
whole after term word	-0.19
whole after word defect	-0.15
whole after word fixture	0.37
whole after word verbish	-0.15
whole article a	-0.15
whole article none	-0.25
whole behind about here-before	-0.26
whole behind at -1	-0.24
whole behind at -2	-0.20
whole behind at -3	-0.15
whole behind at -4	-0.15
whole behind at here-after	-0.27
whole behind at here-before	0.45
whole behind by -1	-0.37
whole behind by here-after	0.34
whole behind down +1	-0.15
whole behind down here-after	0.13
whole behind end -4	-0.19
whole behind end here-before	0.14
whole behind for here-after	-0.35
whole behind from -2	-0.19
whole behind from here-before	0.15
whole behind in +1	-0.25
whole behind in -2	-0.24
whole behind in -3	-0.14
whole behind in here-before	0.14
whole behind mark -1	-0.13
whole behind mark here-after	0.42
whole behind off -1	-0.37
whole behind on -1	-0.23
whole behind on here-before	0.20
whole behind out -1	-0.27
whole behind out -2	0.17
whole behind out here-after	-0.17
whole behind out here-before	-0.23
whole behind quantity +1	-0.21
whole behind quantity -1	0.31
whole behind quantity -4	-0.24
whole behind term +1	-0.25
whole behind term -2	-0.20
whole behind term -3	-0.23
whole behind term -4	-0.20
whole behind term here-after	-0.13
whole behind word -4	-0.16
whole between are	0.16
whole between have	0.17
whole between is	0.38
whole counted length	0.16
whole counted pack	-0.15
whole far before 1	0.18
whole far before 13+	-0.32
whole figure-between	-0.18
whole frame copula +1	-0.13
whole frame copula -1	0.17
whole frame copula -4	-0.20
whole frame imperative +1	0.28
whole frame imperative -1	-0.29
whole frame imperative -2	0.33
whole frame imperative -4	-0.20
whole frame imperative here-after	-0.22
whole frame imperative here-before	0.26
whole frame modal +1	0.37
whole frame modal -1	-0.37
whole frame modal -4	-0.21
whole frame modal here-before	-0.17
whole frame none +1	-0.25
whole frame none -4	-0.14
whole frame none here-after	-0.13
whole frame owed +1	-0.23
whole frame owed -1	-0.53
whole frame owed -2	-0.27
whole frame owed -3	-0.19
whole frame owed -4	-0.13
whole frame past -3	-0.14
whole frame past -4	-0.15
whole frame present +1	-0.21
whole frame present -2	-0.26
whole frame present -3	-0.13
whole frame present -4	-0.16
whole heading +1	-0.13
whole kind +1 area	-0.14
whole kind +1 finish	-0.14
whole kind +1 fixture	-0.17
whole kind +1 size	-0.17
whole kind +1 verbish	-0.14
whole kind +1 word	-0.14
whole kind -1 defect	-0.27
whole kind -1 finish	-0.31
whole kind -1 fixture	0.52
whole kind -1 part	0.20
whole kind -1 size	-0.26
whole kind -1 tells	-0.21
whole kind -1 tool	-0.15
whole kind -1 verbish	-0.13
whole kind -2 area	-0.13
whole kind -2 fixture	0.27
whole kind -2 material	-0.13
whole kind -2 tool	-0.13
whole kind -2 word	-0.14
whole kind -4 surface	-0.14
whole kind defect	-0.17
whole kind finish	-0.17
whole kind fixture	0.18
whole kind here-after defect	-0.13
whole kind here-after fixture	0.26
whole kind here-before fixture	0.18
whole kind here-before surface	0.19
whole kind here-before tool	0.16
whole kind here-before verbish	-0.14
whole kind size	-0.13
whole kind tells	-0.16
whole kind word	-0.14
whole lead a -3	-0.14
whole lead a -4	-0.17
whole lead area -1	-0.24
whole lead area -4	-0.22
whole lead fixture -1	-0.50
whole lead fixture -2	-0.20
whole lead fixture -3	-0.15
whole lead fixture -4	-0.19
whole lead fixture here-after	0.18
whole lead fixture here-before	0.25
whole lead material -4	-0.16
whole lead material here-after	-0.28
whole lead part -1	-0.19
whole lead part -3	-0.18
whole lead part -4	-0.19
whole lead part here-after	-0.26
whole lead quantity -1	0.37
whole lead quantity -2	-0.21
whole lead quantity -3	-0.14
whole lead quantity -4	-0.21
whole lead quantity here-after	-0.15
whole lead size -1	-0.59
whole lead size here-after	0.46
whole lead size here-before	-0.23
whole lead surface -1	0.41
whole lead surface -3	-0.25
whole lead surface -4	-0.16
whole lead surface here-after	-0.28
whole lead the -2	-0.23
whole lead the here-after	0.27
whole lead verbish -4	-0.13
whole lead verbish here-after	0.17
whole lead verbish here-before	0.17
whole lead word -1	0.33
whole lead word -3	-0.14
whole lead word -4	-0.19
whole lemma be subject-late	0.43
whole lemma go object	0.35
whole lemma have object	-0.26
whole lemma leave object	0.16
whole lemma say object	0.19
whole lemma sit object	-0.22
whole not-told	-0.28
whole not-told +1	-0.18
whole not-told -1	0.19
whole not-told -4	-0.17
whole opens-with +1	-0.17
whole opens-with -2	-0.15
whole opens-with -4	-0.20
whole part +1 object	-0.16
whole part +1 opens	-0.15
whole part -1 bare	-0.19
whole part -2 bare	-0.13
whole part -2 opens	-0.14
whole part -2 subject-late	0.28
whole part -3 subject-late	-0.16
whole part -4 object	-0.14
whole part -4 subject-late	-0.19
whole part bare	-0.16
whole part bare area	-0.14
whole part bare defect	-0.14
whole part bare material	-0.16
whole part bare verbish	-0.19
whole part here-after bare	-0.15
whole part here-before bare	0.19
whole part here-before subject-late	0.30
whole part object	-0.21
whole part object area	0.15
whole part object defect	-0.16
whole part object finish	-0.17
whole part object fixture	0.17
whole part object tells	-0.18
whole part object tool	-0.13
whole part object verbish	-0.13
whole part opens defect	-0.13
whole part opens word	-0.13
whole part subject fixture	0.17
whole part subject tells	-0.18
whole part subject verbish	0.16
whole part subject-late area	-0.39
whole part subject-late fixture	0.25
whole part subject-late surface	0.56
whole part subject-late verbish	-0.13
whole prep around	0.24
whole prep at	-0.13
whole prep before	-0.15
whole prep behind	0.87
whole prep by	0.13
whole prep from	-0.15
whole prep here-after behind	0.35
whole prep here-after by	0.35
whole prep here-after in	0.20
whole prep here-after to	-0.18
whole prep here-after with	-0.18
whole prep here-before for	0.30
whole prep here-before in	-0.27
whole prep here-before on	0.58
whole prep into	0.31
whole prep of	-0.18
whole prep off	-0.16
whole prep other along	0.15
whole prep other at	-0.21
whole prep other before	-0.18
whole prep other behind	0.64
whole prep other from	-0.20
whole prep other of	-0.21
whole prep other off	-0.17
whole prep other over	-0.18
whole prep other under	-0.20
whole prep out	-0.18
whole prep toward	-0.42
whole rank after 4	-0.22
whole rank before 0	0.13
whole rank before 3	-0.14
whole rank before 4	-0.23
whole says none	-0.19
whole says owed	-0.14
whole sentences -1	-0.43
whole sentences -1 bare	-0.19
whole sentences -1 object	-0.27
whole sentences -1 opens	-0.20
whole sentences -1 subject	-0.29
whole sentences -1 subject-late	-0.19
whole sentences -2	-0.17
whole sentences 1	-0.19
whole sentences 1 bare	-0.14
whole sentences 1 object	-0.19
whole size 1	-0.17
whole size 3	-0.25
whole subject none +1	-0.23
whole subject none -1	-0.15
whole subject none -4	-0.16
whole subject none here-after	-0.15
whole subject own +1	-0.15
whole subject own -2	-0.14
whole subject own -3	-0.13
whole subject own -4	-0.17
whole subject person +1	0.26
whole subject person -2	-0.14
whole subject person -4	-0.23
whole subject person here-after	0.19
whole subject person here-before	-0.13
whole subject pointer +1	-0.14
whole subject pointer -1	0.28
whole subject pointer -4	-0.22
whole subject pointer here-before	-0.13
whole told -1	0.36
whole told -2	0.36
whole told area	-0.15
whole told fixture	0.25
whole told here-after	-0.14
whole told surface	0.17
whole unit none defect	-0.17
whole unit none finish	-0.17
whole unit none fixture	0.18
whole unit none size	-0.13
whole unit none tells	-0.16
whole unit none word	-0.14
whole use buy	-0.19
whole use move	-0.13
whole use see	-0.21
whole use use	-0.34
whole where +1	-0.15
whole where -4	-0.18`;

export const POINTER = `article a	-0.24
article none	-0.23
article other	-0.26
article the	0.48
counted length	-0.26
does be area	-0.22
does be defect	-0.36
does be fixture	0.15
does be part	0.16
does be size	-0.26
does be tool	0.30
does be verbish	0.40
does come defect	-0.15
does cut material	-0.29
does cut surface	0.44
does get area	-0.40
does get fixture	0.19
does get material	0.18
does get verbish	-0.14
does get word	-0.24
does go defect	-0.21
does go material	-0.13
does go part	0.34
does go word	-0.32
does have word	-0.33
does put fixture	0.26
does put material	0.30
does put surface	-0.36
does take defect	-0.18
does take fixture	0.23
does want material	0.27
does want word	-0.33
far before 0	-0.22
far before 13+	-0.14
far before 8-12	0.15
flawed	0.32
frame copula -1	0.15
frame copula -2	0.22
frame copula -3	-0.18
frame copula defect	-0.45
frame copula here-before	-0.31
frame copula material	0.21
frame copula part	0.26
frame copula size	-0.49
frame copula tells	-0.34
frame copula verbish	0.53
frame copula word	-0.23
frame imperative -1	-0.17
frame imperative -3	0.47
frame imperative -4	-0.30
frame imperative defect	-0.23
frame imperative finish	0.27
frame imperative fixture	0.22
frame imperative here-before	-0.27
frame imperative material	0.29
frame imperative part	0.40
frame imperative size	-0.24
frame imperative verbish	-0.38
frame imperative word	-0.36
frame modal -1	-0.13
frame modal -3	0.26
frame modal defect	-0.17
frame modal finish	0.16
frame modal material	-0.14
frame modal part	0.96
frame modal tool	-0.19
frame modal verbish	-0.31
frame modal word	-0.21
frame none -1	0.19
frame none -2	0.17
frame none -3	-0.42
frame none area	0.96
frame none finish	-0.39
frame none fixture	0.18
frame none material	-0.32
frame none part	0.13
frame none size	0.79
frame none tool	-0.30
frame none verbish	-0.20
frame none word	-0.44
frame owed -1	0.26
frame owed -2	0.31
frame owed -3	-0.14
frame owed -4	-0.46
frame owed area	0.23
frame owed finish	-0.16
frame owed fixture	0.39
frame owed part	0.65
frame owed size	-0.50
frame owed surface	-0.24
frame owed tells	-0.36
frame owed word	-0.20
frame past -1	0.47
frame past -2	-0.21
frame past -4	-0.60
frame past area	-0.36
frame past defect	-0.31
frame past finish	-0.27
frame past fixture	0.30
frame past here-before	0.44
frame past material	0.41
frame past part	0.22
frame past size	0.27
frame past tool	-0.19
frame past verbish	-0.23
frame past word	-0.20
frame present fixture	0.51
frame present here-before	0.16
frame present material	-0.21
frame present part	-0.56
frame present surface	0.30
frame present verbish	0.17
join	-0.19
join +1 finish	0.22
join +1 fixture	-0.17
join +1 size	0.15
join +1 surface	0.20
join -1 finish	-0.16
join -2	-0.17
join -3	-0.17
join -3 area	-0.17
join -3 finish	-0.13
join -3 tool	-0.19
join area+finish	0.20
join area+size	0.23
join area+tool	-0.28
join defect+tool	-0.14
join finish+tool	0.32
join fixture	0.15
join fixture+area	0.20
join fixture+finish	-0.25
join fixture+surface	0.27
join fixture+tool	-0.18
join leads behind	0.20
join leads by	0.75
join leads for	0.24
join leads on word word	-0.15
join leads quantity word quantity	-0.16
join leads term at	0.24
join leads time	0.16
join leads under	0.15
join leads word quantity word	-0.17
join leads word verb quantity	-0.19
join leads word word verb	-0.20
join links around	0.15
join links behind	0.58
join links by	0.70
join links in	0.43
join links of	0.25
join links on	0.48
join links on word word	-0.20
join links quantity word quantity	-0.25
join links term at	0.17
join links to	-0.21
join links under	0.27
join links verb in	-0.31
join links verb verb out	-0.14
join links word quantity	-0.15
join links word verb in	-0.18
join links word verb quantity	-0.31
join links word word	0.20
join links word word verb	-0.26
join material+fixture	0.22
join material+surface	0.14
join material+tool	0.28
join part+defect	-0.15
join part+finish	0.19
join part+fixture	0.15
join part+material	0.15
join part+size	0.15
join part+surface	-0.19
join part+tells	-0.17
join same-after	0.15
join same-after area	0.29
join same-after finish	0.17
join same-after fixture	0.46
join same-after material	0.14
join same-after tells	-0.22
join same-after tool	0.51
join same-before surface	0.18
join same-before tool	0.22
join size	-0.27
join size 2	-0.26
join size+surface	-0.22
join sizes 1+1	0.13
join sizes 1+2	-0.17
join sizes 2+1	-0.16
join sizes 2+2	-0.19
join sizes 2+3	-0.16
join sizes 3+3	-0.21
join surface+size	-0.15
join surface+surface	0.31
join tells	-0.16
join tool+finish	0.52
join tool+material	0.14
join verbish	-0.16
join verbish+finish	-0.16
join word	-0.23
join work	-0.15
kind -1 area	0.56
kind -1 defect	-0.23
kind -1 finish	0.19
kind -1 fixture	0.39
kind -1 part	0.92
kind -1 size	0.53
kind -1 surface	0.16
kind -1 tells	-0.56
kind -1 word	-0.17
kind -2 area	0.19
kind -2 fixture	0.31
kind -2 material	0.27
kind -2 part	0.21
kind -2 size	-0.33
kind -2 tells	-0.16
kind -2 tool	-0.50
kind -2 verbish	-0.21
kind -3 area	0.23
kind -3 defect	-0.19
kind -3 finish	-0.41
kind -3 fixture	0.17
kind -3 part	0.14
kind -3 size	-0.50
kind -3 surface	0.31
kind -3 tells	-0.17
kind -3 tool	-0.13
kind -3 verbish	0.40
kind -3 word	-0.31
kind -4 area	-0.22
kind -4 defect	-0.13
kind -4 finish	-0.15
kind -4 part	-0.48
kind -4 size	-0.21
kind -4 tool	-0.26
kind -4 verbish	-0.18
kind area	0.13
kind defect	-0.19
kind finish	-0.16
kind fixture	0.24
kind here-before area	-0.32
kind here-before defect	-0.15
kind here-before material	0.46
kind here-before part	0.45
kind here-before surface	-0.45
kind here-before word	-0.30
kind part	0.35
kind tells	-0.39
kind tool	-0.21
kind word	-0.26
kind work	-0.28
number many many	0.71
number many one	-0.68
number none many	0.17
part -1 opens	0.29
part -1 subject	0.34
part -2 bare	-0.15
part -2 object	0.13
part -3 object	-0.21
part -3 opens	0.19
part -3 subject	0.15
part -4 object	-0.17
part -4 subject	-0.13
part -4 subject-late	-0.45
part bare defect	-0.27
part bare fixture	0.16
part bare part	0.26
part bare surface	-0.26
part bare verbish	0.31
part bare word	-0.26
part here-before subject	0.17
part here-before subject-late	-0.27
part object	-0.15
part object defect	-0.14
part object finish	-0.27
part object fixture	0.22
part object material	-0.13
part object part	0.55
part object size	-0.18
part object tells	-0.15
part object tool	-0.19
part object word	-0.20
part opens	0.18
part opens area	0.21
part opens fixture	0.60
part opens material	0.37
part opens part	0.21
part opens size	0.25
part opens surface	0.39
part opens tells	-0.26
part opens verbish	-0.53
part opens word	-0.28
part opens work	-0.23
part subject	0.15
part subject area	0.19
part subject defect	-0.42
part subject fixture	0.16
part subject material	0.32
part subject size	-0.15
part subject surface	0.20
part subject tells	-0.56
part subject tool	-0.23
part subject-late fixture	-0.26
part subject-late material	0.23
part subject-late surface	-0.27
part subject-late word	-0.21
points em -2	0.50
points em -3	-0.17
points em -4	-0.44
points em bare	-0.32
points it -2	-0.15
points it bare	-0.15
points it object	-0.18
points it subject	0.21
points none -1	0.32
points none -3	-0.27
points none bare	-0.18
points none object	-0.24
points none opens	0.35
points one -1	0.40
points one -2	0.21
points one -3	-0.34
points one -4	-0.66
points one here-before	0.20
points one object	0.21
points one opens	-0.33
points one subject	0.23
points one subject-late	-0.45
points that -1	0.31
points that -3	0.26
points that -4	-0.52
points that here-before	-0.25
points that opens	0.20
points that subject-late	-0.26
points them -1	-0.20
points them -3	0.39
points them subject	-0.16
points they -1	-0.15
points they -2	0.36
points they -4	-0.13
points they object	-0.34
points they subject	0.82
points those -1	0.14
points those -2	0.40
points those -4	-0.39
points those object	0.15
prep at	-0.16
prep before	-0.37
prep by	-0.61
prep from	-0.26
prep here-before in	-0.20
prep here-before of	-0.50
prep in	-0.16
prep into	0.16
prep of	-0.36
prep off	-0.22
prep on	-0.17
prep other at	-0.20
prep other before	-0.37
prep other by	-0.57
prep other from	-0.47
prep other in	-0.14
prep other into	0.16
prep other of	-0.29
prep other off	-0.22
prep other on	-0.14
prep other over	-0.44
prep other to	-0.27
prep other under	-0.66
prep other up	0.17
prep other with	-0.19
prep out	0.28
prep over	-0.55
prep to	-0.32
prep under	-0.66
prep up	0.17
prep with	-0.19
rank before 3	0.15
rank before 4	-0.22
says copula	0.17
says past	-0.19
says present	-0.19
sentences -1	-0.67
sentences -1 bare	-0.51
sentences -1 object	-0.23
sentences -1 opens	-0.42
sentences -1 subject	-0.19
sentences -1 subject-late	-0.53
sentences -2	-0.43
sentences -2 bare	-0.29
sentences -2 object	-0.20
sentences -2 opens	-0.20
sentences -2 subject	-0.19
sentences -2 subject-late	-0.28
size 1	-0.42
size 2	0.44
size 3	0.58
use buy	0.41
use have	-0.24
use move	-0.28
use need	0.13
use say	-0.42
use see	0.56
use use	-0.15
where -1	0.20
where -4	-0.23
whole article a	0.22
whole article none	-0.27
whole article other	-0.19
whole behind-verb	-0.14
whole counted count	0.24
whole counted pack	0.13
whole does be defect	-0.23
whole does be material	-0.26
whole does be size	-0.13
whole does be surface	0.52
whole does be tool	0.21
whole does come defect	-0.15
whole does cut material	-0.19
whole does cut surface	0.14
whole does get fixture	0.16
whole does get surface	0.16
whole does get word	-0.15
whole does go defect	-0.23
whole does go part	-0.22
whole does go surface	0.38
whole does go word	0.37
whole does have word	-0.36
whole does put area	0.18
whole does put fixture	0.44
whole does put material	-0.23
whole does put surface	-0.42
whole does put word	-0.20
whole does take defect	-0.18
whole does want material	0.15
whole does want word	-0.32
whole far before 13+	-0.23
whole frame copula -1	0.18
whole frame copula -4	-0.16
whole frame copula defect	-0.22
whole frame copula finish	0.44
whole frame copula fixture	0.24
whole frame copula here-before	-0.19
whole frame copula part	0.13
whole frame copula tells	-0.28
whole frame copula word	-0.25
whole frame imperative -2	0.34
whole frame imperative -4	-0.30
whole frame imperative area	0.18
whole frame imperative finish	0.32
whole frame imperative fixture	0.39
whole frame imperative here-before	-0.15
whole frame imperative material	-0.25
whole frame imperative verbish	-0.24
whole frame imperative word	-0.37
whole frame modal -1	0.15
whole frame modal -2	-0.26
whole frame modal area	-0.16
whole frame modal material	0.20
whole frame modal size	0.26
whole frame modal surface	0.47
whole frame modal tool	-0.20
whole frame modal word	-0.23
whole frame none -1	0.22
whole frame none -2	-0.29
whole frame none -4	-0.25
whole frame none defect	-0.17
whole frame none finish	-0.25
whole frame none fixture	-0.25
whole frame none material	0.19
whole frame none part	0.17
whole frame none size	0.18
whole frame none surface	0.22
whole frame none tells	-0.14
whole frame none word	-0.43
whole frame owed -1	-0.21
whole frame owed -2	0.53
whole frame owed -3	-0.18
whole frame owed -4	-0.23
whole frame owed area	0.19
whole frame owed defect	-0.16
whole frame owed finish	-0.22
whole frame owed fixture	0.30
whole frame owed here-before	0.46
whole frame owed part	-0.18
whole frame owed size	-0.22
whole frame owed surface	0.22
whole frame owed tells	-0.13
whole frame owed verbish	-0.18
whole frame owed word	0.28
whole frame past -2	-0.21
whole frame past -3	-0.22
whole frame past -4	-0.33
whole frame past defect	-0.36
whole frame past here-before	0.32
whole frame past part	-0.18
whole frame past verbish	-0.34
whole frame past word	-0.24
whole frame present -2	0.29
whole frame present -4	-0.25
whole frame present area	-0.14
whole frame present defect	0.26
whole frame present finish	-0.24
whole frame present fixture	0.38
whole frame present here-before	0.29
whole frame present material	-0.44
whole frame present part	-0.38
whole frame present tool	0.32
whole frame present word	0.26
whole kind -1 area	0.43
whole kind -1 defect	-0.21
whole kind -1 finish	0.46
whole kind -1 size	0.30
whole kind -1 surface	0.57
whole kind -1 tells	-0.35
whole kind -1 tool	0.18
whole kind -1 verbish	-0.13
whole kind -1 word	-0.27
whole kind -2 area	-0.15
whole kind -2 defect	-0.23
whole kind -2 fixture	0.37
whole kind -2 material	-0.13
whole kind -2 size	-0.25
whole kind -2 surface	0.25
whole kind -2 tool	-0.17
whole kind -2 verbish	-0.22
whole kind -2 word	0.13
whole kind -3 finish	-0.20
whole kind -3 fixture	0.20
whole kind -3 size	-0.13
whole kind -3 surface	-0.13
whole kind -3 tells	-0.13
whole kind -3 tool	-0.16
whole kind -4 finish	-0.24
whole kind -4 part	-0.14
whole kind -4 size	-0.14
whole kind -4 surface	-0.15
whole kind -4 tool	-0.19
whole kind -4 verbish	-0.13
whole kind defect	-0.15
whole kind here-before area	-0.26
whole kind here-before defect	0.44
whole kind here-before material	0.27
whole kind here-before surface	-0.21
whole kind here-before word	-0.19
whole kind surface	0.14
whole kind tells	-0.26
whole kind verbish	-0.16
whole kind word	-0.17
whole kind work	-0.15
whole number many one	-0.57
whole number none one	-0.32
whole number one many	-0.13
whole part -1 opens	-0.15
whole part -1 subject-late	0.17
whole part -2 opens	-0.14
whole part -2 subject-late	0.45
whole part -3 object	-0.13
whole part -3 subject-late	-0.22
whole part -4 bare	-0.21
whole part -4 object	-0.21
whole part bare area	-0.20
whole part bare defect	-0.28
whole part bare surface	0.21
whole part bare verbish	-0.26
whole part bare word	-0.13
whole part here-before object	0.17
whole part here-before subject	0.27
whole part here-before subject-late	-0.35
whole part object area	0.22
whole part object tells	-0.18
whole part object verbish	-0.15
whole part object word	-0.13
whole part opens area	-0.17
whole part opens defect	-0.18
whole part opens material	-0.16
whole part opens size	-0.25
whole part opens surface	0.50
whole part opens word	-0.13
whole part opens work	-0.13
whole part subject area	-0.19
whole part subject defect	-0.31
whole part subject fixture	0.16
whole part subject size	0.27
whole part subject tells	-0.28
whole part subject-late fixture	0.17
whole part subject-late part	-0.17
whole part subject-late surface	0.29
whole points em -1	-0.63
whole points em -3	-0.23
whole points em -4	-0.20
whole points em bare	-0.33
whole points em object	-0.31
whole points em subject	-0.16
whole points it -1	0.21
whole points it -2	0.21
whole points it -3	-0.24
whole points it -4	-0.20
whole points it here-before	-0.36
whole points none -2	-0.22
whole points none -4	-0.19
whole points none bare	-0.19
whole points none here-before	0.36
whole points none object	-0.22
whole points one -1	0.16
whole points one -3	-0.13
whole points one -4	-0.40
whole points one bare	-0.22
whole points one here-before	0.46
whole points one object	0.33
whole points one opens	-0.41
whole points one subject-late	-0.27
whole points that -1	0.18
whole points that -2	-0.17
whole points that -4	-0.20
whole points that bare	0.18
whole points that here-before	0.17
whole points them object	-0.18
whole points they -1	-0.37
whole points they -2	0.37
whole points they -3	0.19
whole points they object	-0.38
whole points those -4	-0.22
whole points those object	-0.25
whole prep along	0.14
whole prep around	0.27
whole prep at	-0.17
whole prep before	-0.21
whole prep behind	0.89
whole prep for	-0.15
whole prep from	-0.16
whole prep here-before in	-0.41
whole prep here-before of	-0.49
whole prep in	0.25
whole prep into	0.35
whole prep of	0.16
whole prep other along	0.14
whole prep other around	0.27
whole prep other at	-0.18
whole prep other before	-0.21
whole prep other behind	0.89
whole prep other by	-0.16
whole prep other for	-0.15
whole prep other from	-0.20
whole prep other in	0.32
whole prep other into	0.35
whole prep other of	0.28
whole prep other on	0.14
whole prep other over	-0.30
whole prep other to	-0.23
whole prep other under	-0.29
whole prep other with	-0.22
whole prep over	-0.39
whole prep to	-0.23
whole prep under	-0.29
whole prep with	-0.22
whole rank before 4	-0.25
whole says none	-0.16
whole sentences -1	-0.35
whole sentences -1 bare	-0.18
whole sentences -1 object	-0.23
whole sentences -1 subject	-0.20
whole sentences -2	-0.29
whole sentences -2 bare	-0.21
whole sentences -2 object	-0.18
whole sentences -2 subject	-0.18
whole sentences -2 subject-late	-0.38
whole size 2	-0.23
whole size 3	-0.15
whole use buy	-0.29
whole use need	-0.18
whole use say	0.40
whole use see	-0.28
whole use use	0.18
whole use work	-0.19
whole where -4	-0.22
whole where here-before	0.14`;
