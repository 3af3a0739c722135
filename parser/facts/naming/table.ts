/** Written by `tests/learn/naming.ts`: a sign and its weight a line. */
export const FIGURE = `after at part	0.64
after at surface	0.14
after at verbish	-0.17
after at word	-0.08
after in word	-0.08
after of word	-0.31
after off surface	-0.21
after on word	-0.20
after term area	-0.09
after term defect	-0.24
after term part	0.09
after term size	0.72
after term surface	-0.12
after word surface	-0.22
after word word	0.14
article a	-0.30
article none	-0.22
article other	-0.26
article the	0.50
behind above -1	0.67
behind across +1	-0.11
behind across -1	0.54
behind across here-before	-0.25
behind at -1	-0.56
behind at -2	0.44
behind at -4	-0.36
behind at here-after	0.34
behind at here-before	0.28
behind below +1	-0.11
behind below here-before	-0.22
behind by +1	-0.24
behind by -1	-0.42
behind by -2	0.09
behind by -4	-0.27
behind by here-before	0.86
behind deep +1	-0.16
behind deep -1	0.33
behind deep -2	0.31
behind deep -3	-0.75
behind deep here-before	0.22
behind end +1	-0.23
behind end -1	0.09
behind end -3	0.12
behind end -4	-0.22
behind end here-before	0.19
behind for -3	0.18
behind for -4	-0.19
behind for here-after	-0.16
behind from here-before	0.19
behind high +1	-0.10
behind high -1	0.33
behind in -1	0.14
behind in -3	-0.18
behind in -4	-0.19
behind in here-after	-0.20
behind in here-before	0.38
behind long +1	-0.20
behind long -1	0.24
behind long -2	-0.22
behind long -3	-0.31
behind long here-before	0.54
behind of +1	-0.19
behind of -1	-0.23
behind of -2	0.15
behind of -4	-0.20
behind of here-before	0.54
behind off +1	-0.15
behind off -1	0.50
behind off -2	-0.40
behind off -3	-0.45
behind off -4	-0.18
behind off here-after	-0.21
behind off here-before	0.76
behind on +1	-0.16
behind on -1	-0.21
behind on -2	0.43
behind on -3	0.31
behind on -4	-0.23
behind on here-after	-0.28
behind on here-before	-0.21
behind out -2	0.54
behind out -4	-0.29
behind over -1	-0.20
behind over -2	-0.09
behind over here-before	0.37
behind quantity -1	0.33
behind quantity -2	-0.15
behind quantity here-after	-0.17
behind short -2	-0.45
behind short -3	-0.24
behind short -4	-0.09
behind short here-after	0.39
behind short here-before	0.47
behind term +1	-0.27
behind term -2	0.15
behind term -3	-0.40
behind term -4	-0.41
behind term here-after	0.22
behind term here-before	0.65
behind to +1	-0.09
behind to -3	-0.29
behind to here-before	0.46
behind under -1	-0.09
behind up -1	0.25
behind up -4	-0.28
behind wide +1	-0.12
behind wide -1	-0.29
behind wide -2	-0.13
behind wide here-before	0.57
behind with -1	0.08
behind with -4	-0.15
behind with here-after	-0.20
behind with here-before	0.35
behind word -2	-0.33
behind word -4	-0.23
behind word here-before	0.48
behind-verb	0.11
between 	0.27
between about	-0.72
between at	0.59
between be	-0.84
between by	-0.56
between is	0.30
between maybe	-0.12
between only	0.32
between say	-0.43
carried	0.36
carried -1 none	-0.08
carried -1 own	0.15
carried -1 person	1.08
carried -1 pointer	0.48
carried -2 none	-0.35
carried -2 own	0.22
carried -2 pointer	0.69
carried -2 tells	0.32
carried -3 none	-0.34
carried -3 own	0.19
carried -3 pointer	0.48
carried -4 none	-0.73
carried -4 own	-0.19
carried -4 pointer	0.15
carried here-before none	0.27
carried here-before own	-0.09
carried here-before pointer	0.45
counted bare	-0.11
counted length	-0.11
counted pack	-0.12
counted percent	0.55
counted time	0.12
far after 0	0.30
far after 1	-0.39
far after 13+	-0.27
far after 2	-0.15
far after 5-7	-0.24
far after 8-12	-0.12
far before 0	0.31
far before 1	0.22
far before 13+	-0.34
far before 3-4	0.28
far before 5-7	0.43
frame copula +1	-0.23
frame copula -1	0.20
frame copula -3	-0.09
frame copula -4	-0.35
frame copula here-after	-0.09
frame copula here-before	0.47
frame imperative +1	-0.52
frame imperative -1	0.62
frame imperative -2	-0.84
frame imperative -3	-0.15
frame imperative -4	0.33
frame imperative here-after	-0.35
frame imperative here-before	0.37
frame modal +1	-0.12
frame modal -1	0.34
frame modal -2	0.41
frame modal -3	-0.20
frame modal -4	-0.34
frame modal here-before	-0.21
frame none +1	-0.25
frame none -2	0.16
frame none -3	-0.20
frame none -4	-0.15
frame none here-after	0.14
frame none here-before	0.42
frame owed +1	-0.32
frame owed -1	0.15
frame owed -2	-0.15
frame owed -4	-0.39
frame owed here-after	-0.15
frame owed here-before	0.81
frame past +1	-0.11
frame past -1	-0.20
frame past -2	0.23
frame past -3	-0.62
frame past here-before	0.52
frame present +1	-0.33
frame present -1	-0.13
frame present -2	-0.32
frame present -3	0.46
frame present -4	-0.30
frame present here-before	0.51
head 2 x	-0.64
head access panel	0.24
head air	0.12
head angle	0.14
head anyhow	-0.22
head anything	-0.32
head arm	0.18
head attic	0.32
head attic ladder	0.16
head b	-0.14
head back door	-0.14
head bar	-0.24
head base	-0.49
head basement	0.55
head bases	-0.17
head bath fan	-0.46
head bathroom	-0.16
head bay	0.13
head beadboard	0.26
head beam	0.37
head bearing	0.51
head benchtop	-0.09
head bent	-0.09
head bit	-0.10
head boards	0.22
head bolts	-0.10
head bottom	-0.20
head bottom rail	-0.29
head boxes	-0.11
head bracket	-0.09
head breaker	0.52
head brennans	-0.08
head brkt	0.53
head bubble	0.41
head built ins	0.11
head butt joints	0.19
head c	-0.25
head cable	-0.14
head cap	0.27
head carcasses	0.18
head carpet	-0.15
head ceiling	0.95
head center	-0.46
head centres	-0.36
head clamps	-0.20
head clear	0.84
head clearance	-0.39
head closet	0.13
head code	-0.53
head coil	-0.74
head cooktop cutout	0.49
head corner	-0.63
head countertop	-0.10
head course	-0.13
head cracked	-0.12
head crown	-0.41
head ctr	-0.90
head cupping	0.20
head curb	0.24
head cut	0.22
head cut out	-0.34
head dad	-0.43
head daylight	-0.21
head dead	-0.44
head deck	0.61
head dining room	-0.24
head disconnect	-0.15
head door	0.51
head door sill	-0.16
head doors	0.20
head drags	0.50
head drain	-0.24
head drops	-0.21
head dryer vent	0.85
head drywall	-0.60
head duct	-0.60
head edge	-0.54
head egress	0.35
head end	-0.40
head entry	-0.10
head except	-0.18
head extractor	-0.11
head filler	0.74
head filter	-0.29
head first	0.95
head flagstone	0.93
head flares	0.14
head flashing	0.77
head flat	-0.60
head flood test	-0.27
head floor	-0.60
head fp	-0.16
head frame	0.25
head front	-0.54
head front edge	-0.32
head frost	0.18
head furnace	-0.50
head g'day	-0.28
head gap	0.38
head gas	-0.42
head glass	0.17
head glue	-0.08
head glued	-0.22
head go	-0.14
head goes	-0.42
head grade	-0.58
head grid	-0.13
head ground	-0.16
head guard rail	0.27
head hall	-0.16
head hall closet	-0.12
head hatch	-0.41
head head	0.17
head header	0.84
head headroom	0.83
head hearth	-0.11
head heat mat	1.08
head height	0.83
head hendersons	-0.45
head hinge	-0.36
head hinges	-0.09
head ho	-0.16
head holes	0.78
head house	-0.16
head humidity	0.69
head insulation	-0.12
head island	0.36
head jers	-0.62
head job	-0.84
head joint	0.49
head joist	1.00
head joist bay	0.08
head kessler	0.19
head kickboard	0.24
head kitchen	-0.40
head label	-0.11
head lags	-0.25
head landing	-0.12
head latch	0.12
head leak	-0.11
head leaning	-0.21
head ledger	-1.04
head left end	0.08
head leg	-0.87
head let go	0.48
head light	-0.49
head line	0.18
head liner	0.62
head lint	-0.20
head loose	0.39
head maglock	0.53
head makes	-0.13
head mantel	0.54
head me	0.14
head mesh	0.25
head meter	-0.42
head middle	-0.65
head mini split	-0.26
head mirror	0.40
head mush	-0.16
head needs	-0.36
head niche	0.09
head north	0.35
head number	0.42
head o	-0.21
head opening	-0.18
head outlets	-0.29
head outside	-0.37
head overall	-0.10
head overhang	0.20
head pantry	-0.20
head paper	-0.16
head part	-0.52
head patch	-0.13
head picket	0.48
head piece	-0.11
head pin holes	0.12
head pins	-0.32
head pipe	0.65
head plaster	0.13
head ply	-0.48
head plywood	-0.58
head pocket door	-0.08
head post	0.27
head pot filler	0.51
head proud	-0.08
head pulls	-0.15
head radiator	-0.43
head rail	-0.31
head rain	-0.31
head rear	-0.37
head return	0.76
head rim	-0.46
head rim joist	-0.31
head rise	0.08
head riser	0.47
head risers	0.26
head rock	-0.28
head rods	0.10
head rollers	-0.12
head room	0.19
head row	-0.38
head run	0.54
head sand	-0.50
head screed	-0.13
head screw	0.42
head scribe	-0.11
head setback	-0.17
head shd	-0.85
head sheathing	0.86
head sheet	0.39
head shelf	0.35
head shop	-0.18
head side	-0.88
head sides	-0.15
head signal	0.48
head sill	0.22
head sink	-0.50
head skirting	0.43
head slab	0.29
head slide	-0.14
head slider	-0.19
head slope	-0.09
head soffit vents	-0.33
head soft	0.30
head splash	-0.27
head split	-0.08
head stain	-0.35
head stair	-0.09
head stairs	-0.36
head step	-0.15
head stepping	0.70
head stile	0.30
head stone	-0.09
head stools	-0.12
head stove	-0.16
head strike	0.86
head stringers	-0.16
head studs	0.19
head subfloor	0.81
head swap	0.74
head tank	0.74
head temp	0.42
head the wrong	-0.29
head threshold	-0.09
head toast	-0.14
head toilet	-0.53
head too deep	-0.17
head too high	-0.16
head too short	-0.29
head torn	-0.08
head treads	-0.34
head trim	-0.22
head tub	0.26
head two by ten	-0.25
head us	-1.26
head valve	-0.41
head vanity	-0.16
head wall	0.21
head walls	0.20
head wants	-0.25
head water	-0.33
head win	-0.09
head window	0.09
head worn	-0.15
head wrong	-0.14
heading	-0.50
heading +1	-0.33
heading -1	-0.20
heading -2	-0.68
heading -3	-0.35
heading -4	-0.09
heading here-before	0.20
join	-0.29
join +1	-0.22
join +1 area	-0.21
join +1 defect	0.11
join +1 finish	-0.19
join +1 fixture	-0.10
join +1 material	-0.11
join +1 part	-0.19
join +1 tool	-0.18
join +1 verbish	-0.18
join -1 area	0.15
join -1 finish	-0.11
join -1 fixture	0.25
join -1 part	0.23
join -1 size	-0.10
join -1 surface	-0.20
join -1 tool	0.29
join -1 word	-0.15
join -2	-0.11
join -2 area	-0.14
join -2 defect	-0.20
join -2 fixture	0.40
join -2 size	-0.17
join -2 word	-0.09
join -2 work	-0.16
join -3	-0.23
join -3 defect	-0.18
join -3 finish	-0.09
join -3 material	-0.11
join -3 part	-0.13
join -3 size	-0.10
join -3 tool	-0.13
join -3 verbish	-0.11
join -3 word	-0.10
join area	-0.19
join area+defect	-0.12
join area+material	-0.16
join area+size	0.36
join area+verbish	-0.08
join area+word	-0.09
join defect	-0.22
join defect+defect	-0.28
join defect+part	-0.17
join defect+size	-0.08
join finish	-0.32
join finish+material	-0.10
join finish+size	-0.36
join fixture	-0.19
join fixture+area	0.11
join fixture+defect	0.32
join fixture+fixture	-0.35
join fixture+material	-0.18
join fixture+part	-0.11
join fixture+size	0.21
join fixture+surface	-0.20
join fixture+tool	-0.14
join fixture+verbish	-0.11
join fixture+word	-0.09
join fixture+work	-0.15
join leads 	0.19
join leads at	0.20
join leads at word	0.12
join leads behind	0.10
join leads by	0.16
join leads by term word	0.14
join leads for word term	-0.20
join leads from	-0.35
join leads in	0.15
join leads of	0.24
join leads on	-0.14
join leads on quantity	-0.27
join leads on verb verb	-0.13
join leads quantity	-0.14
join leads quantity at verb	-0.14
join leads quantity of quantity	-0.10
join leads quantity word	-0.11
join leads term by	-0.18
join leads verb for	-0.13
join leads verb verb word	-0.09
join leads verb word quantity	0.24
join leads verb word term	-0.11
join leads with	0.37
join leads word on	0.21
join leads word quantity	-0.12
join leads word quantity word	-0.12
join leads word term verb	-0.18
join leads word verb	-0.21
join leads word verb over	-0.13
join leads word verb quantity	0.18
join leads word word	0.21
join leads word word quantity	-0.09
join links 	0.24
join links around	0.21
join links at	-0.11
join links at quantity	0.29
join links at quantity above	0.32
join links at term word	0.62
join links at word	0.78
join links at word term	-0.38
join links behind	0.85
join links behind word word	-0.53
join links by term verb	0.20
join links by term word	0.16
join links for word term	-0.08
join links in term word	0.10
join links in word term	0.14
join links mark	0.30
join links mark quantity	-0.08
join links mark term at	-0.25
join links of	0.92
join links on quantity	-0.37
join links on verb verb	-0.28
join links on word word	-0.34
join links over on	-0.35
join links over on word	-0.48
join links quantity at	0.17
join links quantity by quantity	0.60
join links quantity from	-0.49
join links quantity of	0.34
join links quantity term to	-0.12
join links quantity with quantity	-0.24
join links quantity word at	-0.22
join links quantity word quantity	-0.11
join links quantity word to	-0.12
join links term quantity at	-0.13
join links to	0.58
join links to term verb	-0.08
join links under	-0.23
join links verb	0.26
join links verb at quantity	0.13
join links verb down quantity	-0.32
join links verb for	-0.26
join links verb for term	-0.13
join links verb in at	0.21
join links verb off quantity	-0.15
join links verb out	-0.33
join links verb quantity	0.29
join links verb quantity off	0.55
join links verb quantity word	-0.24
join links verb verb	-0.12
join links verb verb quantity	-0.35
join links verb verb word	-0.10
join links verb with	0.23
join links verb word term	-0.12
join links verb word word	0.14
join links with	0.40
join links with quantity	0.41
join links word	0.15
join links word at quantity	0.08
join links word in	-0.20
join links word on	0.17
join links word quantity	-0.35
join links word quantity word	-0.16
join links word term verb	-0.32
join links word verb in	0.32
join links word verb over	-0.42
join links word verb quantity	0.44
join links word verb up	-0.20
join links word verb word	-0.40
join links word word	0.34
join links word word mark	-0.47
join links word word verb	0.09
join links word word word	-0.39
join material+area	0.09
join material+finish	-0.11
join material+fixture	0.10
join material+material	-0.13
join material+size	-0.15
join material+tool	0.09
join part+area	-0.21
join part+defect	-0.25
join part+material	0.20
join part+part	-0.08
join part+surface	0.28
join part+tells	-0.09
join part+tool	0.37
join part+word	-0.12
join same-after	0.32
join same-after area	0.24
join same-after defect	0.21
join same-after material	0.33
join same-after part	0.22
join same-after size	0.48
join same-after surface	0.29
join same-after tells	-0.28
join same-after verbish	0.37
join same-after word	-0.18
join same-before area	-0.10
join same-before finish	-0.12
join same-before fixture	-0.15
join same-before tells	-0.20
join same-before verbish	-0.17
join size	0.25
join size 2	-0.37
join size 3	-0.28
join size+area	0.25
join size+defect	-0.17
join size+finish	-0.35
join size+fixture	0.20
join size+material	-0.15
join size+part	0.44
join size+surface	0.12
join sizes 1+1	0.11
join sizes 2+1	-0.25
join sizes 2+2	-0.10
join sizes 2+3	-0.27
join sizes 3+1	-0.14
join sizes 3+2	-0.16
join sizes 3+3	-0.17
join surface	-0.13
join surface+area	-0.21
join surface+defect	0.23
join surface+size	-0.24
join surface+surface	-0.16
join surface+tells	-0.12
join surface+tool	-0.17
join surface+verbish	0.11
join tells	0.08
join tells+area	-0.13
join tells+defect	-0.08
join tells+fixture	0.46
join tells+material	0.27
join tells+verbish	-0.11
join tells+word	-0.14
join tool	-0.23
join tool+fixture	-0.14
join tool+part	0.08
join tool+surface	-0.37
join verbish	-0.10
join verbish+area	0.37
join verbish+defect	-0.08
join verbish+material	-0.23
join verbish+size	-0.08
join verbish+surface	0.22
join verbish+word	-0.15
join word+fixture	0.36
join word+size	0.11
join word+tells	-0.09
join word+tool	-0.16
join word+word	-0.14
join work	-0.08
join work+fixture	-0.15
kind +1 area	-0.15
kind +1 defect	-0.15
kind +1 fixture	-0.22
kind +1 material	-0.13
kind +1 part	-0.38
kind +1 size	-0.13
kind +1 surface	-0.42
kind +1 tool	-0.18
kind +1 verbish	0.26
kind +1 word	-0.18
kind -1 area	-0.35
kind -1 defect	-0.12
kind -1 finish	-0.68
kind -1 fixture	0.70
kind -1 material	0.43
kind -1 part	0.22
kind -1 size	-0.20
kind -1 surface	0.12
kind -1 tool	-0.24
kind -1 verbish	-0.26
kind -1 word	-0.24
kind -2 area	-0.51
kind -2 defect	-0.13
kind -2 finish	-0.33
kind -2 fixture	0.35
kind -2 material	0.20
kind -2 part	-0.19
kind -2 size	0.58
kind -2 surface	0.14
kind -2 tells	-0.10
kind -2 verbish	-0.31
kind -2 word	-0.08
kind -2 work	-0.28
kind -3 area	0.12
kind -3 defect	-0.20
kind -3 finish	-0.13
kind -3 part	-0.09
kind -3 size	-0.10
kind -3 surface	-0.38
kind -3 tool	-0.09
kind -4 area	-0.09
kind -4 fixture	-0.28
kind -4 material	-0.11
kind -4 part	-0.18
kind -4 surface	-0.35
kind -4 tells	-0.10
kind -4 verbish	0.16
kind area	-0.21
kind defect	-0.17
kind finish	-0.26
kind fixture	0.21
kind here-after area	-0.10
kind here-after defect	-0.26
kind here-after finish	-0.10
kind here-after fixture	-0.32
kind here-after part	0.21
kind here-after size	0.56
kind here-after surface	-0.13
kind here-after tells	-0.14
kind here-after verbish	-0.22
kind here-before area	-0.09
kind here-before finish	0.40
kind here-before fixture	0.34
kind here-before material	0.25
kind here-before part	1.13
kind here-before size	0.16
kind here-before surface	0.77
kind here-before tells	-0.33
kind here-before verbish	0.22
kind material	0.21
kind part	0.18
kind size	0.18
kind tells	-0.22
kind tool	-0.17
kind word	-0.18
kind work	-0.22
lead a -1	0.29
lead a -2	0.33
lead a -3	-0.36
lead a -4	-0.16
lead a here-after	0.23
lead a here-before	-0.27
lead about -1	0.25
lead about -2	-0.28
lead about -4	-0.37
lead about here-after	0.65
lead at -1	0.17
lead at -2	-0.28
lead at -3	-0.28
lead at -4	-0.51
lead at here-before	0.98
lead by -1	-0.12
lead by -4	-0.20
lead by here-before	0.52
lead defect -1	-0.25
lead defect -4	-0.09
lead defect here-before	0.46
lead down -1	0.09
lead down -2	-0.11
lead down -3	-0.18
lead down here-after	-0.10
lead down here-before	0.34
lead fixture -3	-0.10
lead fixture here-before	0.37
lead for -1	0.28
lead for -2	-0.24
lead for -3	-0.15
lead for here-before	0.26
lead in -1	-0.33
lead in -2	0.45
lead in here-before	0.29
lead mark -1	-0.22
lead mark -2	-0.12
lead mark here-before	0.64
lead material -1	-0.10
lead material -2	-0.17
lead material -3	-0.11
lead material here-before	0.42
lead of -1	0.11
lead of -4	0.18
lead of here-after	-0.20
lead of here-before	0.20
lead off here-before	0.28
lead out -1	-0.13
lead out -2	-0.53
lead out -3	0.55
lead out -4	-0.19
lead out here-before	0.67
lead over -1	-0.55
lead over -2	-0.08
lead over -3	0.82
lead over here-before	-0.33
lead part -1	-0.15
lead part here-before	0.26
lead size -1	-0.22
lead size -2	0.22
lead size -4	-0.21
lead size here-before	0.25
lead surface -1	0.39
lead surface -2	-0.26
lead surface -3	-0.10
lead surface -4	-0.09
lead surface here-after	-0.14
lead surface here-before	0.18
lead to -2	-0.15
lead to -4	-0.10
lead to here-before	0.42
lead up -1	-0.58
lead up -2	-0.20
lead up -3	0.36
lead up -4	-0.24
lead up here-before	0.29
lead verbish -1	0.16
lead verbish -3	-0.13
lead verbish here-after	-0.31
lead verbish here-before	0.37
lead with here-after	0.14
lead word -1	0.12
lead word -2	0.40
lead word -3	-0.35
lead word -4	-0.23
lead word here-after	-0.14
lead word here-before	0.40
lemma be object	-0.53
lemma be subject	0.28
lemma call subject	0.19
lemma go subject	0.17
lemma have object	-0.22
lemma have subject	0.13
lemma leave object	0.36
lemma measure subject	0.36
lemma say subject	-0.25
lemma sit object	-0.14
lemma sit subject	0.56
not-carried	-0.32
not-carried +1 none	0.09
not-carried +1 own	-0.15
not-carried +1 person	-0.18
not-carried +1 pointer	-0.31
not-carried +1 tells	-0.10
not-carried -1 none	0.15
not-carried -1 own	-0.31
not-carried -1 person	-0.48
not-carried -1 pointer	-0.35
not-carried -2 none	-0.56
not-carried -2 own	-0.16
not-carried -2 person	-0.50
not-carried -2 pointer	-0.61
not-carried -2 tells	-0.24
not-carried -3 own	-0.12
not-carried -3 person	-0.14
not-carried -3 pointer	-0.40
not-carried -3 tells	-0.18
not-carried -4 none	0.10
not-carried -4 own	-0.11
not-carried -4 person	-0.22
not-carried -4 pointer	-0.41
not-carried -4 tells	-0.09
not-carried here-after none	0.27
not-carried here-after own	-0.08
not-carried here-after pointer	0.41
not-carried here-before none	0.48
not-carried here-before own	0.61
not-carried here-before pointer	0.33
not-carried here-before tells	-0.69
opens-with-figure +1	-0.81
opens-with-figure -1	0.61
opens-with-figure -2	-0.13
opens-with-figure -3	-0.42
opens-with-figure here-after	0.45
part +1 bare	-0.30
part +1 object	-0.12
part +1 opens	-0.37
part +1 subject	-0.25
part +1 subject-late	-0.15
part -1 bare	-0.40
part -1 object	-0.20
part -1 opens	0.60
part -1 subject	0.39
part -1 subject-late	-0.62
part -2 object	-0.20
part -2 subject	0.25
part -2 subject-late	-0.11
part -3 bare	-0.41
part -3 opens	0.21
part -3 subject	-0.21
part -3 subject-late	-0.17
part -4 bare	-0.15
part -4 object	-0.15
part -4 subject	-0.23
part -4 subject-late	-0.22
part bare	-0.14
part bare fixture	0.13
part bare material	0.35
part bare size	0.13
part bare surface	-0.28
part bare tells	-0.14
part bare word	-0.39
part here-after bare	0.14
part here-after object	-0.17
part here-before bare	0.61
part here-before object	0.37
part here-before opens	0.28
part here-before subject	0.56
part here-before subject-late	-0.08
part object	-0.26
part object defect	-0.29
part object finish	-0.18
part object fixture	-0.18
part object material	-0.13
part object part	0.22
part object size	0.16
part object tells	-0.18
part object tool	-0.29
part object verbish	-0.26
part opens	0.31
part opens area	-0.31
part opens defect	0.50
part opens fixture	0.82
part opens material	0.49
part opens part	0.16
part opens size	0.27
part opens tool	0.26
part opens verbish	0.75
part opens word	-0.35
part subject	0.24
part subject area	-0.37
part subject defect	-0.54
part subject fixture	0.33
part subject material	0.29
part subject surface	0.28
part subject tells	-0.17
part subject verbish	0.26
part subject word	0.14
part subject work	-0.24
part subject-late	-0.30
part subject-late area	-0.43
part subject-late fixture	-0.30
part subject-late material	-0.24
part subject-late part	0.17
part subject-late surface	-0.16
part subject-late tool	-0.12
part subject-late word	-0.21
prep across	-0.08
prep after	-0.58
prep along	-0.21
prep around	-0.10
prep at	-0.21
prep before	-0.44
prep behind	-0.59
prep below	-0.30
prep by	-0.73
prep for	-0.19
prep from	-0.74
prep here-after at	0.16
prep here-after for	-0.20
prep here-after from	0.10
prep here-after in	-0.16
prep here-after of	-0.42
prep here-after on	0.10
prep here-after toward	-0.14
prep here-after with	-0.21
prep here-before at	-0.35
prep here-before behind	-0.21
prep here-before by	-0.89
prep here-before for	0.48
prep here-before from	-1.12
prep here-before in	-0.29
prep here-before of	0.26
prep here-before on	-0.35
prep here-before to	-0.55
prep here-before with	-0.44
prep in	-0.20
prep into	-0.11
prep of	-0.37
prep off	-0.20
prep on	-0.12
prep other after	-0.51
prep other around	-0.10
prep other at	-0.22
prep other before	-0.24
prep other behind	-0.55
prep other by	-0.42
prep other for	-0.42
prep other from	-0.38
prep other in	-0.14
prep other of	-0.46
prep other off	-0.27
prep other out	-0.25
prep other to	-0.41
prep other toward	-0.15
prep other under	-0.26
prep other up	0.53
prep other with	-0.29
prep out	-0.48
prep to	-0.52
prep toward	-0.61
prep under	-0.31
prep with	-0.47
rank after 1	-0.15
rank after 2	-0.29
rank after 3	-0.18
rank after 4	-0.13
rank before 0	0.30
rank before 1	0.29
rank before 3	-0.18
rank before 4	-0.31
says copula	0.11
says modal	-0.18
says none	0.17
says past	-0.27
sentences -1	-0.54
sentences -1 bare	-0.30
sentences -1 opens	-0.55
sentences -1 subject	-0.43
sentences -1 subject-late	-0.28
sentences -2	-0.34
sentences -2 object	-0.12
sentences -2 opens	-0.19
sentences -2 subject	-0.34
sentences -2 subject-late	-0.08
sentences 1	-0.16
sentences 1 bare	-0.13
sentences 1 object	0.24
sentences 1 opens	-0.23
sentences 1 subject	-0.39
size 1	-0.36
size 2	0.24
size 3	0.67
stands-off-after	-0.23
subject none +1	-0.20
subject none -2	-0.22
subject none -3	-0.25
subject none -4	-0.09
subject none here-after	0.23
subject none here-before	0.58
subject own +1	-0.19
subject own -1	-0.31
subject own -3	-0.12
subject own -4	-0.19
subject own here-after	-0.17
subject own here-before	0.58
subject person +1	-0.19
subject person -1	0.50
subject person -2	-0.52
subject person -3	-0.16
subject person -4	-0.28
subject person here-before	0.19
subject pointer +1	-0.44
subject pointer -1	0.30
subject pointer -2	0.35
subject pointer -3	0.08
subject pointer -4	-0.44
subject pointer here-after	-0.30
subject pointer here-before	0.42
subject tells +1	-0.10
subject tells -1	0.78
subject tells -2	0.12
subject tells -3	-0.18
subject tells -4	-0.10
subject tells here-before	-0.49
touches-after	0.33
touches-before	0.27
unit area area	-0.13
unit area material	0.77
unit area word	-0.86
unit length area	-0.23
unit length defect	-0.14
unit length finish	-0.38
unit length fixture	0.17
unit length part	0.10
unit length size	0.09
unit length tells	-0.13
unit length tool	-0.14
unit length verbish	0.09
unit none area	-0.20
unit none defect	-0.18
unit none fixture	0.31
unit none material	0.51
unit none part	0.41
unit none surface	0.15
unit none tells	-0.34
unit none tool	-0.12
unit none verbish	-0.17
unit none word	-0.44
unit other material	0.40
unit other word	-0.29
unit percent area	0.10
unit percent fixture	0.22
unit percent material	0.10
unit percent part	-0.11
unit percent size	0.37
unit percent surface	0.48
unit percent tells	-0.44
unit percent word	-0.64
unit pressure part	-0.72
unit pressure size	0.68
unit pressure surface	0.15
unit temperature area	0.16
unit temperature defect	-0.24
unit voltage material	-0.27
unit voltage part	0.15
unit voltage word	0.12
use buy	-0.60
use have	-0.38
use measure	-0.17
use move	-0.12
use need	-0.17
use other	-0.11
use say	0.33
use see	0.44
use use	-0.17
use work	-0.20
where +1	-0.26
where -3	-0.12
where -4	-0.23
where here-before	0.52
whole after at part	0.45
whole after at surface	0.15
whole after at verbish	-0.34
whole after at word	-0.17
whole after in word	-0.09
whole after of material	0.57
whole after off surface	-0.30
whole after off word	-0.26
whole after on surface	0.40
whole after on word	-0.26
whole after term area	0.11
whole after term fixture	-0.12
whole after term part	0.33
whole after term size	0.28
whole after term surface	0.50
whole after term verbish	0.17
whole after to word	-0.23
whole after word material	-0.09
whole after word surface	-0.27
whole after word tells	-0.20
whole after word word	-0.39
whole article none	-0.29
whole behind above here-after	0.31
whole behind across +1	-0.29
whole behind across -1	0.86
whole behind across here-before	0.60
whole behind at -1	-0.49
whole behind at -2	0.13
whole behind at -3	-0.23
whole behind at -4	-0.19
whole behind at here-after	0.29
whole behind at here-before	0.37
whole behind below +1	-0.14
whole behind below here-after	0.23
whole behind below here-before	-0.33
whole behind by +1	-0.19
whole behind by -2	1.02
whole behind by -3	-0.21
whole behind by -4	-0.16
whole behind by here-after	-0.29
whole behind deep +1	-0.15
whole behind deep -1	-0.10
whole behind deep -2	-0.43
whole behind deep -3	-0.23
whole behind deep -4	-0.10
whole behind deep here-before	-0.39
whole behind end +1	-0.26
whole behind end -1	0.24
whole behind for -3	-0.08
whole behind for -4	-0.10
whole behind for here-after	-0.57
whole behind from -1	-0.15
whole behind from -2	-0.09
whole behind from here-after	0.51
whole behind from here-before	0.19
whole behind in -1	-0.17
whole behind in -3	-0.08
whole behind in -4	-0.13
whole behind in here-after	-0.12
whole behind in here-before	0.40
whole behind long -2	-0.31
whole behind long -3	-0.29
whole behind long here-before	0.48
whole behind of +1	-0.10
whole behind of -1	-0.52
whole behind of -4	-0.15
whole behind of here-after	0.49
whole behind off +1	-0.08
whole behind off -1	0.11
whole behind off -2	0.14
whole behind off -3	-0.16
whole behind off -4	-0.12
whole behind off here-after	0.10
whole behind off here-before	0.11
whole behind on +1	-0.10
whole behind on -1	-0.30
whole behind on -2	-0.75
whole behind on -4	-0.19
whole behind on here-after	-0.15
whole behind on here-before	-0.32
whole behind out -2	0.08
whole behind out -4	-0.08
whole behind over -1	-0.20
whole behind over -2	-0.08
whole behind over here-after	0.22
whole behind over here-before	0.33
whole behind quantity -1	-0.11
whole behind quantity -2	-0.14
whole behind quantity -4	-0.08
whole behind short +1	-0.19
whole behind short -1	-0.52
whole behind short -2	-0.34
whole behind short -3	-0.19
whole behind short -4	-0.25
whole behind short here-after	-0.22
whole behind short here-before	-0.11
whole behind term +1	-0.23
whole behind term -1	-0.34
whole behind term -2	0.30
whole behind term -3	-0.21
whole behind term -4	-0.33
whole behind term here-after	0.53
whole behind term here-before	0.38
whole behind to -1	-0.15
whole behind to -2	0.11
whole behind to -3	-0.10
whole behind to here-after	0.19
whole behind to here-before	-0.28
whole behind under -1	-0.45
whole behind up -4	-0.16
whole behind wide -1	-0.26
whole behind wide -2	-0.22
whole behind with -1	0.46
whole behind with -4	-0.14
whole behind with here-after	-0.35
whole behind word +1	-0.26
whole behind word -2	-0.10
whole behind word -3	-0.28
whole behind word -4	-0.36
whole behind word here-after	-0.27
whole between 	0.18
whole between about	0.51
whole between at	0.19
whole between be	0.24
whole between by	-0.15
whole between is	0.19
whole between maybe	0.39
whole between measure	0.24
whole between only	0.13
whole between read	0.15
whole between want	0.22
whole carried	0.38
whole carried -1 none	-0.16
whole carried -1 own	0.57
whole carried -1 person	0.32
whole carried -1 pointer	0.20
whole carried -2 none	0.49
whole carried -2 own	0.80
whole carried -2 pointer	0.35
whole carried -2 tells	0.82
whole carried -3 none	-0.43
whole carried -3 own	-0.18
whole carried -3 pointer	-0.22
whole carried -4 none	-0.26
whole carried -4 pointer	-0.12
whole carried here-before none	-0.16
whole carried here-before own	0.26
whole carried here-before pointer	0.41
whole counted bare	0.15
whole counted current	-0.14
whole counted length	-0.26
whole counted pack	-0.15
whole counted percent	0.56
whole counted slope	-0.16
whole counted time	0.13
whole far after 0	0.26
whole far after 1	-0.13
whole far after 13+	-0.29
whole far after 2	0.15
whole far after 3-4	-0.11
whole far after 5-7	-0.19
whole far after 8-12	-0.30
whole far before 0	0.15
whole far before 1	0.18
whole far before 13+	-0.46
whole far before 3-4	0.24
whole figure-between	-0.40
whole flawed	-0.12
whole frame copula +1	-0.25
whole frame copula -1	-0.12
whole frame copula -2	-0.12
whole frame copula -3	-0.21
whole frame copula -4	-0.21
whole frame copula here-before	0.36
whole frame imperative +1	-0.16
whole frame imperative -1	-0.38
whole frame imperative -2	-0.70
whole frame imperative -3	-0.12
whole frame imperative -4	0.45
whole frame imperative here-after	-0.26
whole frame modal +1	-0.08
whole frame modal -1	0.77
whole frame modal -2	-0.19
whole frame modal -3	-0.11
whole frame modal -4	-0.22
whole frame modal here-after	0.32
whole frame modal here-before	0.36
whole frame none +1	-0.31
whole frame none -1	-0.12
whole frame none -2	0.16
whole frame none -4	-0.30
whole frame none here-before	-0.13
whole frame owed +1	-0.13
whole frame owed -1	0.27
whole frame owed -2	-0.14
whole frame owed -3	-0.15
whole frame owed -4	-0.19
whole frame owed here-before	0.31
whole frame past +1	-0.24
whole frame past -1	-0.48
whole frame past -2	-0.18
whole frame past -3	-0.38
whole frame past -4	-0.21
whole frame past here-after	0.31
whole frame past here-before	0.25
whole frame present +1	-0.24
whole frame present -1	0.56
whole frame present -2	0.25
whole frame present -3	-0.19
whole frame present -4	-0.30
whole frame present here-after	0.36
whole frame present here-before	0.13
whole head 2 x	-0.43
whole head anything	-0.10
whole head attic	0.20
whole head attic ladder	0.34
whole head back door	-0.33
whole head bar	-0.24
whole head base	-0.24
whole head basement	-0.26
whole head bath fan	-0.41
whole head bathroom	-0.18
whole head beam	0.73
whole head bearing	0.21
whole head bent	-0.40
whole head bolts	-0.11
whole head bottom	-0.45
whole head bowed	0.40
whole head box	0.40
whole head boxes	0.47
whole head breaker	0.78
whole head brennans	-0.23
whole head brkt	0.24
whole head btm	-0.12
whole head bubble	0.34
whole head built ins	-0.38
whole head butt joints	-0.11
whole head c	-0.12
whole head cable	-0.28
whole head carcasses	-0.14
whole head ceiling	0.15
whole head center	-0.09
whole head centres	-0.10
whole head chimney	-0.39
whole head clamps	-0.16
whole head clearance	0.37
whole head code	-0.16
whole head coil	0.17
whole head combust	-0.12
whole head corner	0.38
whole head corridor	0.66
whole head countertop	-0.24
whole head crack	0.60
whole head cracked	-0.40
whole head ctr	-0.16
whole head cupping	-0.17
whole head cut	-0.17
whole head cut out	-0.26
whole head dad	-0.23
whole head daylight	-0.18
whole head dead	-0.32
whole head deck	0.49
whole head den	-0.35
whole head dining room	-0.43
whole head dishwasher	-0.43
whole head door	0.62
whole head door sill	0.18
whole head doors	0.69
whole head drags	0.49
whole head drain	-0.45
whole head drops	-0.40
whole head duct	-0.54
whole head edge	-0.40
whole head egress	0.25
whole head end	-0.38
whole head end panel	-0.33
whole head entry	-0.24
whole head falls	-0.24
whole head fell	-0.16
whole head fella	-0.10
whole head filler	-0.29
whole head filter	-0.09
whole head flagstone	0.17
whole head flashing	0.23
whole head flat	-0.18
whole head flood test	-0.22
whole head floor	-0.53
whole head foam	-0.26
whole head fp	-0.12
whole head fridge	0.22
whole head front edge	-0.24
whole head furnace	-0.09
whole head g'day	-0.09
whole head gas	0.20
whole head glass	0.40
whole head glued	-0.11
whole head goes	-0.15
whole head grade	0.18
whole head ground	-0.28
whole head hall	-0.48
whole head hall closet	-0.46
whole head handle	0.14
whole head handrail	-0.24
whole head hatch	0.27
whole head headroom	0.48
whole head hearth	-0.13
whole head heat mat	0.76
whole head height	0.09
whole head hendersons	-0.28
whole head hood	-0.09
whole head house	-0.15
whole head humidity	-0.10
whole head hump in	0.58
whole head inside	0.81
whole head inside corners	-0.11
whole head insulation	-0.14
whole head island	0.24
whole head jers	-0.16
whole head job	-0.12
whole head joist	0.18
whole head kickboard	-0.10
whole head kitchen	0.69
whole head lags	0.10
whole head latch	-0.09
whole head leaning	-0.54
whole head ledger	-0.27
whole head left end	0.16
whole head leg	0.46
whole head light	-0.28
whole head line	-0.52
whole head line set	0.33
whole head linen closet	-0.10
whole head lining	-0.12
whole head loose	0.30
whole head machines	0.57
whole head mantel	0.36
whole head marble	-0.14
whole head meter	-0.18
whole head middle	-0.33
whole head mini split	-0.21
whole head mirror	0.20
whole head mortar	-0.10
whole head mush	-0.17
whole head nail	-0.17
whole head needs	0.15
whole head north	0.24
whole head o	-0.09
whole head opened up	-0.17
whole head opening	-0.25
whole head out of plumb	-0.10
whole head outside	0.44
whole head oven	0.20
whole head oven housing	-0.12
whole head panels	-0.11
whole head pantry	-0.34
whole head part	-0.24
whole head patch	-0.48
whole head piece	-0.19
whole head pin holes	0.15
whole head pins	-0.26
whole head plaster	0.49
whole head ply	-0.15
whole head pocket door	0.43
whole head pot filler	0.21
whole head problem	-0.10
whole head proud	0.39
whole head pulls	-0.13
whole head rail	-0.13
whole head rear	-0.12
whole head remnant	0.29
whole head return	0.14
whole head rh	0.08
whole head rim	0.24
whole head rim joist	-0.10
whole head rise	0.31
whole head rock	-0.21
whole head rods	-0.09
whole head rollers	-0.31
whole head room	-0.08
whole head row	-0.20
whole head run	-0.29
whole head sagging	0.37
whole head screen	0.29
whole head screw	0.17
whole head scribe	-0.24
whole head seam	-0.10
whole head sheathing	0.41
whole head sheet	-0.10
whole head shelf	0.30
whole head side	-0.15
whole head sill	-0.30
whole head sink	-0.44
whole head slab	-0.49
whole head slider	-0.42
whole head slope	-0.13
whole head soffit vents	-0.22
whole head soft	1.57
whole head span	-0.30
whole head splash	-0.11
whole head split	-0.18
whole head stain	-0.28
whole head stair	-0.42
whole head stairs	0.69
whole head step	-0.11
whole head stepping	-0.10
whole head stile	-0.13
whole head stools	0.39
whole head strike	-0.27
whole head stringers	-0.12
whole head study	-0.13
whole head tag	-0.09
whole head tank	0.44
whole head temp	-0.14
whole head the wrong	-0.20
whole head tile	0.33
whole head toast	-0.10
whole head toilet	-0.15
whole head toilets	-0.13
whole head too deep	-0.40
whole head too high	-0.45
whole head too short	-0.76
whole head top	-0.38
whole head torn	-0.11
whole head track	-0.09
whole head trim	0.14
whole head truck	-0.15
whole head tub	-0.17
whole head two by ten	-0.34
whole head uppers	-0.28
whole head us	0.74
whole head valve	-0.12
whole head vanity	0.16
whole head vanity top	-0.14
whole head vent	0.36
whole head walls	-0.29
whole head wants	-0.31
whole head whip	-0.14
whole head window	0.15
whole heading +1	-0.20
whole heading -2	-0.53
whole heading -3	0.70
whole heading -4	-0.20
whole kind +1 area	-0.12
whole kind +1 defect	-0.39
whole kind +1 fixture	-0.14
whole kind +1 material	-0.18
whole kind +1 part	-0.22
whole kind +1 surface	-0.20
whole kind +1 tool	-0.17
whole kind +1 verbish	-0.13
whole kind +1 word	-0.14
whole kind -1 area	0.50
whole kind -1 finish	-0.30
whole kind -1 fixture	0.09
whole kind -1 part	0.30
whole kind -1 size	0.15
whole kind -1 surface	-0.30
whole kind -1 tells	-0.17
whole kind -1 tool	0.50
whole kind -1 verbish	-0.45
whole kind -1 word	-0.24
whole kind -2 area	-0.50
whole kind -2 finish	-0.15
whole kind -2 fixture	1.21
whole kind -2 material	-0.11
whole kind -2 size	-0.31
whole kind -2 surface	-0.25
whole kind -2 tool	-0.10
whole kind -2 verbish	-0.26
whole kind -2 word	-0.25
whole kind -2 work	-0.22
whole kind -3 area	0.23
whole kind -3 defect	-0.27
whole kind -3 fixture	-0.28
whole kind -3 material	-0.21
whole kind -3 part	-0.24
whole kind -3 size	-0.10
whole kind -3 surface	0.19
whole kind -3 tool	-0.14
whole kind -3 verbish	-0.14
whole kind -3 word	-0.16
whole kind -4 area	0.13
whole kind -4 defect	-0.20
whole kind -4 material	-0.11
whole kind -4 part	-0.17
whole kind -4 size	-0.09
whole kind -4 surface	-0.24
whole kind -4 verbish	-0.13
whole kind -4 word	-0.12
whole kind finish	-0.34
whole kind fixture	0.22
whole kind here-after area	-0.22
whole kind here-after defect	-0.26
whole kind here-after finish	-0.26
whole kind here-after fixture	-0.39
whole kind here-after material	0.92
whole kind here-after part	0.55
whole kind here-after size	0.28
whole kind here-after surface	0.55
whole kind here-after tells	-0.30
whole kind here-after verbish	0.28
whole kind here-after word	-0.36
whole kind here-before area	-0.59
whole kind here-before defect	1.04
whole kind here-before fixture	-0.11
whole kind here-before material	-0.17
whole kind here-before size	-0.13
whole kind here-before surface	0.17
whole kind here-before tells	-0.11
whole kind here-before tool	-0.28
whole kind here-before verbish	0.42
whole kind here-before word	0.30
whole kind material	-0.12
whole kind tells	-0.21
whole kind word	-0.28
whole kind work	-0.22
whole lead a -1	0.21
whole lead a -2	0.87
whole lead a -3	-0.17
whole lead a -4	-0.11
whole lead a here-after	-0.09
whole lead a here-before	0.45
whole lead about -1	-0.18
whole lead about -2	-0.11
whole lead about -3	-0.21
whole lead about -4	-0.28
whole lead about here-before	0.35
whole lead at -2	-0.73
whole lead at -3	-0.12
whole lead at -4	-0.40
whole lead at here-after	-0.16
whole lead at here-before	0.58
whole lead by -1	0.25
whole lead by -2	0.67
whole lead by -3	-0.13
whole lead by -4	-0.20
whole lead by here-after	-0.29
whole lead by here-before	-0.58
whole lead defect -1	-0.37
whole lead defect -2	-0.16
whole lead defect -3	-0.12
whole lead defect here-after	0.75
whole lead defect here-before	0.46
whole lead down -1	-0.49
whole lead down -3	-0.14
whole lead down here-after	-0.50
whole lead down here-before	-0.26
whole lead fixture -3	-0.18
whole lead fixture -4	-0.17
whole lead fixture here-before	0.35
whole lead for -1	0.49
whole lead for here-before	0.28
whole lead in -1	-0.08
whole lead in -2	-0.28
whole lead in here-after	0.45
whole lead in here-before	-0.23
whole lead mark -1	-0.23
whole lead mark -2	-0.16
whole lead material -2	-0.11
whole lead material -3	0.33
whole lead material -4	-0.11
whole lead material here-after	0.52
whole lead of -1	0.59
whole lead of -2	-0.42
whole lead of here-after	0.35
whole lead of here-before	-0.18
whole lead off here-after	-0.17
whole lead off here-before	0.31
whole lead out -1	-0.26
whole lead out -2	-0.12
whole lead over -1	0.16
whole lead over -2	-0.21
whole lead over -3	0.18
whole lead over here-before	0.42
whole lead part -1	-0.34
whole lead part -2	-0.09
whole lead part -4	-0.10
whole lead part here-after	-0.82
whole lead part here-before	0.11
whole lead size -2	0.17
whole lead size -3	0.60
whole lead size here-after	0.34
whole lead size here-before	-0.35
whole lead surface -1	-0.25
whole lead surface -2	-0.30
whole lead surface -3	-0.29
whole lead surface -4	-0.13
whole lead surface here-before	0.34
whole lead to -1	-0.36
whole lead to -2	0.19
whole lead to -3	-0.15
whole lead to -4	-0.17
whole lead to here-after	-0.50
whole lead to here-before	0.41
whole lead up -1	-0.34
whole lead up -2	0.20
whole lead up here-before	0.09
whole lead verbish -1	0.39
whole lead verbish -3	-0.31
whole lead verbish here-after	0.40
whole lead verbish here-before	0.15
whole lead with here-after	1.33
whole lead word -1	-0.17
whole lead word -2	-0.08
whole lead word -3	-0.29
whole lead word -4	-0.14
whole lead word here-after	0.16
whole lead word here-before	0.22
whole lemma be object	-0.20
whole lemma be subject-late	0.48
whole lemma get object	0.60
whole lemma go object	-0.16
whole lemma have object	0.70
whole lemma leave object	0.51
whole lemma measure subject	-0.09
whole lemma measure subject-late	0.55
whole lemma sit subject	0.09
whole lemma want object	-0.23
whole not-carried	-0.45
whole not-carried +1 none	-0.22
whole not-carried +1 own	-0.14
whole not-carried +1 pointer	-0.19
whole not-carried +1 tells	-0.10
whole not-carried -1 none	-0.39
whole not-carried -1 own	-0.43
whole not-carried -1 person	-0.16
whole not-carried -2 none	-0.46
whole not-carried -2 own	-0.34
whole not-carried -2 person	-0.23
whole not-carried -2 pointer	-0.73
whole not-carried -2 tells	-0.28
whole not-carried -3 none	0.11
whole not-carried -3 own	-0.18
whole not-carried -3 pointer	-0.19
whole not-carried -3 tells	-0.16
whole not-carried -4 none	-0.21
whole not-carried -4 own	0.16
whole not-carried -4 pointer	-0.23
whole not-carried -4 tells	-0.13
whole not-carried here-after none	0.52
whole not-carried here-after own	0.17
whole not-carried here-after pointer	0.44
whole not-carried here-before own	0.20
whole not-carried here-before pointer	0.38
whole opens-with-figure +1	-0.18
whole opens-with-figure -1	-0.14
whole opens-with-figure -2	0.40
whole opens-with-figure -3	-0.33
whole opens-with-figure -4	-0.21
whole opens-with-figure here-after	0.50
whole part +1 bare	-0.21
whole part +1 object	-0.23
whole part +1 opens	-0.24
whole part +1 subject	-0.17
whole part +1 subject-late	-0.13
whole part -1 bare	0.30
whole part -1 object	-0.12
whole part -1 opens	-0.24
whole part -1 subject	0.15
whole part -1 subject-late	-0.15
whole part -2 bare	-0.09
whole part -2 subject	-0.10
whole part -2 subject-late	0.18
whole part -3 bare	-0.28
whole part -3 object	-0.22
whole part -3 opens	0.24
whole part -3 subject	-0.15
whole part -3 subject-late	-0.28
whole part -4 bare	0.16
whole part -4 object	-0.23
whole part -4 opens	-0.22
whole part -4 subject	-0.17
whole part -4 subject-late	0.25
whole part bare area	0.77
whole part bare fixture	0.13
whole part bare material	-0.40
whole part bare part	-0.19
whole part bare size	0.57
whole part bare surface	0.14
whole part bare tells	-0.29
whole part bare verbish	0.39
whole part bare word	-0.45
whole part here-after object	0.16
whole part here-after subject-late	0.58
whole part here-before bare	-0.28
whole part here-before object	0.56
whole part here-before subject	-0.11
whole part here-before subject-late	0.57
whole part object	-0.14
whole part object area	-0.26
whole part object defect	0.14
whole part object finish	-0.32
whole part object fixture	-0.11
whole part object part	0.15
whole part object size	-0.15
whole part object tells	-0.18
whole part object tool	-0.20
whole part object verbish	-0.25
whole part opens	-0.18
whole part opens area	0.32
whole part opens defect	-0.15
whole part opens finish	-0.09
whole part opens fixture	0.25
whole part opens material	-0.25
whole part opens part	-0.10
whole part opens size	-0.34
whole part opens verbish	-0.25
whole part opens word	-0.25
whole part opens work	-0.18
whole part subject	-0.19
whole part subject area	-0.29
whole part subject defect	-0.41
whole part subject fixture	0.19
whole part subject material	-0.16
whole part subject part	-0.17
whole part subject size	0.12
whole part subject surface	-0.13
whole part subject tells	-0.12
whole part subject tool	0.40
whole part subject word	-0.17
whole part subject-late	0.26
whole part subject-late area	-0.63
whole part subject-late fixture	0.57
whole part subject-late material	0.53
whole part subject-late part	0.41
whole part subject-late verbish	0.67
whole part subject-late word	-0.10
whole prep above	0.32
whole prep after	-0.30
whole prep along	0.59
whole prep at	-0.31
whole prep before	-0.20
whole prep behind	0.45
whole prep below	0.42
whole prep by	-0.52
whole prep for	0.13
whole prep here-after above	0.36
whole prep here-after at	0.43
whole prep here-after below	0.25
whole prep here-after for	-0.54
whole prep here-after from	0.46
whole prep here-after in	-0.33
whole prep here-after off	0.46
whole prep here-after on	0.11
whole prep here-after to	-0.20
whole prep here-after toward	-0.61
whole prep here-after with	-0.12
whole prep here-before at	-0.56
whole prep here-before behind	0.85
whole prep here-before by	-0.20
whole prep here-before from	-0.16
whole prep here-before of	0.14
whole prep here-before off	0.17
whole prep here-before on	-0.28
whole prep here-before with	-0.20
whole prep in	-0.21
whole prep into	0.35
whole prep of	-0.09
whole prep off	0.14
whole prep on	-0.16
whole prep other after	-0.10
whole prep other at	-0.35
whole prep other before	-0.16
whole prep other behind	-0.32
whole prep other by	-0.49
whole prep other for	0.37
whole prep other from	-0.33
whole prep other in	-0.21
whole prep other into	0.36
whole prep other of	-0.13
whole prep other off	-0.46
whole prep other on	-0.14
whole prep other out	-0.17
whole prep other over	-0.37
whole prep other to	0.24
whole prep other toward	-0.41
whole prep other under	-0.23
whole prep out	-0.44
whole prep over	-0.30
whole prep per	-0.12
whole prep to	0.11
whole prep toward	-0.89
whole prep up	-0.08
whole prep with	-0.15
whole rank after 1	-0.12
whole rank after 2	-0.20
whole rank after 3	-0.11
whole rank after 4	-0.26
whole rank before 0	0.12
whole rank before 3	-0.18
whole rank before 4	-0.33
whole says copula	-0.17
whole says imperative	0.10
whole says none	-0.18
whole says past	-0.09
whole says present	-0.10
whole sentences -1	-0.49
whole sentences -1 bare	-0.30
whole sentences -1 object	-0.30
whole sentences -1 opens	-0.25
whole sentences -1 subject	-0.25
whole sentences -1 subject-late	-0.36
whole sentences -2	-0.32
whole sentences -2 bare	-0.26
whole sentences -2 object	-0.19
whole sentences -2 subject	-0.26
whole sentences -2 subject-late	-0.25
whole sentences 1	-0.26
whole sentences 1 bare	-0.17
whole sentences 1 object	-0.13
whole sentences 1 opens	-0.23
whole sentences 1 subject	-0.18
whole size 1	-0.12
whole size 2	-0.17
whole size 3	-0.18
whole subject none +1	-0.31
whole subject none -1	-0.28
whole subject none -2	-0.14
whole subject none -4	-0.16
whole subject none here-after	0.20
whole subject own +1	-0.21
whole subject own -2	-0.27
whole subject own -3	-0.19
whole subject own -4	-0.10
whole subject own here-after	-0.09
whole subject own here-before	0.27
whole subject person -1	0.39
whole subject person -2	-0.17
whole subject person -4	-0.23
whole subject person here-before	0.30
whole subject pointer +1	-0.27
whole subject pointer -1	0.17
whole subject pointer -2	0.29
whole subject pointer -3	-0.33
whole subject pointer -4	-0.38
whole subject pointer here-after	0.33
whole subject pointer here-before	0.23
whole subject tells +1	-0.10
whole subject tells -1	0.73
whole subject tells -2	0.57
whole subject tells -3	-0.16
whole subject tells -4	-0.16
whole subject tells here-before	-0.12
whole touches-after	0.28
whole touches-before	0.18
whole unit area area	-0.31
whole unit area word	-0.25
whole unit current defect	-0.09
whole unit current part	0.35
whole unit length area	0.11
whole unit length defect	0.24
whole unit length finish	-0.34
whole unit length fixture	0.19
whole unit length part	-0.12
whole unit length tells	-0.22
whole unit length tool	-0.21
whole unit length verbish	-0.27
whole unit length word	-0.23
whole unit length work	-0.22
whole unit none area	0.24
whole unit none defect	-0.20
whole unit none finish	-0.15
whole unit none fixture	0.22
whole unit none material	-0.14
whole unit none size	0.13
whole unit none surface	0.13
whole unit none tool	-0.11
whole unit none verbish	0.42
whole unit none word	-0.30
whole unit other material	-0.18
whole unit other word	-0.13
whole unit percent area	-0.23
whole unit percent defect	-0.40
whole unit percent material	-0.29
whole unit percent size	-0.30
whole unit percent tells	-0.11
whole unit pressure part	-0.31
whole unit pressure size	0.26
whole unit pressure surface	-0.23
whole unit pressure word	-0.39
whole unit slope word	-0.18
whole unit temperature area	-0.32
whole unit temperature defect	-0.13
whole unit temperature material	-0.12
whole unit temperature part	0.36
whole unit temperature word	-0.20
whole unit voltage material	-0.13
whole unit voltage part	0.51
whole unit voltage word	-0.09
whole use have	0.31
whole use measure	-0.40
whole use need	-0.26
whole use other	-0.17
whole use use	-0.23
whole where +1	-0.26
whole where -3	-0.18
whole where -4	-0.21
whole where here-after	0.15
whole where here-before	0.17`;

export const POINTER = `article a	-0.41
article none	-0.31
article other	-0.29
article the	0.63
counted bare	-0.12
counted count	-0.30
counted current	0.20
counted length	-0.39
counted pack	-0.34
does add material	0.40
does add word	-0.38
does be area	-0.24
does be defect	-0.58
does be finish	-0.11
does be fixture	0.20
does be material	0.12
does be size	-0.29
does be tool	0.42
does be verbish	0.45
does come defect	-0.19
does come fixture	-0.28
does come material	-0.44
does come size	-0.26
does come word	0.24
does cut defect	0.58
does cut fixture	-0.58
does cut surface	0.73
does cut word	-0.49
does flip surface	-0.91
does flip word	0.34
does fre word	0.15
does get area	-0.46
does get defect	0.18
does get fixture	0.28
does get material	-0.08
does get part	0.32
does get surface	0.37
does get verbish	-0.13
does get word	-0.45
does go defect	-0.53
does go material	0.10
does go part	0.39
does go surface	-0.24
does go verbish	-0.57
does go word	0.23
does have defect	0.22
does have fixture	0.18
does have material	0.20
does have part	0.11
does have surface	-0.25
does have verbish	0.13
does have word	-0.49
does look part	0.10
does move material	-0.19
does move word	-0.25
does need surface	-0.56
does open word	-0.25
does put defect	-0.08
does put fixture	0.32
does put material	0.32
does put surface	-0.37
does put verbish	-0.18
does put word	-0.15
does reset defect	0.19
does reset word	-0.33
does run word	-0.15
does seal material	-0.12
does seal surface	0.41
does seal word	-0.15
does set material	0.58
does shim word	0.22
does sit word	-0.16
does swap defect	-0.49
does swap part	0.75
does swap surface	-0.21
does swap word	0.09
does take area	-0.25
does take defect	0.54
does take fixture	-0.44
does take material	0.18
does take surface	-0.49
does take word	0.34
does want part	0.09
does want verbish	0.09
does want word	0.14
far before 0	-0.28
far before 13+	-0.22
far before 2	0.11
far before 3-4	0.25
far before 5-7	-0.25
far before 8-12	0.28
flawed	0.34
frame copula -1	0.14
frame copula -2	0.25
frame copula -3	-0.29
frame copula -4	0.11
frame copula area	0.25
frame copula defect	-0.94
frame copula fixture	0.10
frame copula here-before	-0.41
frame copula material	0.59
frame copula size	-0.66
frame copula surface	0.19
frame copula tells	-0.44
frame copula verbish	0.67
frame copula word	-0.38
frame imperative -1	-0.41
frame imperative -2	0.18
frame imperative -3	0.64
frame imperative -4	-0.28
frame imperative area	0.12
frame imperative defect	0.39
frame imperative fixture	0.15
frame imperative here-before	-0.36
frame imperative material	0.27
frame imperative part	0.40
frame imperative size	-0.46
frame imperative surface	-0.48
frame imperative verbish	-0.50
frame imperative word	-0.26
frame modal -1	-0.22
frame modal -2	0.31
frame modal -3	0.08
frame modal area	-0.30
frame modal defect	-0.46
frame modal finish	-0.12
frame modal fixture	-0.39
frame modal here-before	-0.42
frame modal material	-0.29
frame modal part	1.44
frame modal size	-0.10
frame modal surface	0.35
frame modal tells	-0.20
frame modal verbish	-0.14
frame modal word	-0.19
frame none -1	0.25
frame none -2	0.24
frame none -3	-0.51
frame none area	1.00
frame none finish	-0.28
frame none fixture	0.47
frame none here-before	-0.18
frame none material	-0.44
frame none part	0.39
frame none size	0.95
frame none surface	-0.38
frame none tool	-0.66
frame none verbish	-0.23
frame none word	-0.58
frame owed -1	0.09
frame owed -2	0.46
frame owed -4	-0.62
frame owed area	0.45
frame owed defect	0.21
frame owed fixture	0.38
frame owed here-before	0.29
frame owed material	-0.09
frame owed part	0.55
frame owed size	-0.49
frame owed surface	-0.87
frame owed tells	-0.34
frame owed tool	-0.28
frame owed verbish	-0.33
frame owed word	0.24
frame past -1	0.76
frame past -2	-0.56
frame past -4	-0.90
frame past area	-0.52
frame past defect	0.19
frame past finish	-0.23
frame past fixture	0.17
frame past here-before	0.85
frame past material	0.60
frame past size	0.14
frame past surface	-0.16
frame past tool	0.12
frame past verbish	-0.27
frame past word	-0.32
frame present -2	-0.29
frame present -4	0.22
frame present area	-0.31
frame present defect	-0.26
frame present finish	-0.11
frame present fixture	0.57
frame present here-before	0.24
frame present material	-0.63
frame present part	-0.47
frame present size	0.40
frame present surface	0.69
frame present tool	0.30
frame present word	0.09
head angle brackets	-0.12
head anyhow	-0.18
head attic	-0.51
head b	-0.18
head back bedroom	0.46
head backwards	-0.29
head bad	-0.25
head bar	-0.26
head base	-0.17
head basement	0.98
head bath	0.16
head bathroom	-0.24
head beadboard	-0.58
head bedroom	-0.29
head bedroom 1	0.52
head bedroom 4	-0.22
head bent	-0.11
head bigger	-0.13
head black	-0.37
head boards	0.56
head bolts	-0.14
head bottom	-0.50
head bowed	-0.09
head box	-0.33
head brass	-0.16
head cable	-0.21
head ceiling	0.96
head chimney	-0.10
head chip	0.12
head clamps	-0.16
head close	-0.14
head closet	1.05
head clothes	-0.18
head code	-0.58
head copper	-0.33
head corner	-0.75
head corridor	0.91
head cracked	-0.08
head cross threaded	-0.14
head crown	-0.30
head ctr	0.52
head cust	-0.71
head dead	-0.09
head deck screws	-0.48
head demo	-0.24
head dining room	0.86
head dishwasher	-0.48
head doors	0.28
head drags	0.67
head drain	0.24
head dried	-0.11
head drywall	0.18
head duct	-0.91
head end	-0.44
head end caps	0.27
head end panel	-0.14
head entry	-0.20
head except	-0.37
head factory	-0.16
head fan	1.09
head faucet	-0.24
head fault	-0.48
head first coat	-0.15
head flashing	-0.62
head flat	-0.13
head floor	-0.16
head frame	-0.17
head fridge	-0.69
head front	-0.11
head full	-0.11
head gap	0.38
head garage	-0.21
head gas	-0.50
head glue	0.18
head go	-0.23
head goes	-0.33
head gone	-0.19
head grout	0.75
head halfway	-0.30
head hall	-0.13
head hall closet	-0.30
head handle	-0.90
head handrail	0.66
head hatch	0.48
head heat mat	0.17
head hinge	-0.36
head hinges	0.22
head hole	0.14
head holes	0.56
head hollow	-0.16
head hot	-0.13
head house	-0.23
head inside	-0.09
head insulation	-0.38
head job	-0.79
head joint	0.81
head kit	-0.49
head kitchen	-0.68
head label	-0.26
head lags	-0.64
head landing	-0.53
head lav	-0.47
head leaking	-0.12
head leaning	-0.09
head light	-0.42
head lint	-0.53
head look	-0.40
head loose	-0.26
head mantel	0.22
head me	-0.36
head mesh	0.52
head middle	-0.33
head mirror	-0.31
head missing	-0.30
head mortar	-0.22
head mud	-0.22
head nail	-0.22
head niche	-0.19
head number	0.95
head o	-0.30
head open	1.19
head opening	-0.13
head out of line	-0.39
head outlet	-0.14
head outside	-0.20
head paint	-0.84
head panel	0.24
head panels	0.27
head pantry	-0.23
head part	-0.60
head piece	0.37
head pipe	0.38
head plastic	-0.32
head plates	0.09
head plywood	0.50
head primer	-0.82
head r	-0.25
head rain	-0.12
head real	0.67
head rear	-0.21
head reducer	0.80
head reg	-0.41
head rock	-0.27
head roof	0.86
head roof cap	-0.37
head room	-0.15
head run	-0.22
head salon	-0.09
head sand	0.19
head screw	-0.98
head screws	-0.87
head seam	0.12
head self leveler	0.19
head sheathing	0.74
head shelf	-0.41
head shop	-0.77
head shot	-0.12
head shower	0.89
head side	-0.69
head sides	-0.28
head silicone	-0.63
head sill	0.35
head slab	1.20
head slider	0.16
head slope	-0.15
head slow	0.32
head smokes	0.31
head soffit	0.13
head soft	0.63
head split	0.48
head spot	-0.30
head stain	-0.59
head stairs	-0.24
head static	-0.26
head step	-0.33
head sun	-0.15
head supposed	0.32
head tape	-0.18
head temp	0.14
head the wrong	0.09
head thin set	-0.20
head tile	0.38
head tiles	1.01
head toe kick	0.21
head toilet	-0.27
head took	-0.18
head top	-0.43
head torn	-0.50
head track	0.58
head treads	-0.28
head trim	0.11
head truck	0.14
head tub	-0.66
head unit	-0.62
head upstairs	-0.22
head valve	-0.30
head vent	1.06
head wall	-0.09
head walls	-0.23
head wants	-0.25
head water	-0.32
head weatherstrip	-0.92
head window	0.28
head windows	-0.28
heading	-0.16
heading -1	-0.17
heading -3	-0.09
heading -4	-0.14
join	-0.13
join +1	-0.22
join +1 area	-0.14
join +1 defect	-0.10
join +1 finish	0.37
join +1 fixture	-0.38
join +1 surface	0.33
join +1 tells	-0.14
join +1 tool	-0.35
join +1 verbish	-0.35
join +1 word	-0.09
join -1 area	0.10
join -1 defect	-0.08
join -1 finish	-0.35
join -1 fixture	0.42
join -1 size	-0.19
join -1 surface	-0.19
join -1 tells	-0.13
join -1 tool	-0.16
join -2	-0.34
join -2 area	-0.32
join -2 defect	-0.08
join -2 finish	-0.15
join -2 fixture	-0.20
join -2 material	-0.19
join -2 part	-0.09
join -2 size	-0.09
join -2 surface	-0.11
join -2 tool	-0.10
join -2 word	-0.13
join -3	-0.29
join -3 area	-0.27
join -3 finish	-0.12
join -3 fixture	-0.14
join -3 material	-0.12
join -3 part	-0.14
join -3 surface	-0.23
join -3 tool	-0.19
join area+finish	0.30
join area+fixture	-0.18
join area+size	0.11
join area+surface	0.19
join area+verbish	0.17
join area+word	-0.13
join defect	-0.15
join defect+finish	-0.25
join defect+fixture	0.37
join defect+material	-0.10
join defect+part	-0.21
join defect+tool	-0.26
join defect+word	-0.14
join finish	-0.18
join finish+area	0.09
join finish+finish	-0.11
join finish+fixture	-0.10
join finish+verbish	-0.08
join fixture	0.33
join fixture+area	0.27
join fixture+finish	-0.34
join fixture+material	-0.09
join fixture+part	0.53
join fixture+size	-0.12
join fixture+surface	0.42
join fixture+tool	-0.34
join fixture+verbish	-0.33
join leads 	0.11
join leads around	0.26
join leads at	0.38
join leads at word term	-0.27
join leads at word word	-0.14
join leads before	-0.12
join leads behind	0.11
join leads by	1.11
join leads by term	-0.19
join leads for	0.36
join leads from	0.12
join leads from term term	-0.12
join leads in word word	0.22
join leads on quantity	0.09
join leads on word word	-0.36
join leads out to	-0.13
join leads quantity	-0.22
join leads quantity of word	0.10
join leads quantity word quantity	-0.23
join leads term	-0.11
join leads time	0.52
join leads to	-0.13
join leads to verb	-0.12
join leads verb at quantity	-0.11
join leads verb in	-0.25
join leads verb quantity off	0.19
join leads verb quantity term	0.08
join leads verb verb verb	0.10
join leads verb word	0.23
join leads verb word quantity	0.47
join leads verb word word	0.10
join leads word on quantity	-0.09
join leads word quantity	-0.13
join leads word quantity word	-0.19
join leads word verb	0.42
join leads word verb quantity	-0.34
join leads word verb up	-0.16
join leads word word verb	-0.13
join leads word word word	0.13
join links around	0.13
join links at quantity	0.17
join links at word	0.15
join links at word term	-0.27
join links at word word	-0.24
join links before	-0.22
join links behind	0.68
join links by	1.56
join links by term verb	0.15
join links by term word	0.13
join links for	0.13
join links in	0.81
join links of	0.30
join links on	0.87
join links on quantity	0.10
join links on word word	-0.66
join links out of	0.72
join links out to	-0.19
join links quantity	-0.41
join links quantity at	-0.15
join links quantity by quantity	-0.41
join links quantity of word	0.09
join links quantity word quantity	-0.66
join links term	-0.10
join links time	0.13
join links to	-0.43
join links under	0.69
join links verb	0.21
join links verb at quantity	-0.26
join links verb in	-0.80
join links verb on	-0.14
join links verb quantity	-0.11
join links verb quantity in	-0.09
join links verb quantity off	0.09
join links verb verb	-0.17
join links verb verb out	-0.34
join links verb verb verb	0.35
join links verb word	0.20
join links verb word down	-0.24
join links verb word quantity	0.18
join links with	-0.20
join links word	-0.09
join links word quantity	-0.18
join links word quantity word	-0.09
join links word term of	-0.08
join links word verb	0.09
join links word verb at	-0.17
join links word verb in	-0.41
join links word verb quantity	-0.38
join links word verb term	0.09
join links word verb word	0.09
join links word word	0.23
join links word word verb	-0.45
join links word word word	0.12
join material+area	-0.23
join material+finish	-0.28
join material+fixture	0.31
join material+part	0.20
join material+size	0.15
join material+tells	-0.17
join material+tool	0.25
join material+verbish	0.22
join material+word	-0.11
join part	0.13
join part+area	-0.15
join part+defect	-0.14
join part+finish	0.54
join part+fixture	-0.18
join part+material	0.38
join part+size	0.21
join part+surface	-0.34
join part+tells	-0.28
join part+tool	-0.14
join part+verbish	-0.18
join part+word	0.30
join same-after	0.40
join same-after area	0.27
join same-after finish	0.41
join same-after fixture	0.75
join same-after material	0.49
join same-after part	0.22
join same-after tells	-0.30
join same-after tool	0.64
join same-after word	-0.11
join same-before	0.21
join same-before area	0.45
join same-before defect	-0.08
join same-before finish	-0.10
join same-before part	-0.11
join same-before size	0.30
join same-before surface	0.26
join same-before tool	0.16
join same-before verbish	0.40
join size	-0.28
join size 2	-0.22
join size+area	0.28
join size+defect	-0.12
join size+fixture	-0.14
join size+material	-0.09
join size+part	0.33
join size+surface	-0.43
join size+verbish	0.11
join size+word	-0.21
join sizes 1+1	0.30
join sizes 1+2	-0.28
join sizes 1+3	-0.19
join sizes 2+1	-0.19
join sizes 2+2	-0.09
join sizes 3+3	-0.10
join surface+area	0.33
join surface+finish	0.17
join surface+part	-0.24
join surface+size	-0.18
join surface+surface	0.39
join surface+tool	0.12
join surface+verbish	-0.16
join surface+word	-0.11
join tells	-0.30
join tells+material	-0.11
join tells+part	-0.23
join tells+surface	-0.18
join tells+word	0.10
join tool	0.38
join tool+defect	-0.21
join tool+finish	0.84
join tool+fixture	-0.09
join tool+material	0.32
join tool+part	-0.28
join tool+surface	0.08
join tool+verbish	0.42
join tool+word	-0.20
join verbish	-0.27
join verbish+area	0.15
join verbish+defect	-0.13
join verbish+finish	-0.23
join verbish+surface	-0.20
join verbish+word	-0.17
join word	-0.23
join word+area	-0.15
join word+material	-0.10
join word+part	-0.13
join word+size	-0.10
join word+tool	0.19
join word+verbish	-0.09
join word+word	-0.09
join work	-0.20
kind -1 area	0.61
kind -1 defect	-0.12
kind -1 fixture	0.52
kind -1 material	-0.15
kind -1 part	1.14
kind -1 size	0.65
kind -1 tells	-0.61
kind -1 tool	0.29
kind -1 verbish	-0.16
kind -1 word	-0.32
kind -2 area	0.30
kind -2 finish	-0.42
kind -2 fixture	0.22
kind -2 material	0.39
kind -2 part	0.38
kind -2 size	-0.45
kind -2 surface	-0.17
kind -2 tells	-0.20
kind -2 tool	-0.81
kind -2 verbish	-0.48
kind -3 area	0.30
kind -3 defect	-0.11
kind -3 finish	-0.20
kind -3 material	-0.13
kind -3 part	0.14
kind -3 size	-0.79
kind -3 surface	0.45
kind -3 tells	-0.22
kind -3 tool	-0.20
kind -3 verbish	0.64
kind -3 word	-0.42
kind -4 area	-0.32
kind -4 defect	-0.12
kind -4 finish	-0.11
kind -4 fixture	0.19
kind -4 material	0.20
kind -4 part	-0.56
kind -4 size	-0.42
kind -4 surface	-0.21
kind -4 tells	-0.09
kind -4 tool	-0.44
kind -4 verbish	-0.37
kind area	0.14
kind defect	-0.14
kind finish	-0.33
kind fixture	0.32
kind here-before area	-0.51
kind here-before defect	-0.13
kind here-before material	0.25
kind here-before part	0.43
kind here-before size	0.59
kind here-before surface	-0.48
kind here-before tool	0.89
kind here-before verbish	-0.09
kind here-before word	-0.27
kind material	0.15
kind part	0.48
kind tells	-0.54
kind tool	-0.14
kind verbish	-0.13
kind word	-0.27
kind work	-0.37
number many many	0.82
number many one	-0.79
number none many	0.33
number none one	-0.19
part -1 opens	0.36
part -1 subject	0.39
part -2 bare	-0.28
part -2 object	0.18
part -2 subject-late	0.08
part -3 bare	0.15
part -3 object	-0.38
part -3 opens	0.27
part -3 subject	0.24
part -3 subject-late	-0.23
part -4 bare	-0.09
part -4 object	-0.17
part -4 subject	-0.14
part -4 subject-late	-0.70
part bare area	0.10
part bare defect	-0.33
part bare finish	0.36
part bare fixture	0.24
part bare material	-0.16
part bare part	0.36
part bare surface	-0.40
part bare verbish	0.37
part bare word	-0.44
part here-before object	-0.15
part here-before subject	0.25
part object	-0.23
part object area	0.29
part object defect	-0.24
part object finish	-0.48
part object fixture	-0.09
part object material	-0.15
part object part	0.40
part object size	-0.29
part object tells	-0.18
part object tool	-0.28
part object word	-0.14
part opens	0.26
part opens area	-0.15
part opens defect	0.72
part opens finish	-0.11
part opens fixture	0.87
part opens material	0.57
part opens part	0.30
part opens surface	-0.17
part opens tells	-0.21
part opens tool	-0.21
part opens verbish	-0.65
part opens word	-0.29
part opens work	-0.34
part subject	0.22
part subject area	0.30
part subject defect	-0.82
part subject fixture	0.35
part subject material	0.32
part subject part	0.23
part subject size	0.19
part subject surface	0.20
part subject tells	-0.68
part subject tool	-0.23
part subject-late	-0.21
part subject-late area	-0.42
part subject-late fixture	-0.22
part subject-late material	0.11
part subject-late part	0.09
part subject-late surface	-0.43
part subject-late tool	0.56
part subject-late verbish	-0.33
part subject-late word	-0.22
points em -2	0.76
points em -3	-0.24
points em -4	-0.61
points em bare	-0.34
points em here-before	0.09
points em object	0.19
points it -2	-0.17
points it -3	0.13
points it -4	0.08
points it bare	-0.10
points it object	-0.26
points it subject	0.28
points none -1	0.34
points none -3	-0.40
points none bare	-0.17
points none object	-0.45
points none opens	0.53
points none subject	0.13
points one -1	0.65
points one -3	-0.25
points one -4	-0.98
points one bare	0.24
points one here-before	0.49
points one object	0.12
points one opens	-0.55
points one subject	0.33
points one subject-late	-0.35
points that -1	0.37
points that -3	0.31
points that -4	-0.53
points that bare	0.25
points that here-before	-0.19
points that opens	0.26
points that subject-late	-0.47
points them -2	-0.21
points them -3	0.44
points them -4	-0.23
points them subject	0.10
points they -1	-0.28
points they -2	0.48
points they -4	-0.15
points they bare	-0.12
points they object	-0.51
points they subject	0.92
points they subject-late	-0.16
points this -2	0.55
points this object	-0.09
points this opens	0.44
points this subject	-0.36
points those -1	0.27
points those -2	0.41
points those -3	0.18
points those -4	-0.56
points those bare	0.15
points those object	0.36
points those opens	-0.25
points those subject	0.09
prep above	-0.18
prep after	0.22
prep along	-0.24
prep around	0.16
prep before	-0.52
prep behind	-0.15
prep by	-0.79
prep for	0.20
prep from	-0.34
prep here-before at	0.49
prep here-before in	-0.29
prep here-before of	-0.69
prep here-before on	-0.20
prep here-before to	-0.44
prep in	-0.25
prep into	0.51
prep of	-0.66
prep off	-0.19
prep on	-0.42
prep other above	-0.18
prep other after	0.22
prep other along	-0.24
prep other around	0.16
prep other at	-0.16
prep other before	-0.52
prep other behind	-0.15
prep other by	-0.73
prep other for	0.20
prep other from	-0.58
prep other in	-0.21
prep other into	0.51
prep other of	-0.55
prep other off	-0.19
prep other on	-0.39
prep other out	0.31
prep other over	-0.46
prep other to	-0.27
prep other under	-0.68
prep other up	0.21
prep other with	-0.41
prep out	0.46
prep over	-0.61
prep to	-0.40
prep under	-0.68
prep up	0.21
prep with	-0.41
rank before 0	-0.08
rank before 1	0.14
rank before 3	0.17
rank before 4	-0.31
says copula	0.22
says imperative	0.09
says modal	-0.37
says none	0.16
says owed	0.22
says past	-0.17
says present	-0.43
sentences -1	-0.96
sentences -1 bare	-1.00
sentences -1 object	-0.32
sentences -1 opens	-0.81
sentences -1 subject	0.09
sentences -1 subject-late	-0.67
sentences -2	-0.55
sentences -2 bare	-0.56
sentences -2 object	-0.29
sentences -2 opens	-0.20
sentences -2 subject	-0.12
sentences -2 subject-late	-0.31
size 1	-0.78
size 2	0.71
size 3	0.92
use buy	0.54
use have	-0.50
use measure	-0.34
use move	-0.14
use need	0.18
use say	-0.77
use see	0.60
use use	-0.21
where -1	0.21
where -4	-0.28
whole article a	0.44
whole article none	-0.52
whole article other	-0.27
whole article the	0.43
whole behind-verb	-0.24
whole counted bare	0.31
whole counted count	0.48
whole counted length	-0.22
whole counted pack	0.56
whole counted percent	0.52
whole does add material	0.55
whole does add word	-0.36
whole does be area	-0.44
whole does be defect	-0.27
whole does be finish	-0.21
whole does be fixture	0.19
whole does be material	-0.43
whole does be part	0.24
whole does be size	-0.21
whole does be surface	0.56
whole does be tells	-0.23
whole does be verbish	0.47
whole does be word	0.14
whole does come defect	-0.20
whole does come material	-0.34
whole does come size	-0.12
whole does come word	0.09
whole does cut fixture	0.42
whole does cut material	-0.24
whole does cut surface	-0.27
whole does cut word	-0.22
whole does get area	-0.27
whole does get finish	-0.11
whole does get fixture	0.09
whole does get material	0.27
whole does get part	-0.14
whole does get surface	0.08
whole does get verbish	-0.22
whole does get word	-0.16
whole does go area	0.22
whole does go defect	-0.17
whole does go material	-0.11
whole does go part	-0.15
whole does go surface	0.72
whole does go verbish	-0.16
whole does go word	0.16
whole does have area	-0.25
whole does have defect	0.55
whole does have surface	-0.28
whole does have word	-0.58
whole does move word	0.11
whole does put area	0.26
whole does put defect	0.34
whole does put fixture	0.31
whole does put material	-0.32
whole does put surface	-0.36
whole does put verbish	-0.18
whole does put word	-0.28
whole does reset defect	-0.20
whole does reset word	-0.24
whole does seal area	-0.23
whole does seal defect	-0.09
whole does seal material	-0.15
whole does seal surface	0.69
whole does seal word	-0.16
whole does set material	0.09
whole does shim word	-0.22
whole does sit word	-0.08
whole does swap defect	-0.17
whole does swap part	0.10
whole does swap surface	-0.25
whole does swap word	0.62
whole does take defect	-0.14
whole does take word	0.45
whole does want material	0.43
whole does want verbish	0.54
whole does want word	-0.61
whole far before 0	0.14
whole far before 13+	-0.28
whole far before 2	-0.17
whole far before 5-7	0.29
whole frame copula -1	0.43
whole frame copula -2	0.14
whole frame copula -4	-0.44
whole frame copula area	0.13
whole frame copula defect	-0.26
whole frame copula finish	0.45
whole frame copula fixture	0.22
whole frame copula here-before	-0.41
whole frame copula material	-0.33
whole frame copula part	0.55
whole frame copula tells	-0.35
whole frame copula tool	-0.22
whole frame copula verbish	0.49
whole frame copula word	-0.37
whole frame imperative -1	-0.27
whole frame imperative -2	0.28
whole frame imperative -4	-0.52
whole frame imperative area	-0.15
whole frame imperative defect	0.12
whole frame imperative finish	0.48
whole frame imperative here-before	-0.24
whole frame imperative material	-0.15
whole frame imperative part	-0.25
whole frame imperative surface	-0.59
whole frame imperative verbish	-0.21
whole frame imperative word	-0.28
whole frame modal -1	0.28
whole frame modal -2	-0.30
whole frame modal -3	0.23
whole frame modal area	0.41
whole frame modal defect	-0.20
whole frame modal finish	0.38
whole frame modal fixture	-0.10
whole frame modal here-before	0.18
whole frame modal material	0.43
whole frame modal part	-0.13
whole frame modal size	0.36
whole frame modal surface	0.37
whole frame modal tells	-0.20
whole frame modal tool	-0.35
whole frame modal verbish	-0.48
whole frame modal word	-0.17
whole frame none -1	0.33
whole frame none -2	-0.48
whole frame none -4	-0.27
whole frame none defect	0.11
whole frame none finish	-0.42
whole frame none fixture	-0.45
whole frame none here-before	-0.24
whole frame none material	0.37
whole frame none part	0.43
whole frame none tells	-0.41
whole frame none verbish	0.15
whole frame none word	-0.74
whole frame owed -1	-0.44
whole frame owed -2	0.81
whole frame owed -3	-0.35
whole frame owed -4	-0.30
whole frame owed defect	-0.39
whole frame owed finish	-0.25
whole frame owed fixture	0.49
whole frame owed here-before	0.82
whole frame owed part	-0.41
whole frame owed size	-0.33
whole frame owed surface	0.55
whole frame owed tells	-0.16
whole frame owed tool	-0.19
whole frame owed verbish	-0.17
whole frame owed word	0.48
whole frame past -2	-0.16
whole frame past -3	-0.32
whole frame past -4	-0.38
whole frame past area	-0.23
whole frame past defect	-0.57
whole frame past finish	-0.09
whole frame past fixture	0.40
whole frame past here-before	0.45
whole frame past material	0.17
whole frame past part	0.13
whole frame past surface	0.12
whole frame past tells	0.37
whole frame past tool	-0.09
whole frame past verbish	-0.57
whole frame past word	-0.41
whole frame present -2	0.48
whole frame present -4	-0.10
whole frame present defect	0.61
whole frame present finish	-0.24
whole frame present fixture	0.44
whole frame present material	-0.57
whole frame present part	-0.84
whole frame present surface	-0.22
whole frame present tells	-0.20
whole frame present verbish	0.31
whole frame present word	0.70
whole head angle brackets	-0.16
whole head anything	-0.09
whole head attic	-0.52
whole head b	-0.09
whole head back bedroom	0.21
whole head backwards	-0.15
whole head bad	-0.10
whole head bar	-0.23
whole head base	-0.15
whole head basement	0.34
whole head bath	0.91
whole head bathroom	0.72
whole head beadboard	0.55
whole head bedroom 1	-0.09
whole head bedroom 4	-0.10
whole head bent	-0.35
whole head black	-0.19
whole head blinds	0.52
whole head board	-0.26
whole head boards	0.41
whole head bottom	-0.37
whole head box	-0.27
whole head bracket	-0.16
whole head brass	-0.40
whole head cable	-0.40
whole head carpet	-0.09
whole head ceiling	0.61
whole head chip	0.88
whole head clamps	-0.33
whole head close	-0.15
whole head closet	0.35
whole head clothes	-0.14
whole head code	-0.16
whole head copper	-0.20
whole head corner	-0.23
whole head crack	0.34
whole head cracked	-0.36
whole head crooked	-0.26
whole head cross threaded	-0.22
whole head crown	-0.28
whole head ctr	-0.18
whole head dead	0.21
whole head deck	0.30
whole head deck screws	-0.26
whole head dining room	0.28
whole head dishwasher	0.31
whole head door	-0.17
whole head doors	0.26
whole head draft	0.14
whole head drags	0.16
whole head drain	0.44
whole head drywall	-0.14
whole head duct	-0.18
whole head edge	0.14
whole head end	-0.22
whole head end caps	0.34
whole head end panel	-0.94
whole head entry	-0.18
whole head except	-0.34
whole head factory	-0.21
whole head fan	0.13
whole head faucet	-0.10
whole head fault	0.09
whole head first coat	-0.26
whole head flashing	0.19
whole head flat	-0.32
whole head floor	-0.12
whole head frame	1.08
whole head fridge	-0.44
whole head furnace	-0.48
whole head gap	0.15
whole head garage	-0.21
whole head gas	-0.15
whole head glass	0.54
whole head glue	-0.08
whole head goes	-0.12
whole head gone	-0.18
whole head halfway	0.70
whole head hall	-0.10
whole head hall closet	-0.65
whole head handle	-0.08
whole head handrail	-0.09
whole head hatch	0.52
whole head hearth	-0.23
whole head heat mat	0.45
whole head hendersons	-0.17
whole head hinge	-0.24
whole head hinges	-0.18
whole head hole	0.45
whole head holes	-0.11
whole head house	-0.37
whole head hung	0.29
whole head insulation	-0.52
whole head job	-0.16
whole head joint	0.15
whole head kit	-0.17
whole head label	-0.37
whole head lags	0.62
whole head latex	-0.09
whole head leaking	-0.26
whole head leaning	-0.14
whole head lint	0.14
whole head living room	0.67
whole head look	-0.09
whole head loose	-0.22
whole head mantel	-0.09
whole head me	-0.18
whole head mesh	-0.09
whole head meter	0.15
whole head middle	-0.53
whole head missing	-0.08
whole head mortar	-0.08
whole head mud	-0.35
whole head nail	-0.21
whole head number	-0.15
whole head o	-0.09
whole head oil	-0.28
whole head opened up	-0.15
whole head opening	0.19
whole head out of line	-0.20
whole head outlet	-0.10
whole head paint	-0.41
whole head pantry	-0.14
whole head piece	0.35
whole head plate	-0.11
whole head plates	0.72
whole head primer	-0.14
whole head r	-0.27
whole head rain	-0.21
whole head rear	-0.26
whole head reducer	0.69
whole head rock	-0.17
whole head roof	0.21
whole head roof cap	-0.23
whole head run	-0.15
whole head sage	-0.23
whole head salon	-0.32
whole head sand	0.73
whole head screw	-0.42
whole head screws	-0.14
whole head seam	0.09
whole head self leveler	0.51
whole head sheathing	0.51
whole head shop	-0.17
whole head shot	0.20
whole head shower	0.23
whole head side	-1.05
whole head signal	-0.24
whole head silicone	-0.14
whole head sill	-0.22
whole head sink	-0.65
whole head slab	-0.08
whole head slope	-0.12
whole head slow	-0.22
whole head soft	0.11
whole head splash	0.30
whole head spot	-0.17
whole head stain	-0.54
whole head supposed	0.43
whole head the wrong	0.09
whole head thin set	-0.73
whole head tile	-0.44
whole head tiles	0.22
whole head toe kick	-0.15
whole head toilet	0.86
whole head top	-0.58
whole head torn	-0.39
whole head treads	-0.15
whole head truck	-0.59
whole head tub	-0.29
whole head unit	-0.23
whole head upstairs	-0.28
whole head valve	-0.44
whole head wall	0.68
whole head walls	-0.19
whole head wants	-0.22
whole head water	-0.30
whole head weatherstrip	0.57
whole head white	-0.49
whole head window	0.78
whole heading -1	0.32
whole heading -4	-0.11
whole kind -1 area	0.78
whole kind -1 defect	-0.30
whole kind -1 finish	0.47
whole kind -1 fixture	-0.15
whole kind -1 part	0.23
whole kind -1 size	0.40
whole kind -1 surface	0.80
whole kind -1 tells	-0.72
whole kind -1 tool	0.20
whole kind -1 verbish	0.14
whole kind -1 word	-0.40
whole kind -2 area	-0.32
whole kind -2 defect	-0.19
whole kind -2 finish	0.40
whole kind -2 fixture	0.67
whole kind -2 material	-0.29
whole kind -2 size	-0.41
whole kind -2 tells	0.28
whole kind -2 tool	-0.19
whole kind -2 verbish	-0.16
whole kind -2 word	0.32
whole kind -3 defect	-0.18
whole kind -3 finish	-0.25
whole kind -3 fixture	0.26
whole kind -3 material	0.13
whole kind -3 size	-0.12
whole kind -3 surface	-0.36
whole kind -3 tells	-0.15
whole kind -3 tool	-0.21
whole kind -3 word	-0.09
whole kind -4 defect	-0.10
whole kind -4 finish	-0.35
whole kind -4 part	-0.34
whole kind -4 size	-0.14
whole kind -4 surface	-0.28
whole kind -4 tool	-0.16
whole kind -4 verbish	-0.28
whole kind -4 word	-0.15
whole kind defect	-0.18
whole kind finish	0.22
whole kind fixture	0.22
whole kind here-before area	-0.57
whole kind here-before defect	0.71
whole kind here-before fixture	-0.34
whole kind here-before material	0.58
whole kind here-before part	0.15
whole kind here-before size	0.17
whole kind here-before tool	0.21
whole kind here-before verbish	-0.28
whole kind here-before word	-0.36
whole kind surface	0.11
whole kind tells	-0.39
whole kind tool	-0.08
whole kind verbish	-0.08
whole kind word	-0.18
whole kind work	-0.12
whole number many many	0.11
whole number many one	-0.71
whole number none many	0.36
whole number none one	-0.46
whole part -1 object	0.14
whole part -1 opens	-0.12
whole part -2 bare	0.15
whole part -2 object	0.14
whole part -2 opens	-0.18
whole part -2 subject	-0.14
whole part -2 subject-late	0.61
whole part -3 bare	-0.13
whole part -4 bare	-0.27
whole part -4 object	-0.32
whole part -4 subject	-0.13
whole part bare area	-0.58
whole part bare defect	0.26
whole part bare finish	0.42
whole part bare fixture	-0.16
whole part bare size	0.30
whole part bare surface	0.33
whole part bare verbish	-0.49
whole part bare word	-0.13
whole part here-before object	0.24
whole part here-before subject	0.32
whole part here-before subject-late	-0.53
whole part object area	0.28
whole part object defect	-0.17
whole part object finish	0.11
whole part object fixture	0.20
whole part object material	0.13
whole part object part	0.34
whole part object surface	-0.08
whole part object tells	-0.14
whole part object tool	-0.24
whole part object verbish	-0.09
whole part object word	-0.20
whole part opens	-0.18
whole part opens area	-0.42
whole part opens defect	-0.17
whole part opens finish	-0.10
whole part opens fixture	0.15
whole part opens material	-0.26
whole part opens part	-0.11
whole part opens size	-0.28
whole part opens tells	-0.12
whole part opens verbish	-0.10
whole part opens word	0.18
whole part opens work	-0.09
whole part subject defect	-0.52
whole part subject fixture	0.34
whole part subject material	-0.15
whole part subject part	-0.14
whole part subject surface	0.10
whole part subject tells	-0.53
whole part subject tool	0.12
whole part subject verbish	0.37
whole part subject word	-0.17
whole part subject-late	0.09
whole part subject-late area	0.32
whole part subject-late material	0.14
whole part subject-late part	-0.54
whole part subject-late surface	0.46
whole part subject-late tool	0.20
whole part subject-late verbish	-0.13
whole part subject-late word	-0.16
whole points em -1	-0.78
whole points em -3	-0.38
whole points em -4	-0.29
whole points em bare	-0.54
whole points em here-before	0.47
whole points em object	-0.50
whole points em subject	-0.18
whole points em subject-late	0.14
whole points it -1	0.40
whole points it -2	0.25
whole points it -3	-0.28
whole points it -4	-0.12
whole points it bare	-0.40
whole points it here-before	-0.51
whole points it object	0.08
whole points it subject-late	0.32
whole points none -1	-0.17
whole points none -2	-0.18
whole points none -3	0.13
whole points none -4	-0.29
whole points none bare	-0.28
whole points none here-before	0.38
whole points none object	-0.11
whole points none opens	-0.28
whole points none subject	0.13
whole points one -1	0.64
whole points one -3	-0.22
whole points one -4	-0.59
whole points one bare	-0.12
whole points one here-before	0.49
whole points one object	0.62
whole points one opens	-0.13
whole points one subject-late	-0.44
whole points that -1	0.42
whole points that -2	-0.30
whole points that -4	-0.56
whole points that bare	0.57
whole points that here-before	0.22
whole points that opens	-0.13
whole points that subject	-0.43
whole points that subject-late	-0.22
whole points them -2	0.68
whole points them -4	-0.23
whole points them object	-0.26
whole points they -1	-0.51
whole points they -2	0.21
whole points they -3	0.29
whole points they -4	-0.11
whole points they bare	-0.21
whole points they object	-0.56
whole points they subject	0.11
whole points they subject-late	0.61
whole points this -2	0.81
whole points this subject	-0.42
whole points those -1	0.22
whole points those -4	-0.27
whole points those object	-0.13
whole points those opens	-0.09
whole prep above	-0.39
whole prep after	-0.17
whole prep along	0.27
whole prep around	0.27
whole prep at	-0.21
whole prep before	-0.26
whole prep behind	1.30
whole prep below	-0.19
whole prep down	-0.27
whole prep for	-0.15
whole prep from	-0.48
whole prep here-before in	-0.69
whole prep here-before of	-0.57
whole prep here-before on	-0.64
whole prep in	0.35
whole prep of	0.19
whole prep off	0.15
whole prep on	0.19
whole prep other above	-0.39
whole prep other after	-0.17
whole prep other along	0.27
whole prep other around	0.27
whole prep other at	-0.21
whole prep other before	-0.26
whole prep other behind	1.30
whole prep other below	-0.19
whole prep other by	-0.08
whole prep other down	-0.27
whole prep other for	-0.15
whole prep other from	-0.49
whole prep other in	0.49
whole prep other of	0.35
whole prep other off	0.15
whole prep other on	0.32
whole prep other over	-0.14
whole prep other to	-0.53
whole prep other under	-0.38
whole prep other up	0.15
whole prep other with	-0.52
whole prep out	0.13
whole prep over	-0.40
whole prep to	-0.51
whole prep under	-0.38
whole prep up	0.15
whole prep with	-0.52
whole rank before 3	0.16
whole rank before 4	-0.27
whole says imperative	0.16
whole says none	-0.17
whole says present	-0.19
whole sentences -1	-0.39
whole sentences -1 bare	-0.08
whole sentences -1 object	-0.25
whole sentences -1 opens	-0.10
whole sentences -1 subject	-0.46
whole sentences -2	-0.50
whole sentences -2 bare	-0.23
whole sentences -2 object	-0.26
whole sentences -2 opens	-0.20
whole sentences -2 subject	-0.24
whole sentences -2 subject-late	-0.47
whole size 1	0.13
whole size 2	-0.31
whole size 3	-0.18
whole use buy	-0.43
whole use have	-0.16
whole use measure	0.15
whole use move	-0.12
whole use need	0.11
whole use say	0.70
whole use see	-0.47
whole use use	0.08
whole use work	-0.08
whole where -2	0.10
whole where -3	-0.09
whole where -4	-0.33
whole where here-before	0.15`;
