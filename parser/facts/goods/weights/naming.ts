/** Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one. */
export const NAMING = `
ahead #	-16
ahead 4	39
ahead a	-12
ahead about	-19
ahead above	-24
ahead across	24
ahead after	6
ahead against	-20
ahead ain't	-13
ahead all	4
ahead along	25
ahead an	-12
ahead and	-39
ahead are	32
ahead area	-29
ahead around	42
ahead at	6
ahead b	-8
ahead back	-22
ahead behind	-17
ahead below	-42
ahead between	51
ahead both	-25
ahead by	-17
ahead c	102
ahead can	-66
ahead can't	-24
ahead code	-24
ahead defect	9
ahead didn't	44
ahead doesn't	-16
ahead don't	-39
ahead down	48
ahead each	-13
ahead em	-21
ahead every	-38
ahead face	-74
ahead fine	-40
ahead finish	83
ahead fixture	-6
ahead for	42
ahead from	26
ahead gonna	7
ahead good	-13
ahead gotta	-16
ahead has	-7
ahead her	-8
ahead here	-62
ahead i	-13
ahead i'm	29
ahead i've	-36
ahead if	-7
ahead in	38
ahead inside	-23
ahead instead	-17
ahead into	-3
ahead isn't	-45
ahead it	-22
ahead it's	-14
ahead just	44
ahead material	-17
ahead me	-47
ahead must	30
ahead near	-5
ahead nearly	10
ahead never	-8
ahead new	-48
ahead next	-41
ahead no	16
ahead not	61
ahead nothing	-17
ahead now	-31
ahead of	-9
ahead off	-16
ahead old	-26
ahead on	30
ahead ones	-70
ahead only	-45
ahead or	13
ahead out	-4
ahead over	17
ahead part	-24
ahead please	-48
ahead r	-25
ahead role	4
ahead same	-3
ahead she	-15
ahead short	44
ahead since	-36
ahead so	-31
ahead some	-8
ahead somebody	-10
ahead still	-11
ahead surface	64
ahead than	-82
ahead that	6
ahead the	-24
ahead them	-11
ahead there	-63
ahead they	60
ahead this	-5
ahead though	102
ahead through	-8
ahead til	-8
ahead till	-62
ahead to	6
ahead too	17
ahead under	-52
ahead underneath	-7
ahead until	38
ahead up	35
ahead v buy	-5
ahead v have	14
ahead v measure	28
ahead v move	10
ahead v need	-25
ahead v other	10
ahead v return	-52
ahead v say	-34
ahead v see	-26
ahead v use	-30
ahead v work	-10
ahead we	9
ahead well	101
ahead were	-10
ahead when	34
ahead where	-27
ahead which	-15
ahead will	-40
ahead with	-21
ahead within	-18
ahead won't	27
ahead wont	-3
ahead word	-16
ahead wouldn't	36
ahead you	-17
alone	6
alone area	-17
alone fixture	81
alone material	28
alone part	41
alone surface	-9
alone tool	23
alone word	-28
apart false	-6
apart true	-26
asked add material	-29
asked add word	-10
asked ask word	-88
asked be area	-51
asked be finish	11
asked be fixture	43
asked be material	23
asked be part	49
asked be tool	-50
asked be word	-35
asked blow word	-22
asked bring area	17
asked bring finish	6
asked bring fixture	10
asked bring material	-45
asked bring part	32
asked bring surface	-29
asked bring tool	63
asked bring word	-19
asked burn area	-4
asked burn material	26
asked burn surface	-35
asked burn word	-43
asked buy area	-51
asked buy fixture	-16
asked buy material	31
asked buy part	21
asked buy surface	-32
asked buy tool	-42
asked buy word	-3
asked call material	10
asked call word	-18
asked can surface	-5
asked can word	50
asked change area	-17
asked change material	-46
asked change part	-22
asked change surface	-33
asked change word	-29
asked count material	13
asked count word	-66
asked cut area	-7
asked cut fixture	25
asked cut material	65
asked cut surface	41
asked cut word	-35
asked do area	-5
asked do finish	-4
asked do material	57
asked do part	-3
asked do surface	-4
asked do word	46
asked drive material	7
asked drive surface	-4
asked figure area	-4
asked figure fixture	-9
asked figure material	48
asked figure part	-16
asked figure word	-17
asked finish material	57
asked get area	-25
asked get finish	74
asked get fixture	-4
asked get material	41
asked get part	40
asked get surface	-30
asked get tool	42
asked get word	7
asked give fixture	-4
asked give material	37
asked give surface	-7
asked give word	-29
asked glue fixture	-18
asked glue material	26
asked glue part	-5
asked glue surface	46
asked glue word	-37
asked go area	-12
asked go finish	-27
asked go fixture	-34
asked go material	49
asked go part	-5
asked go surface	-46
asked go tool	-4
asked go word	-24
asked grab area	-24
asked grab finish	-52
asked grab fixture	-31
asked grab material	33
asked grab part	-45
asked grab word	-50
asked hang area	-44
asked hang fixture	-12
asked hang material	-36
asked hang part	17
asked hang surface	-12
asked hang word	-38
asked have area	-25
asked have finish	39
asked have fixture	-42
asked have material	5
asked have part	10
asked have surface	-33
asked have tool	21
asked have word	24
asked lay area	-20
asked lay finish	13
asked lay material	25
asked lay surface	-14
asked lay word	26
asked leave area	-12
asked leave finish	33
asked leave fixture	-38
asked leave material	28
asked leave part	24
asked leave surface	-22
asked leave tool	13
asked leave word	-4
asked make material	35
asked make word	-52
asked miss fixture	-21
asked miss material	41
asked miss word	-10
asked need finish	-6
asked need fixture	-28
asked need material	-14
asked need part	10
asked need surface	-17
asked need tool	6
asked need word	-14
asked need work	-5
asked null area	-24
asked null finish	16
asked null fixture	-11
asked null material	20
asked null part	-14
asked null surface	-23
asked null tool	-6
asked null word	-5
asked null work	-44
asked open area	-18
asked order area	-42
asked order finish	67
asked order fixture	93
asked order material	-30
asked order part	-13
asked order surface	-36
asked order tool	37
asked order word	-30
asked pick area	-12
asked pick finish	7
asked pick fixture	-17
asked pick material	28
asked pick part	78
asked pick surface	-2
asked pick tool	-47
asked pick word	-39
asked put area	-40
asked put finish	-30
asked put fixture	-94
asked put material	-27
asked put part	-17
asked put surface	-4
asked put tool	-47
asked put word	-38
asked replace material	91
asked replace word	27
asked run area	-45
asked run fixture	-4
asked run material	33
asked run part	-9
asked run surface	-8
asked say material	-13
asked say word	-20
asked seal area	-5
asked seal word	-17
asked send fixture	22
asked send material	7
asked send part	-38
asked send surface	61
asked send word	-53
asked set fixture	-13
asked set material	-62
asked set part	66
asked set surface	16
asked set word	-5
asked sister material	53
asked sister surface	-6
asked sister word	-29
asked swap area	-4
asked swap fixture	-60
asked swap material	58
asked swap part	108
asked swap surface	-45
asked swap word	-6
asked take area	-25
asked take finish	81
asked take fixture	-60
asked take material	-24
asked take part	-37
asked take tool	-9
asked take word	-9
asked think material	58
asked think word	-33
asked throw area	-4
asked throw material	16
asked throw part	-3
asked throw surface	-16
asked throw word	-51
asked use area	-30
asked use finish	86
asked use fixture	-23
asked use material	15
asked use part	-49
asked use surface	5
asked use tool	-15
asked use word	-16
asked want area	-2
asked want finish	-60
asked want fixture	-11
asked want material	-42
asked want part	22
asked want surface	30
asked want tool	-38
back 0	50
back 1	59
back 2	12
back 3	-24
back 4	-35
back 5	-25
back 6	-33
back 7	-36
back 8	-25
before another	-48
before more	45
before new	3
before no	20
behind #	7
behind a	-14
behind about	-54
behind after	-27
behind all	13
behind an	28
behind and	25
behind another	-48
behind any	-32
behind are	-11
behind around	-6
behind at	-44
behind b	-17
behind before	-29
behind behind	-17
behind below	-38
behind between	-61
behind both	-14
behind by	-32
behind c	-2
behind can	-87
behind d	20
behind doesn't	-5
behind don't	-42
behind down	-35
behind each	-9
behind em	76
behind every	-59
behind for	-6
behind from	-40
behind gotta	-7
behind has	-34
behind he's	-3
behind her	16
behind here	-16
behind his	-49
behind i	-36
behind i'll	-77
behind i'm	-104
behind i've	-16
behind into	-30
behind is	-7
behind it	-28
behind it's	-33
behind its	30
behind just	-13
behind mark	12
behind me	105
behind more	45
behind my	30
behind n	-8
behind near	-12
behind new	3
behind next	-15
behind no	20
behind nobody	-32
behind not	-67
behind now	102
behind number	37
behind of	15
behind off	-14
behind old	31
behind on	-8
behind one's	9
behind ones	-68
behind out	-39
behind over	-22
behind please	28
behind quantity	-8
behind s	-15
behind she's	-8
behind so	-38
behind some	36
behind somebody	-55
behind term	-5
behind than	-4
behind that	-44
behind that's	-23
behind the	3
behind their	32
behind them	16
behind then	-34
behind there	-5
behind they	-36
behind they're	-21
behind this	67
behind those	-47
behind through	-42
behind time	5
behind to	-30
behind too	-14
behind under	-11
behind up	-12
behind v have	-65
behind v measure	-58
behind v move	-27
behind v need	49
behind v other	-4
behind v say	27
behind v see	-43
behind v work	-17
behind we	-69
behind we're	-16
behind were	-8
behind where	-5
behind whole	3
behind will	-4
behind with	-6
behind without	14
behind x	22
behind you	-12
behind your	-32
by L doors	-3
by L hardware	-6
by L lumber	30
by L paint	21
by L still	-11
by L undefined	7
by L wall	-29
by article again	-33
by article appliances	-78
by article bathroom	-30
by article bottom	-8
by article ceiling	-37
by article closet	-14
by article corner	-47
by article door	16
by article doors	58
by article drywall	-19
by article edge	-60
by article electrical	-25
by article exterior	108
by article fine	-18
by article hardware	52
by article hole	-18
by article hvac	-14
by article kitchen	-13
by article light fixture	-77
by article line	90
by article lumber	-73
by article one's	-21
by article p-trap	-30
by article paint	-17
by article panel	10
by article plumbing	-32
by article right	-12
by article rough opening	-52
by article screw	-82
by article smoke detector	-54
by article solid	-36
by article still	-22
by article stud	58
by article tile	-13
by article toilet	-13
by article transition strip	51
by article tub	-54
by article undefined	-37
by article wall	-3
by bag again	-2
by bag already	-69
by bag appliances	58
by bag attic	-15
by bag backsplash	-3
by bag base coat	-21
by bag baseboard	-3
by bag bathroom	-4
by bag bed	-2
by bag blown insulation	20
by bag bracket	-69
by bag brick	-41
by bag cable	-9
by bag ceiling	-3
by bag coat	-5
by bag concrete	-17
by bag corner	-5
by bag deep	-8
by bag door	-13
by bag doors	-17
by bag drywall	84
by bag edge	-9
by bag electrical	-6
by bag end cap	-12
by bag fence post	-49
by bag first	-16
by bag floor	-16
by bag flooring	-19
by bag grout	67
by bag hardware	-20
by bag hole	-21
by bag insulation	102
by bag j bend	-4
by bag landscape	-23
by bag line	-2
by bag lumber	-20
by bag mortar	36
by bag mosaic	-46
by bag north side	-3
by bag outlet	-6
by bag paint	-20
by bag patch	93
by bag plumbing	-74
by bag right	-7
by bag roofing	-16
by bag sand	-75
by bag screw	23
by bag self leveler	103
by bag step	-5
by bag still	-27
by bag stucco	67
by bag thinset	28
by bag tile	21
by bag truck	-6
by bag wall	-9
by bag wood glue	-28
by bottle hardware	11
by bottle lumber	-11
by bottle undefined	53
by box again	-2
by box backsplash	-5
by box baseboard	39
by box beam	-4
by box bedroom	-3
by box board	-3
by box boards	-4
by box bottom plate	11
by box cabinet	40
by box cabinet screw	50
by box cable	63
by box carpet pad	-18
by box closet	-14
by box concrete	-70
by box corner	84
by box crown molding	-2
by box door	-13
by box doors	33
by box drywall	-32
by box edge	-25
by box electrical	73
by box except	-8
by box finish nail	15
by box floor	-12
by box flooring	39
by box hall	-2
by box hardware	86
by box hello	-25
by box hole	-2
by box hvac	-54
by box joist	-4
by box kitchen	-6
by box long	20
by box lumber	-5
by box matte	-5
by box nail	18
by box outlet	-56
by box paint	-41
by box panel	-3
by box patio door	-12
by box plumbing	-54
by box right	-5
by box roofing	23
by box screw	-5
by box shim	49
by box silicone	-17
by box sill	-2
by box slab	-6
by box soffit	-3
by box stud	-20
by box subfloor	-31
by box tape	-15
by box tile	45
by box truck	18
by box undefined	-32
by box vinyl plank	61
by box wall	-40
by box wall cabinet	49
by box wide	-4
by box window	-14
by box wood filler	-14
by box wood glue	-48
by bucket ceiling	-6
by bucket coat	18
by bucket concrete	-34
by bucket doors	-4
by bucket drywall	97
by bucket edge	-2
by bucket electrical	-4
by bucket first coat	-8
by bucket hardware	-20
by bucket joint compound	109
by bucket lumber	-8
by bucket paint	-47
by bucket plumbing	-26
by bucket screw	-5
by bucket tape	-14
by bucket tile	25
by bucket undefined	40
by bucket wall	-22
by bundle doors	-15
by bundle lumber	-50
by bundle paint	-9
by bundle roof	-20
by bundle undefined	27
by can ceiling	-2
by can doors	-30
by can edge	-4
by can electrical	-21
by can hardware	-20
by can hvac	-3
by can lumber	-69
by can paint	35
by can plumbing	-54
by can screw	-3
by can spray foam	24
by can undefined	-34
by carton flooring	28
by carton lumber	-38
by carton undefined	-85
by cartridge hardware	48
by cartridge plumbing	61
by cartridge undefined	-74
by case lumber	-14
by case undefined	-66
by coat ceiling	40
by coat undefined	-38
by count 2x10	-40
by count 2x4	-11
by count 2x8	-6
by count access panel	-5
by count acoustic ceiling tile	13
by count again	-9
by count air	-7
by count air filter	65
by count already	-18
by count anti	-5
by count apart	-9
by count appliances	-13
by count aside	-17
by count attic	-10
by count away	-11
by count backsplash	-39
by count bags	-57
by count ball valve	-45
by count baluster	113
by count bang	-17
by count bar	31
by count baseboard	31
by count basement	-4
by count basket strainer	-3
by count bath	-4
by count bathroom	3
by count battery	32
by count beadboard	47
by count beam	-73
by count bed	-4
by count bedroom	-16
by count bedroom one	-2
by count bench	-12
by count better	-5
by count bifold	-24
by count big	-2
by count black	-44
by count blade	46
by count blank cover	-28
by count blind	98
by count blocking	16
by count blower assembly	43
by count board	58
by count boards	57
by count boiler	-19
by count bolt	-11
by count bone	-2
by count bottom	-18
by count bottom plate	39
by count box room	-3
by count bracket	51
by count breaker	83
by count brick	60
by count built in	-35
by count bulb	35
by count cabinet	-38
by count cabinet pull	97
by count cable	-57
by count cams	-5
by count carpet	-39
by count carpet pad	-22
by count case	-13
by count casing	-55
by count cat6 cable	-9
by count caulk	4
by count cavity	-14
by count ceiling	35
by count ceiling fan	-11
by count ceiling grid	-13
by count center	-9
by count centers	32
by count centre	-8
by count centres	-26
by count ceramic tile	-59
by count change order	-6
by count chimney	-40
by count circular saw	-13
by count clamp	-11
by count clear	-6
by count clearance	-3
by count cleat	-6
by count clip	-29
by count closet	-14
by count closet flange	-23
by count closet rod	5
by count coat	-17
by count cold	-6
by count color	22
by count concrete	17
by count construction adhesive	-17
by count corner	47
by count count	-43
by count counter	-19
by count countertop	-55
by count coupling	20
by count course	-13
by count cover plate	52
by count crawlspace	-4
by count crown molding	19
by count curb edge	-2
by count curtain rod	-3
by count cutout	-18
by count damper	-18
by count data drop	-21
by count daylight	-2
by count deadbolt	-12
by count deck	-25
by count deep	-13
by count different	-14
by count dimmer	41
by count dining room	-17
by count dobie	-13
by count door	-15
by count door closer	-22
by count door knob	22
by count door seal	90
by count door stile	-23
by count door sweep	-29
by count doorway	-6
by count downstairs	-30
by count drain	-41
by count drawer	-36
by count drawer front	69
by count drill bit	-62
by count driveway	-2
by count drum	-2
by count dryer vent	-23
by count drywall	10
by count duct	-31
by count due	-5
by count dumpster	-15
by count ear	-3
by count edge	-23
by count elbow	-19
by count electrical	9
by count else	-11
by count end cap	90
by count end panel	-25
by count enough	-4
by count epoxy	35
by count evaporator coil	-26
by count even	-8
by count ever	-18
by count except	-49
by count exhaust fan	-13
by count exterior	41
by count exterior door	-33
by count far	-41
by count fascia	-31
by count faucet	26
by count faucet stem	3
by count fell	-8
by count felt pad	35
by count fence	-44
by count fence post	100
by count fine	-8
by count finger	-7
by count fire	28
by count fireplace	3
by count first	-18
by count first coat	-24
by count flatbed	-61
by count flexible	-14
by count flip	-26
by count floor	21
by count floor glue	6
by count flooring	14
by count flue	-43
by count foil tape	-13
by count foot	-14
by count footing	-9
by count form	-31
by count frame	-6
by count framing	-8
by count free	-38
by count fridge	-15
by count front	-10
by count full	-14
by count gap	-11
by count garage	-31
by count gary	-41
by count gasket	92
by count gate	-13
by count gfci	45
by count glass	77
by count glue	-34
by count god	-10
by count gravel	93
by count gray	-60
by count great room	-10
by count grinder	-10
by count grout	24
by count guard	61
by count gutter	-50
by count gutter hanger	-10
by count hair	-14
by count halfway	-4
by count hall	-28
by count handrail	-31
by count hard	-14
by count hardware	23
by count hardwood	53
by count heat	-11
by count heater	-9
by count height	-8
by count hello	-4
by count high	-12
by count hinge	-50
by count hinge screw	88
by count hole	-31
by count home	-27
by count hose	-16
by count hose bib	-51
by count hot	-2
by count house	-33
by count how	-11
by count hvac	20
by count insulation	-22
by count island	-30
by count jamb	-28
by count jan	-80
by count joint	-25
by count joint compound	-86
by count joist	-23
by count joist hanger	49
by count junction box	-4
by count key	105
by count kick plate	-29
by count kids room	-29
by count kit	-52
by count kitchen	-18
by count kitchen faucet	-16
by count kitchenette	-13
by count knee wall	-9
by count knees	-7
by count ladder	53
by count laminate	-42
by count landing	-12
by count landscape	-40
by count latch	-50
by count ledger	-46
by count leg	-14
by count lid	33
by count light fixture	-13
by count line	-27
by count linen closet	-3
by count list	-23
by count live	-7
by count living room	-6
by count lock	-10
by count long	-30
by count loop	-11
by count low	-7
by count luis	-19
by count lumber	-20
by count machine	-4
by count man	-17
by count masonry anchor	18
by count matte	-28
by count max	-27
by count maybe	-61
by count meantime	-5
by count mesh unit	-16
by count metal flex	-85
by count meter socket	-8
by count middle	-12
by count mirror	-29
by count mortar	17
by count mosaic	73
by count motor	-57
by count mullion	-23
by count nail	-76
by count nail plate	100
by count neutral	-3
by count newel post	17
by count nipple	-27
by count north side	-8
by count nut	33
by count oak	22
by count office	-14
by count offset	13
by count once	-15
by count one's	-27
by count outlet	12
by count oven	-17
by count p-trap	19
by count paint	-19
by count paint tray	-78
by count painter's tape	9
by count paper	7
by count part	-4
by count patch	-15
by count patio door	-36
by count penetrating oil	-14
by count piece	-62
by count pieces	-30
by count pins	-8
by count pipe	-52
by count pipe sleeve	-23
by count plaster	22
by count plastic bucket	-28
by count plenty	-4
by count plumber's putty	-9
by count plumbing	7
by count plywood	29
by count pocket door	-53
by count porch	-26
by count power cord	-81
by count primed	-40
by count primer	59
by count pump	-22
by count push	-9
by count rack	-2
by count radiator	-17
by count rafter	-50
by count rail bracket	-8
by count rain	-12
by count range	-7
by count range hood	15
by count ray	-9
by count ready	-7
by count rear	-17
by count recessed light	17
by count red	-53
by count register	25
by count regulator	58
by count rental	-3
by count replacement	-34
by count report	-4
by count restaurant	-7
by count reveal	-37
by count right	-41
by count rim joist	-17
by count rise	-5
by count riser	-40
by count robe hook	31
by count rock	-34
by count roller cover	-98
by count roof	-7
by count roof boot	48
by count roofing	34
by count rooftop unit	-12
by count rough	-20
by count rough opening	-38
by count round	-28
by count row	-13
by count rubber	-8
by count rubber base	-14
by count runner	76
by count salon	-19
by count sand	61
by count sandpaper	20
by count sash	-30
by count satin	-17
by count sconce	-6
by count screw	18
by count screwdriver	-9
by count sealer	-10
by count seam	-9
by count second	-47
by count second fix	-2
by count self	112
by count shed	-48
by count sheet	-11
by count shelf	-69
by count shelf pin	62
by count shelf support	36
by count shim	31
by count shingle	23
by count shoe molding	22
by count shop	-13
by count shower	-42
by count shower curb	-4
by count shower pan	-10
by count shutoff valve	-21
by count siding	34
by count silicone	-17
by count sill	-29
by count sink	-24
by count slab	5
by count sliding door track	-84
by count slope	-23
by count smoke detector	3
by count soffit	-6
by count soft close	44
by count solid	-9
by count somebody's	-3
by count sorry	-13
by count spare	-5
by count spray foam	-3
by count spring	-9
by count stain	-40
by count stained	-10
by count stainless	-21
by count stair	-30
by count stair nose	44
by count stair skirt	-31
by count stair tread	29
by count step	-34
by count still	-35
by count stock	-97
by count stone veneer	43
by count store	-7
by count straight	-15
by count strap tie	-33
by count street	-15
by count strike plate	49
by count string	-31
by count strong	-3
by count stud	-62
by count subfloor	49
by count suite	-3
by count sump pump	-19
by count sunroom	-5
by count supply line	72
by count switch	59
by count tag	-13
by count takeoff	-5
by count tall	59
by count tank	-9
by count tape	-25
by count temperature	-8
by count thermostat	-4
by count thick	-10
by count thinset	103
by count third	-17
by count thirds	-47
by count threshold	34
by count tight	-5
by count tile	51
by count tile spacer	-36
by count toe kick	-39
by count together	-32
by count toggle bolt	-27
by count toilet	-44
by count toilet seat	-14
by count top's	-6
by count towel bar	-54
by count transition strip	45
by count trim	-44
by count truck	-44
by count tub	-4
by count tub spout	-44
by count tube	-22
by count turnover	-5
by count tv	-11
by count twice	-4
by count undefined	-17
by count underside	-29
by count upstairs	15
by count vanity	-60
by count vanity light	-36
by count vanity top	-4
by count varnish	2
by count vent	-89
by count vent pipe	-40
by count vinyl plank	23
by count wainscot	-6
by count wall	-28
by count wall cabinet	-50
by count washer	33
by count water	-9
by count water pressure	-6
by count wax	-11
by count wax ring	-21
by count what	-18
by count whip	-22
by count white	-38
by count wide	-18
by count wind	-12
by count window	22
by count window bench	-8
by count window screen	69
by count wire mesh	-33
by count wood filler	-23
by count wood glue	-94
by count wrong	-29
by count yet	-13
by each already	-41
by each appliances	-22
by each concrete	-4
by each door	-44
by each door knob	-69
by each doors	-63
by each drywall	9
by each edge	17
by each electrical	-29
by each floor	-4
by each flooring	63
by each hall	-6
by each hardware	-16
by each hole	-18
by each hvac	-36
by each kitchen	-4
by each lumber	-34
by each paint	6
by each plumbing	-50
by each right	-12
by each roofing	34
by each screw	79
by each sealer	-7
by each tape	-5
by each tile	78
by each truck	-12
by each undefined	-10
by each wall	-31
by ft appliances	-27
by ft baseboard	-41
by ft bathroom	-59
by ft bottom	-15
by ft casing	-18
by ft concrete	-6
by ft door	-18
by ft doors	5
by ft drywall	15
by ft duct	79
by ft edge	-23
by ft electrical	16
by ft exhaust fan	-5
by ft floor	-5
by ft glue	-11
by ft hall	-10
by ft hardware	50
by ft hvac	18
by ft line	-20
by ft living room	-6
by ft lumber	-39
by ft maybe	-15
by ft paint	22
by ft panel	-33
by ft pipe	-21
by ft plumbing	62
by ft power cord	100
by ft right	-51
by ft roofing	38
by ft sash cord	101
by ft shoe molding	56
by ft slab	-3
by ft still	-18
by ft undefined	-40
by ft water	-3
by ft weatherstrip	126
by ft window	-12
by gal again	-13
by gal already	-20
by gal bleach	-5
by gal board	-39
by gal cabinet pull	-13
by gal caulk	-23
by gal ceiling	71
by gal coat	8
by gal concrete	31
by gal dining room	-13
by gal doors	-8
by gal drywall	-7
by gal edge	-5
by gal eggshell	65
by gal electrical	-20
by gal first	-8
by gal first coat	53
by gal flooring	16
by gal hall	-3
by gal hardware	9
by gal kids room	74
by gal living room	-13
by gal lumber	-11
by gal matte	-56
by gal maybe	75
by gal paint	15
by gal plumbing	-3
by gal satin	21
by gal stain	39
by gal still	-7
by gal tape	-29
by gal tile	-32
by gal trim	-22
by gal undefined	-2
by gal wall	-10
by gal walnut	38
by gal wood glue	87
by kg hardware	-38
by kg undefined	46
by kit doors	-45
by kit epoxy	91
by kit hardware	-7
by kit undefined	-55
by lb drywall	-40
by lb electrical	-7
by lb hardware	74
by lb lumber	-41
by lb plumbing	-6
by lb screw	58
by lb undefined	-23
by length baseboard	73
by length casing	11
by length doors	18
by length hardware	-58
by length lumber	20
by length undefined	2
by m baseboard	64
by m doors	25
by m electrical	66
by m hardware	-30
by m hvac	-23
by m lumber	12
by m paint	-55
by m plumbing	-47
by m undefined	-34
by pack appliances	-8
by pack door	-2
by pack doors	-14
by pack drywall	-7
by pack electrical	65
by pack floor	-3
by pack grout	-48
by pack hardware	25
by pack hole	-3
by pack lumber	-18
by pack outlet	-27
by pack paint	-22
by pack plumbing	-28
by pack screw	-4
by pack tile	-26
by pack undefined	-13
by pack wall	-25
by pail flooring	-11
by pail hardware	25
by pail paint	12
by pail undefined	-5
by pair doors	62
by pair drawer slide	22
by pair electrical	-70
by pair hardware	77
by pair undefined	-112
by pointer doors	-67
by pointer electrical	41
by pointer hardware	20
by pointer lumber	-66
by pointer plumbing	42
by pointer tile	-39
by pt lumber	-8
by qt concrete	-17
by qt door	-24
by qt doors	-51
by qt edge	-6
by qt electrical	-11
by qt first coat	-2
by qt hardware	-43
by qt lumber	-80
by qt maybe	28
by qt paint	59
by qt patch	-11
by qt plumbing	-11
by qt primed	79
by qt primer	47
by qt right	-3
by qt tile	-31
by qt trim	-18
by qt undefined	4
by qt wall	-10
by roll again	-3
by roll already	-15
by roll ceiling	-5
by roll ceiling fan	-4
by roll closet	-10
by roll concrete	22
by roll corner	-42
by roll doors	-25
by roll drop cloth	-6
by roll drywall	-11
by roll duct	-8
by roll edge	-3
by roll electrical	-15
by roll floor	-9
by roll flooring	-13
by roll hardware	8
by roll hvac	-12
by roll joint compound	-15
by roll joist	-21
by roll kitchen	-3
by roll lumber	-26
by roll maybe	-30
by roll one's	-3
by roll painter's tape	45
by roll plumbing	-16
by roll plywood	-40
by roll primer	-27
by roll right	-4
by roll roof	-5
by roll roofing	55
by roll siding	-15
by roll slope	-3
by roll still	-2
by roll subfloor	-10
by roll tape	73
by roll tile	-53
by roll undefined	-20
by roll wall	-6
by roll wallpaper	88
by roll wood glue	-45
by set hardware	3
by set undefined	7
by sheet board	42
by sheet ceiling	-6
by sheet concrete	-10
by sheet data drop	-10
by sheet doors	-37
by sheet drywall	98
by sheet edge	-7
by sheet electrical	-14
by sheet floor	-4
by sheet flooring	-19
by sheet glue	-5
by sheet hardware	-47
by sheet hvac	-4
by sheet joist	-3
by sheet kitchen	-2
by sheet lid	-25
by sheet lumber	-28
by sheet mosaic	102
by sheet paint	34
by sheet plumbing	-67
by sheet plywood	40
by sheet right	-3
by sheet roofing	-25
by sheet screw	-12
by sheet subfloor	-9
by sheet tape	-41
by sheet tile	43
by sheet undefined	-29
by sheet wall	-18
by sleeve paint	-35
by sleeve undefined	-60
by sq ft lumber	-40
by sq ft tile	86
by sq ft undefined	17
by sq m undefined	-55
by square undefined	-86
by stick crown molding	26
by stick doors	-17
by stick edge	-14
by stick electrical	-16
by stick glue	-16
by stick hardware	31
by stick hvac	-5
by stick lumber	59
by stick paint	-18
by stick plumbing	-15
by stick undefined	-56
by stick wall	-7
by tin lumber	-21
by tin paint	37
by tin undefined	-21
by tub doors	50
by tub electrical	-22
by tub hardware	-6
by tub lumber	-24
by tub plumbing	28
by tub undefined	-20
by tube 2x	-4
by tube again	-9
by tube appliances	-7
by tube baseboard	-39
by tube bottom	-3
by tube cabinet pull	-6
by tube casing	-7
by tube caulk	19
by tube concrete	-89
by tube construction adhesive	93
by tube corner	-3
by tube doors	-18
by tube drywall	-15
by tube edge	-6
by tube electrical	-30
by tube exterior	-44
by tube floor	-2
by tube flooring	-79
by tube fridge	-8
by tube gap	-22
by tube glue	-4
by tube grout	-6
by tube hole	-4
by tube hvac	-10
by tube lumber	-51
by tube p-trap	-3
by tube paint	13
by tube panel	-6
by tube plumbing	-30
by tube plywood	-2
by tube screw	-28
by tube silicone	93
by tube sill	-8
by tube spray foam	-58
by tube still	-53
by tube stud	-9
by tube tape	-3
by tube tile	-44
by tube undefined	3
by tube water	-2
by tube window	-15
by tube wood glue	88
by yd concrete	19
by yd undefined	-36
capital true	-21
counted	-21
counted area	-12
counted fixture	11
counted material	-21
counted part	-18
counted surface	-15
counted tool	42
counted word	19
cut longer	-10
cut longer article	-9
cut longer bare	22
cut longer count	-29
cut longer length	6
cut longer named false ends material	4
cut longer named false ends number	-35
cut longer named false ends part	28
cut longer named false ends verb	45
cut longer named true ends area	8
cut longer named true ends defect	-41
cut longer named true ends finish	96
cut longer named true ends fixture	-56
cut longer named true ends material	14
cut longer named true ends number	-3
cut longer named true ends part	6
cut longer named true ends role	-3
cut longer named true ends surface	-44
cut longer named true ends tool	-42
cut longer named true ends verb	-15
cut longer named true ends word	-20
cut longer size 2	-6
cut longer size 3	18
cut longer size 4	-10
cut longer size 5	-29
cut longer size 6	-39
cut longer size 7	-43
cut longer volume	-43
cut new	-9
cut new area	3
cut new article	66
cut new count	-14
cut new length	35
cut new named false ends area	-9
cut new named false ends defect	47
cut new named false ends finish	-25
cut new named false ends fixture	81
cut new named false ends material	96
cut new named false ends number	-38
cut new named false ends part	46
cut new named false ends surface	-36
cut new named false ends tool	-13
cut new named false ends verb	-38
cut new named false ends word	-35
cut new pack	-24
cut new pointer	18
cut new size 1	-13
cut new size 2	28
cut new size 3	11
cut new size 4	-27
cut new size 5	-34
cut new size 6	-16
cut new size 7	-8
cut new volume	-39
cut new weight	-24
cut same	21
cut same area	70
cut same article	-14
cut same bare	6
cut same count	7
cut same length	-3
cut same named false ends area	-77
cut same named false ends finish	-3
cut same named false ends material	41
cut same named false ends number	-57
cut same named false ends verb	11
cut same named false ends word	-81
cut same named true ends area	-34
cut same named true ends defect	-29
cut same named true ends finish	-22
cut same named true ends fixture	-6
cut same named true ends material	34
cut same named true ends number	-90
cut same named true ends part	46
cut same named true ends surface	9
cut same named true ends tool	37
cut same named true ends verb	20
cut same named true ends word	9
cut same pack	40
cut same pointer	80
cut same size 1	16
cut same size 2	37
cut same size 3	8
cut same size 4	64
cut same size 5	11
cut same volume	85
cut same weight	54
cut shorter	-6
cut shorter article	-16
cut shorter bare	-29
cut shorter count	15
cut shorter length	27
cut shorter named false ends area	-10
cut shorter named false ends finish	-5
cut shorter named false ends word	-30
cut shorter named true ends area	-28
cut shorter named true ends defect	-47
cut shorter named true ends finish	-27
cut shorter named true ends fixture	12
cut shorter named true ends material	53
cut shorter named true ends number	-38
cut shorter named true ends part	20
cut shorter named true ends role	16
cut shorter named true ends surface	43
cut shorter named true ends tool	69
cut shorter named true ends verb	-26
cut shorter named true ends word	-50
cut shorter pack	3
cut shorter pointer	-44
cut shorter size 1	-12
cut shorter size 2	14
cut shorter size 3	4
cut shorter size 4	61
cut shorter volume	-57
cuts nouns	6
did buy imperative	-14
did buy modal	-7
did buy past	41
did buy present	-50
did have past	-5
did have present	9
did measure imperative	-49
did measure modal	-89
did measure owed	-90
did measure past	5
did measure present	-35
did move imperative	-97
did move modal	13
did move owed	-31
did move past	21
did move present	14
did need modal	-17
did need owed	14
did need past	-13
did need present	-36
did null copula	3
did null imperative	67
did null none	-5
did null owed	-33
did null present	27
did other copula	-4
did other modal	-43
did other owed	3
did other past	9
did other present	8
did return present	-3
did say imperative	-40
did say modal	-3
did say past	-109
did say present	-7
did see imperative	-14
did see modal	46
did see owed	-2
did see past	-46
did see present	-5
did use imperative	13
did use past	9
did use present	10
did work imperative	-3
did work modal	23
did work owed	-25
did work past	-10
did work present	-12
done	3
done article	-32
done count	-5
done length	-30
done pack	6
done pointer	-9
done volume	50
done weight	-12
ends area	-39
ends area next finish	-40
ends area next mark	-11
ends area next material	-5
ends area next part	-4
ends area next verb	-9
ends area next word	-14
ends defect	-25
ends defect next mark	5
ends defect next material	-3
ends defect next word	-38
ends finish	-5
ends finish next #	-15
ends finish next Q length	-4
ends finish next Q null	-3
ends finish next finish	-39
ends finish next mark	2
ends finish next material	-2
ends finish next number	-8
ends finish next part	-4
ends finish next verb	41
ends finish next word	-8
ends fixture	5
ends fixture next defect	19
ends fixture next fixture	-6
ends fixture next mark	-67
ends fixture next material	-32
ends fixture next part	-25
ends fixture next verb	49
ends fixture next word	24
ends joined	29
ends material	43
ends material next #	70
ends material next Q count	25
ends material next Q length	-24
ends material next Q null	63
ends material next break	70
ends material next defect	50
ends material next finish	-5
ends material next mark	27
ends material next material	31
ends material next number	3
ends material next part	-25
ends material next surface	38
ends material next time	27
ends material next tool	-28
ends material next verb	40
ends material next word	45
ends number	-71
ends number next #	-20
ends number next mark	-76
ends number next material	-10
ends number next verb	-4
ends number next word	-55
ends part	47
ends part next #	-31
ends part next Q count	9
ends part next Q length	41
ends part next Q null	144
ends part next defect	4
ends part next mark	82
ends part next material	-15
ends part next number	38
ends part next part	-24
ends part next surface	38
ends part next verb	21
ends part next word	20
ends plural article	-39
ends plural bare	63
ends plural count	62
ends plural pack	63
ends plural pointer	36
ends plural volume	-3
ends plural weight	28
ends role	-8
ends role next verb	-35
ends role next word	18
ends surface	4
ends surface next Q length	-20
ends surface next mark	-56
ends surface next material	-8
ends surface next part	-10
ends surface next verb	-17
ends surface next word	44
ends tool	30
ends tool next mark	-31
ends tool next part	-13
ends tool next word	51
ends verb	-15
ends verb next #	31
ends verb next Q length	-53
ends verb next Q null	-55
ends verb next Q pack	-17
ends verb next break	10
ends verb next defect	12
ends verb next mark	-13
ends verb next material	-28
ends verb next number	-11
ends verb next part	-5
ends verb next surface	-2
ends verb next verb	13
ends verb next word	-19
ends word	-27
ends word adhesive	43
ends word anchor	53
ends word anchors	39
ends word angle	55
ends word arm	61
ends word around	-3
ends word arrived	-22
ends word back	-15
ends word bag	-40
ends word bags	-103
ends word bar	66
ends word base	44
ends word battery	13
ends word black	-28
ends word blade	85
ends word block	48
ends word blocks	21
ends word blue	-5
ends word blue tape	37
ends word board	48
ends word boards	-6
ends word bolt	47
ends word bolts	54
ends word bonding primer	7
ends word bottom	2
ends word box	-74
ends word boxes	-45
ends word bracket	50
ends word brackets	-7
ends word brads	45
ends word brass	-40
ends word brick	77
ends word bring	-33
ends word brushes	39
ends word bulbs	28
ends word bumpers	26
ends word cab	-20
ends word cabinet screws	23
ends word cable	-69
ends word cap	23
ends word casing	30
ends word caulk	64
ends word cement	89
ends word changed	-40
ends word chrome	-18
ends word clamps	94
ends word clear	26
ends word clips	52
ends word closer	10
ends word color	-9
ends word color match	5
ends word copper	36
ends word corner	16
ends word couplings	-52
ends word cover	127
ends word covers	108
ends word cracked	-40
ends word cut	-103
ends word deck screws	33
ends word deep	-28
ends word discs	100
ends word done	-16
ends word door	-12
ends word doors	-37
ends word double	-40
ends word drain	-92
ends word drywall	-5
ends word eggshell	43
ends word eight	-12
ends word elbow	19
ends word elbows	54
ends word em	-15
ends word enamel	8
ends word end caps	-9
ends word epoxy	32
ends word extension	27
ends word extra	-3
ends word filter	41
ends word filters	50
ends word fitted	-36
ends word fixed	-11
ends word flashing	-115
ends word flat	-77
ends word flex	-29
ends word foam	81
ends word foil tape	8
ends word frame	64
ends word full	-23
ends word gap	33
ends word gasket	27
ends word get	2
ends word glass	39
ends word glue	62
ends word glued	-25
ends word gone	-35
ends word good	-40
ends word got	-14
ends word gray	32
ends word grout	-38
ends word guy	-6
ends word half	-36
ends word hall	-38
ends word hangers	79
ends word head	69
ends word hinge	-7
ends word hinges	37
ends word hose	20
ends word hung	-44
ends word joint	-45
ends word joist hangers	46
ends word keys	29
ends word kind	-10
ends word kit	68
ends word kitchen	-49
ends word knobs	14
ends word ladder	18
ends word lags	27
ends word laid	-33
ends word last	-9
ends word leaning	-25
ends word leave	-82
ends word left	-50
ends word lid	14
ends word lock	10
ends word long	-56
ends word longer	-45
ends word low	-23
ends word mastic	41
ends word matching	-19
ends word mesh	85
ends word mesh tape	12
ends word mine	-28
ends word missing	-11
ends word mix	116
ends word more	-37
ends word mortar	56
ends word mud	5
ends word nails	20
ends word new	-19
ends word next	-35
ends word next #	-61
ends word next Q count	35
ends word next Q length	82
ends word next Q null	-71
ends word next Q pack	-12
ends word next area	-38
ends word next break	-70
ends word next defect	-43
ends word next finish	8
ends word next fixture	-21
ends word next mark	8
ends word next material	-14
ends word next number	-33
ends word next part	-21
ends word next surface	-37
ends word next time	-5
ends word next tool	-12
ends word next verb	-36
ends word next word	-13
ends word nos	-87
ends word nosing	-2
ends word number	-34
ends word oak	-47
ends word old	-21
ends word one	-40
ends word ones	-94
ends word only	-38
ends word order	-12
ends word ordered	-49
ends word outlets	-79
ends word p	-4
ends word panel	-12
ends word panels	38
ends word paper	73
ends word piece	-14
ends word pins	29
ends word pipe	-38
ends word plate	92
ends word plates	36
ends word plenty	-37
ends word plugs	33
ends word plus	-47
ends word ply	22
ends word poly	19
ends word posts	-16
ends word primed	62
ends word primer	31
ends word pulls	34
ends word pump	41
ends word put	-18
ends word putty	45
ends word pvc	75
ends word rapid set	23
ends word red	-16
ends word reducer	43
ends word remain	-10
ends word replaced	-26
ends word ring	136
ends word rod	46
ends word rods	46
ends word roller	39
ends word round	-73
ends word same	-31
ends word sand	-73
ends word sash	35
ends word satin	-11
ends word says	-41
ends word screw	109
ends word screwed	-22
ends word screws	84
ends word seal	-17
ends word sealant	20
ends word sealer	19
ends word second	-33
ends word self leveler	40
ends word semi gloss	52
ends word set	-45
ends word shelf	11
ends word shelf pins	57
ends word shelves	-70
ends word shims	17
ends word short	-41
ends word side	-32
ends word silicone	62
ends word sitting	-15
ends word spacer	-33
ends word spare	-46
ends word square	-99
ends word stain	4
ends word stainless	-32
ends word still	-46
ends word stock	-46
ends word stone	-26
ends word straight	-8
ends word strip	-57
ends word structural screws	88
ends word studs	-25
ends word stuff	-66
ends word swapped	-26
ends word sweep	14
ends word tall	-16
ends word tape	22
ends word taped	12
ends word tee	7
ends word tell	-9
ends word thick	-11
ends word thinset	39
ends word third	-18
ends word through	-15
ends word tile	55
ends word tiles	27
ends word toggles	16
ends word total	-33
ends word trap	35
ends word treads	33
ends word treated	71
ends word trim	-100
ends word truck	-28
ends word tub	-66
ends word type	-2
ends word unopened	-38
ends word used	-45
ends word valve	-6
ends word van	-15
ends word varnish	15
ends word vent	-21
ends word vinyl	24
ends word wall	45
ends word walnut	-16
ends word wanted	-40
ends word washer	-23
ends word washers	63
ends word water	15
ends word wax	90
ends word wax ring	35
ends word white	-36
ends word wide	-107
ends word wire nuts	17
ends word wood	19
ends word wood filler	12
ends word x	-79
flawed false	55
flawed true	8
fuller	21
fuller article 1	-61
fuller back 0	-4
fuller back 1	68
fuller back 2	-4
fuller back 3	41
fuller back 4	-41
fuller bare 1	-48
fuller by 1 to 1	-21
fuller by 1 to 2	43
fuller by 1 to 3	-24
fuller by 2 to 1	30
fuller count 1	7
fuller count 2	42
fuller fixture word	28
fuller head finish	82
fuller head material	-2
fuller head part	-114
fuller head word	124
fuller part part	-14
fuller surface material	23
fuller word finish	82
fuller word material	-108
fuller word part	-95
fuller word word	80
goods false	-32
goods false false	-37
goods false true	-28
goods true	18
goods true false	37
head 18/2	-88
head 1x4	-74
head 1x8	-9
head 2x	-6
head 2x10	-37
head 2x4	-21
head 2x6	-64
head 2x8	-70
head 4x6	-103
head abs pipe	8
head absent	93
head abt	-3
head accent wall	3
head access	-2
head access panel	3
head acoustic ceiling tile	8
head acrylic	67
head actuator	112
head afternoon	-23
head again	-22
head air	-8
head air filter	64
head almond	-40
head alone	-4
head already	-50
head alright	-4
head aluminum	-10
head anti	-5
head anti tip bracket	97
head anybody	-9
head anyone	-4
head apart	-13
head area	-3
head arm	-15
head arvo	-28
head aside	-17
head attic	-14
head attic stair	-5
head auto filler	-108
head away	-15
head back bedroom	-5
head backer board	105
head backsplash	-14
head bags	-57
head ball valve	-23
head baluster	37
head band	42
head bang	-23
head bank	-5
head bar	18
head base cabinet	26
head base coat	-45
head base unit	-13
head baseboard	73
head basement	-14
head basket strainer	38
head bath	-12
head bathroom	-31
head battery	34
head beadboard	10
head beam	-22
head beam wrap	-54
head bear	-5
head bearers	-2
head bed	-14
head bedroom	-14
head bedroom one	-23
head bench	-14
head better	-5
head bifold	-38
head big	-9
head black	-45
head black pipe	12
head blade	22
head blank cover	-32
head bleach	-19
head bled	-17
head blind	107
head blocking	10
head blower assembly	81
head blown insulation	16
head blue	35
head board	65
head board's	-5
head boards	36
head boiler	-20
head bolt	44
head bond	-13
head bone	-6
head bookcase	-17
head bottom	-29
head bottom plate	44
head bowl	-6
head box room	-5
head boy	-2
head bracket	-4
head brass	3
head breaker	69
head breast	-5
head brick	32
head brine tank	-65
head brother	-2
head brown	-41
head brushed nickel	-69
head built in	-36
head bulb	53
head bulkhead	-4
head bullnose	92
head cabinet	21
head cabinet pull	21
head cabinet screw	-7
head cable	23
head camera	29
head cams	-5
head card	-39
head carpet	-62
head carpet pad	-21
head carpet tile	-10
head carriage bolt	-16
head cartridge	25
head case	-13
head casing	-28
head cast iron pipe	-18
head cat	-2
head cat6 cable	-10
head catch basin	66
head caulk	-18
head cavity	-13
head cedar	40
head ceiling	34
head ceiling fan	-23
head ceiling grid	-16
head cement	-20
head center	-9
head centers	24
head centre	-8
head centres	-25
head ceramic tile	-58
head chain	8
head chair rail	-2
head change order	-6
head channel	4
head chase	-11
head check valve	16
head chiller	-15
head chimney	-47
head chunk	-2
head church	-9
head circuit	-24
head circular saw	33
head clamp	-8
head cleanout	-76
head clear	-65
head clearance	-3
head clip	-18
head closet	-40
head closet bolt	-2
head closet door	-44
head closet flange	-37
head closet kit	-70
head closet rod	24
head coat	-14
head cock	85
head code	-4
head cold	-17
head color	-29
head column	-31
head company	-11
head concrete	-34
head concrete sealer	74
head condensate line	-17
head condo	-41
head conduit strap	-5
head construction adhesive	28
head contact cement	-6
head contractor	-8
head contractor bag	-14
head cooktop	-20
head copper pipe	-76
head corner	37
head corner bead	139
head corner board	53
head count	-41
head counter	-47
head countertop	-75
head coupling	20
head course	-16
head cover plate	73
head crawlspace	-4
head crazy	-12
head credit	-58
head crown molding	6
head ctr	-9
head curb edge	-4
head curbing	-45
head curtain rod	-3
head cutout	-17
head dale	-6
head damper	-62
head data drop	-101
head date	-12
head dave	-3
head daylight	-17
head deadbolt	-11
head dealer	-24
head deck	41
head deck screw	35
head decking	-21
head deep	-28
head dehu	-6
head delivery	-6
head demolition	-24
head dentist	-3
head dentist's	-13
head desk	-20
head device box	-9
head difference	-2
head different	-15
head dime	-10
head dimmer	37
head dining room	-19
head disconnect	-23
head discs	-17
head dishwasher	-8
head disposal	-12
head ditra	112
head dobie	-16
head dog	-8
head door	-38
head door buck	-23
head door closer	38
head door glide	-56
head door knob	-23
head door seal	50
head door stile	-27
head door stop	31
head door sweep	57
head doorway	-22
head double	-25
head downspout	63
head downstairs	-33
head draft	-72
head drain	-44
head drawer	-44
head drawer front	37
head drawer slide	8
head drawing	-3
head drill bit	-68
head drip edge	-16
head driveway	-23
head drop cloth	14
head drum	-4
head dryer	-48
head dryer vent	-52
head drywall	-10
head duane	-8
head duct	29
head duct boot	10
head duct tape	-32
head due	-10
head dumpster	-31
head ear	-9
head earliest	-18
head eave	-16
head edge	-30
head edge banding	84
head eggshell	42
head egress window	-19
head elbow	-29
head electric	-3
head elevator	-3
head else	-30
head enamel	32
head end cap	-33
head end panel	-44
head entry	-34
head epoxy	61
head evaporator coil	-33
head even	-11
head ever	-29
head everywhere	-51
head except	-58
head exhaust fan	-26
head expansion tank	46
head exterior	62
head exterior door	-30
head extra	-5
head face	-54
head face frame	-17
head factory	-8
head far	-36
head fascia	-16
head faucet	22
head faucet stem	-70
head fell	-8
head fella	-15
head felt	-45
head felt pad	34
head fence	-46
head fence post	-4
head fence slat	26
head fifth	-5
head filler strip	87
head fine	-22
head finger	-10
head fingernail	-23
head finish nail	-20
head fire	24
head fire caulk	39
head fireplace	-7
head first	44
head fitting	-58
head five eighths board	-8
head flagstone	102
head flap	-23
head flaps	-3
head flashing	-48
head flashing tape	23
head flatbed	-57
head flexible	100
head flip	-26
head flood test	-17
head floor	-5
head floor drain	53
head floor glue	37
head floor heating mat	-17
head flue	-94
head foam	46
head foil	-12
head foil tape	59
head foot	-15
head footing	49
head form	-46
head fourth	-23
head frame	-11
head framing	-17
head free	-40
head fresh	-42
head fridge	-26
head front	-48
head front bedroom	-2
head full	-29
head furnace	-24
head furniture	-5
head gable	-35
head gallon	-22
head gap	-26
head garage	-20
head garage door	68
head gary	-39
head gary's	-17
head gas supply	25
head gasket	46
head gate	-59
head gfci	43
head girls	-6
head glass	53
head globe	75
head glue	-28
head god	-26
head gpg	-10
head gravel	55
head gray	90
head great room	-17
head green	-71
head gridline	-7
head grille	-11
head grinder	-15
head grout	12
head guard	82
head guest room	-8
head gun	-22
head gutter	-14
head gutter hanger	-3
head hair	-15
head half bath	-2
head halfway	38
head hall	-22
head hall bath	-3
head handrail	-26
head hank	-3
head hard	-51
head hardness	-12
head hardware	-61
head hardwood	-6
head head's	-3
head heat	-23
head heater	-8
head height	-9
head height's	-5
head hello	-22
head hendersons	-9
head herringbone	-57
head hex key	-4
head high	-13
head hinge	-28
head hinge screw	99
head hola	-3
head hole	-30
head home	-51
head honey	-4
head hose	34
head hose bib	34
head hot	-5
head house	-40
head house wrap	-8
head how	-18
head humidity	-8
head inch	12
head inside corner	72
head insulated	-26
head insulation	9
head island	-40
head itself	-16
head j bend	-50
head j channel	75
head jack	-21
head jack stud	-4
head jamb	-56
head jan	-79
head jess	-15
head joint	-30
head joint compound	-14
head joist	-48
head joist hanger	48
head junction box	-5
head kens	-10
head key	98
head kick plate	-30
head kids room	39
head kind	-35
head kit	35
head kitchen	-19
head kitchen faucet	-16
head kitchenette	-26
head knee wall	-10
head knees	-8
head ladder	21
head lag bolt	-6
head laminate	85
head landing	-19
head latch	-52
head laundry room	-25
head laundry sink	-2
head lead	-2
head leaf	-3
head led	-33
head ledger	-45
head left hand	-21
head leg	-26
head length	-32
head lid	2
head lift	-14
head light fixture	-60
head lime	-74
head line	-4
head linen	-3
head linen closet	-5
head lineset	-16
head linkage	-11
head lint	-27
head list	-30
head live	-14
head living room	-24
head load	-17
head lobby	-7
head lock	25
head locker	-46
head long	-39
head longer	-6
head loop	-11
head low	-28
head luis	-19
head lumber	-57
head lunch	-8
head lvl	-14
head machine	-5
head man	-16
head maple	-5
head marble tile	-38
head marco	-33
head masonry anchor	17
head master bath	-6
head mat	-13
head matte	-45
head max	-25
head maybe	-59
head mdf	-9
head meantime	-29
head melamine	-52
head mesh unit	-23
head metal flex	13
head meter socket	-48
head microwave	-6
head middle	-23
head mill	-18
head mind	-10
head mini split	-4
head mirror	-12
head model	-7
head moisture board	19
head moisture meter	-5
head mortar	10
head mosaic	96
head motor	-56
head mouse	-10
head much	-18
head mullion	-21
head myself	-23
head nail	-49
head nail hole	-9
head nail plate	46
head nailer	-53
head name	-30
head natural	-34
head neutral	-4
head new addition	-2
head newel post	15
head news	-13
head nice	-15
head niche	-20
head night	-7
head nipple	-28
head nitrogen	-14
head noon	-21
head north	-6
head north side	-10
head north wall	-8
head nos	-2
head note	-4
head novak	-2
head nowhere	-3
head numbers	59
head nut	26
head oak	42
head office	-38
head offset	13
head once	-24
head one's	-30
head orange	-32
head osb	-19
head ours	-34
head outlet	-22
head oven	-31
head overhang	-4
head overnight	-8
head p-trap	-8
head paddock	-20
head paint	-17
head paint brush	26
head paint sprayer	-55
head paint tray	-31
head painter's tape	39
head pair	-16
head pallet	-80
head panel	8
head pantry	-15
head paper	20
head parlor	-15
head parquet	-18
head part	-6
head part's	-2
head party wall	-9
head patch	67
head patio door	-62
head paver	60
head penetrating oil	6
head penetration	-6
head pergola	-4
head pete's	-12
head picket	72
head picture	-8
head pictures	-22
head piece	-51
head pieces	22
head pigtail	35
head pine	-17
head pine board	21
head pins	-7
head pipe	-80
head pipe sleeve	-42
head pivot	57
head planer	-4
head plaster	-41
head plastic bucket	-106
head plate compactor	-10
head plenty	-7
head plumber's putty	7
head plus	-54
head plywood	23
head pocket door	61
head pop up	-42
head poplar	77
head porch	-41
head porridge	-2
head post base	-18
head power cord	11
head primed	-15
head primer	58
head profile	9
head pump	-26
head push	-10
head putty knife	-4
head quiet	-34
head quikrete	40
head rabbet	-2
head rack	-6
head radiator	-65
head rafter	-90
head rafter vent	52
head rags	-31
head rail bracket	-11
head rain	-52
head ramp	-85
head range	-72
head range hood	3
head range hood vent	-19
head rather	-4
head ray	-14
head reach	18
head ready	-24
head rear	-22
head reception	-5
head recirculation pump	-34
head red	-67
head register	43
head regulator	53
head remains	-4
head remodel	-2
head remote	-17
head rental	-14
head repair kit	-10
head replacement	-32
head report	-8
head reroof	-56
head respirator	59
head restaurant	-14
head retaining wall	-4
head reveal	-36
head rick	-4
head ridge	-6
head ridge vent	-19
head right	-41
head right hand	-12
head rim joist	-55
head rings	-12
head rise	-7
head riser	-52
head robe hook	47
head rock	-81
head roller cover	-121
head roof	-35
head roof boot	48
head rooftop unit	-12
head rough	67
head rough opening	-45
head round	-38
head row	-18
head rubber	144
head rubber base	12
head rung	-13
head runner	72
head salon	-20
head sand	-38
head sandpaper	72
head sash	-82
head sash cord	83
head sash lock	-53
head satin	36
head satin etched	4
head scale	-4
head sconce	-7
head screed	-4
head screed board	-34
head screw	13
head screwdriver	-15
head sealant	-48
head sealer	16
head seam	-28
head second	5
head second fix	-2
head second floor	-3
head self	143
head self leveler	134
head setting compound	-27
head shd	-6
head shed	-43
head sheet	-25
head sheet vinyl	-12
head sheets	-44
head shelf	-74
head shelf bracket	50
head shelf pin	58
head shelf support	-26
head shim	12
head shingle	31
head shoe molding	-11
head shook	-9
head shop	-16
head shoulder	-2
head shower	-54
head shower curb	-5
head shower door	66
head shower floor	-2
head shower pan	-25
head shower wall	-7
head shutoff valve	-21
head sign	-12
head silicone	33
head sill	-31
head sill pan	-55
head silver	-6
head sink	-48
head sir	-7
head site	-13
head slab	-16
head slat wall	22
head slate	-29
head sleeve anchor	67
head slid	-5
head slide	-4
head sliding door track	-95
head slip	-24
head sliver	-20
head slope	-19
head slow	-9
head small	-25
head smoke detector	-10
head soffit	-96
head soft close	95
head solid	-29
head somebody's	-5
head somewhere	-5
head sorry	-12
head sort	41
head spare	-21
head speaker wire	119
head spec	-17
head spotlight	26
head spray foam	11
head spring	-27
head spring hinge	35
head sprinkler head	-45
head stain	7
head stain blocker	78
head stained	-10
head stainless	32
head stair	-22
head stair nose	-2
head stair skirt	-62
head stair tread	-28
head stairwell	-10
head staple	-87
head static	-10
head steel	-20
head steel column	-28
head step	-29
head still	-42
head stock	78
head stock room	-10
head stone veneer	37
head store	-68
head storm door	40
head story	-21
head straight	-14
head strap tie	-33
head street	-21
head strike plate	15
head string	14
head stringer	-9
head strong	-8
head structural screw	-32
head stucco	29
head stud	-27
head studio	-2
head subfloor	-54
head suite	-3
head sump pump	-19
head sun	-9
head sunroom	-8
head supply line	83
head supposed	-20
head sweet	-5
head switch	10
head tack strip	66
head tae	-7
head tag	-31
head tailpiece	-36
head takeoff	-7
head tall	44
head tank	-74
head tapcon	-10
head tape	-37
head tee	-44
head temperature	-19
head terry	-3
head thermostat	20
head thick	-69
head thinset	59
head third	-39
head thirds	-51
head threshold	21
head thumb	-7
head tight	-11
head tile	15
head tile spacer	-16
head tilt	-3
head tint	2
head tip	57
head toe kick	-43
head together	-31
head toggle bolt	-52
head toilet	-36
head toilet seat	-44
head top's	-26
head topsoil	4
head towel bar	25
head tpr	-5
head transition strip	71
head trash	-19
head trash pullout	-50
head traveler	-5
head treated	11
head trench	-9
head trim	-23
head truck	-32
head trunk	-61
head tub	-82
head tub spout	-63
head tub surround	-74
head tube	29
head tubes	79
head turnover	-5
head tv	-11
head twice	-9
head two's	-15
head type	-46
head uncoupling membrane	13
head underlayment	-29
head underside	-24
head upstairs	6
head upstairs hall	-11
head utility knife	22
head vacuum	-8
head valley	-22
head vanity	-32
head vanity light	-73
head vanity top	-22
head vapor barrier	129
head varnish	14
head vent	-89
head vent hood	-22
head vent pipe	-41
head vinyl plank	46
head wainscot	-42
head waiting area	-9
head walkway	-3
head wall	-30
head wall cabinet	-11
head wallpaper	87
head wallpaper paste	-27
head walnut	12
head washer	3
head washer box	-26
head water	-18
head water heater	-18
head water pressure	13
head wax	-4
head wax ring	-23
head weather	86
head weatherstrip	142
head weight	-21
head weld	-8
head west wall	-4
head wet room	-24
head what	-49
head what's	-46
head whatever	-4
head wheel	44
head whip	-12
head white paint	48
head whoever	-7
head why	-5
head wide	-44
head wind	-28
head window	-43
head window bench	-39
head window screen	59
head wire mesh	-22
head wire nut	-17
head wood filler	58
head wood glue	-33
head wood lath	-15
head wool	73
head wrong	-41
head yard	-18
head yellow	-40
head yet	-15
head you'd	-19
head zone	-4
in Q count	-69
in Q length	25
in Q null	-29
in Q volume	-29
in Q weight	9
in area	23
in defect	34
in finish	49
in fixture	-3
in material	-6
in part	-8
in role	-38
in surface	30
in tool	-35
in verb	33
in word	14
kind area	-23
kind area area	-64
kind area article	7
kind area count	-28
kind area length	-53
kind area pack	-22
kind area pointer	-31
kind area volume	13
kind area weight	-18
kind code	40
kind code count	47
kind defect	-15
kind defect count	-10
kind defect pack	-8
kind finish	44
kind finish article	-58
kind finish count	5
kind finish length	40
kind finish pack	47
kind finish volume	77
kind finish weight	67
kind fixture	-26
kind fixture count	-20
kind fixture length	-45
kind fixture pack	-29
kind fixture pointer	-72
kind fixture volume	-34
kind fixture weight	-5
kind material	20
kind material area	85
kind material article	-24
kind material count	19
kind material length	40
kind material pack	22
kind material pointer	16
kind material volume	-6
kind material weight	35
kind part	4
kind part article	21
kind part count	20
kind part length	26
kind part pack	-20
kind part pointer	-9
kind part volume	-33
kind part weight	-37
kind surface	-22
kind surface area	-24
kind surface article	-48
kind surface count	-16
kind surface length	-41
kind surface pack	-26
kind surface pointer	21
kind surface volume	2
kind surface weight	-57
kind tool	-4
kind tool article	73
kind tool count	20
kind tool length	-39
kind tool pack	-37
kind tool pointer	-19
kind tool volume	-45
kind word	-8
kind word area	-20
kind word article	-29
kind word count	-5
kind word length	-4
kind word pack	-2
kind word pointer	-66
kind word volume	-38
kind word weight	-40
kind work	-23
kind work count	-18
kind work pack	-24
label	10
lead 	8
lead a	9
lead a article	9
lead a new	-31
lead an	-33
lead an article	-33
lead em count	-114
lead extra	32
lead more	-40
lead more count	-40
lead more of the	22
lead more the	-132
lead new	23
lead new article	-24
lead new count	35
lead of	48
lead of count	7
lead of em	-114
lead of it	-21
lead of length	25
lead of pack	53
lead of that	-36
lead of the	85
lead of them	32
lead of volume	39
lead of weight	33
lead one of them	-5
lead one of them pointer	-5
lead some	2
lead that pack	79
lead the	-150
lead the article	-36
lead the count	-39
lead the length	5
lead the volume	36
lead them count	22
lead undefined area	21
lead undefined count	7
lead undefined length	47
lead undefined pack	-7
lead undefined volume	43
lead undefined weight	11
like told 1	-31
like told 2	-70
like told 3	-9
meant article false	-29
meant count false	5
meant count true	-25
meant false false	-3
meant false true	30
meant pointer false	-12
meant pointer true	-47
meant true true	-25
modified	30
more area	-6
more finish	99
more fixture	-74
more material	28
more part	28
more surface	-34
more word	19
never told false	4
never told true	-20
next #	15
next &	-12
next (	-4
next )	6
next +	45
next -	-23
next .	10
next ;	43
next @	3
next Q count	48
next Q current	-2
next Q length	29
next Q null	5
next Q pack	-5
next Q volume	-28
next Q weight	59
next a	31
next all	-96
next and	48
next are	-12
next area	9
next around	40
next at	22
next back	54
next because	59
next before	47
next behind	-70
next board	-49
next box	-57
next break	-10
next bring	-3
next but	28
next by	-57
next came	-12
next cause	-6
next changed	4
next color	24
next cover	-58
next cut	93
next defect	42
next do	-79
next down	11
next each	49
next finish	-48
next fitted	31
next fixture	-27
next for	54
next from	58
next glued	-19
next goes	50
next gone	23
next got	59
next has	-41
next have	22
next he	-23
next here	-4
next hung	45
next i	-24
next i'll	17
next i'm	19
next i've	25
next in	2
next is	17
next it	-24
next it's	-57
next kind	-12
next kit	-26
next leave	31
next left	122
next lid	-13
next mark	8
next material	-17
next me	24
next mine	53
next needed	64
next never	29
next next	43
next no	-53
next not	21
next now	23
next number	-14
next of	-92
next off	-14
next on	27
next ones	-52
next or	23
next out	34
next over	-64
next part	-58
next piece	36
next please	63
next plus	30
next replaced	39
next ring	4
next role	81
next says	-50
next set	68
next short	81
next so	-5
next spare	47
next still	6
next stock	12
next surface	-18
next swapped	38
next that	50
next the	-13
next then	11
next there's	22
next they	29
next through	21
next time	50
next to	8
next too	11
next tool	-19
next under	42
next up	-42
next used	64
next verb	12
next wanted	48
next was	-39
next we	72
next went	41
next were	47
next while	13
next with	-54
next word	15
not sold so	-42
of -	-6
of about	-54
of after	-27
of around	-6
of at	-44
of before	-29
of behind	-17
of below	-38
of between	-61
of by	-32
of down	-35
of for	-6
of from	-40
of into	-30
of near	-12
of next	-15
of of	15
of off	-14
of on	-8
of out	-39
of over	-22
of through	-42
of to	-30
of under	-11
of up	-12
of with	-6
of without	14
opens Q null	-31
opens area	-26
opens defect	110
opens finish	7
opens fixture	31
opens material	27
opens number	-14
opens part	50
opens role	-32
opens surface	4
opens tool	51
opens verb	-39
opens word	-15
opens word adhesive	20
opens word angle	80
opens word base	40
opens word blocks	20
opens word blue	11
opens word blue tape	14
opens word board	-45
opens word boards	-29
opens word bolts	32
opens word bonding primer	5
opens word brackets	-26
opens word brads	19
opens word brass	36
opens word brick	66
opens word cabinet screws	21
opens word cap	21
opens word casing	18
opens word chrome	66
opens word clamps	74
opens word clear	66
opens word clips	32
opens word color	-64
opens word color match	54
opens word copper	33
opens word couplings	-53
opens word deck screws	13
opens word door	18
opens word doors	-54
opens word double	-6
opens word drain	5
opens word eggshell	68
opens word elbows	39
opens word end caps	-19
opens word filter	30
opens word flat	-60
opens word flex	-56
opens word foam	75
opens word foil tape	6
opens word frame	49
opens word gasket	4
opens word glass	20
opens word glue	16
opens word gone	-23
opens word good	-96
opens word gray	56
opens word green	41
opens word grout	44
opens word half	-29
opens word hangers	29
opens word hinge	20
opens word hinges	28
opens word hung	-17
opens word joist hangers	35
opens word kitchen	29
opens word knobs	19
opens word lags	36
opens word left	-49
opens word long	15
opens word longer	4
opens word mastic	11
opens word mesh	27
opens word mesh tape	12
opens word more	-88
opens word mud	8
opens word new	-66
opens word nos	-87
opens word oak	11
opens word outlets	-79
opens word panels	19
opens word pins	28
opens word pipe	-54
opens word plus	-44
opens word ply	7
opens word poly	-21
opens word posts	-43
opens word primer	15
opens word rapid set	23
opens word reducer	27
opens word same	-162
opens word sand	16
opens word satin	-71
opens word screw	51
opens word screws	14
opens word sealant	9
opens word sealer	15
opens word semi gloss	43
opens word shelves	-69
opens word shims	27
opens word short	-58
opens word silicone	21
opens word spacer	34
opens word spare	-31
opens word stain	2
opens word still	-64
opens word stone	-21
opens word structural screws	4
opens word studs	-22
opens word tape	15
opens word thinset	33
opens word third	-62
opens word tile	29
opens word tiles	10
opens word toggles	8
opens word treads	32
opens word tub	-18
opens word unopened	-3
opens word used	-53
opens word wall	63
opens word walnut	9
opens word washer	6
opens word washers	50
opens word wax ring	22
opens word white	-28
opens word wood filler	12
opens word x	27
other room	-15
over clause	12
over clause area	10
over clause defect	-25
over clause fixture	-8
over clause material	2
over clause number	-3
over clause part	-4
over clause role	-36
over clause surface	-59
over clause verb	23
over clause word	29
own	16
own article false	-38
own by size	188
own count false	-14
own count true	25
own goods 0	-25
own goods 1	29
own goods 2	42
own goods 3	15
own pointer false	18
own pointer true	47
own pointing false false	-16
own pointing false true	21
own pointing true false	-21
own pointing true true	-52
own size 1	4
own size 2	22
own size 3	14
own size 4	6
own size 5	-24
own size 6	-39
own size 7	-42
own unit area	41
own unit article	-12
own unit count	2
own unit length	18
own unit pack	31
own unit pointer	49
own unit volume	31
own unit weight	33
place -	-23
place here	50
place rest	-22
plural false area true	14
plural false article -	-46
plural false count false	-3
plural false count true	-39
plural false length false	55
plural false pack -	10
plural false pack false	-19
plural false pack true	-20
plural false pointer -	-40
plural false volume true	-11
plural false weight false	-60
plural false weight true	6
plural true area true	-58
plural true article -	9
plural true count false	-8
plural true count true	53
plural true length false	-31
plural true length true	-33
plural true pack false	-12
plural true pointer -	10
plural true volume false	-62
plural true volume true	16
plural true weight false	30
plural true weight true	-12
pointing false	-15
pointing true	25
ran out	84
rank 0	48
rank 0 article	49
rank 0 count	46
rank 0 pointer	70
rank 1	13
rank 1 article	32
rank 1 count	12
rank 1 pointer	44
rank 2	-4
rank 2 article	24
rank 2 count	-5
rank 2 pointer	-31
rank 3	-19
rank 3 article	-33
rank 3 count	-18
rank 3 pointer	-47
rank 4	-25
rank 4 article	-42
rank 4 count	-24
rank 4 pointer	-44
rank 5	-28
rank 5 article	-44
rank 5 count	-27
rank 5 pointer	-53
rank 6	-43
rank 6 article	-108
rank 6 count	-38
rank 6 pointer	-93
said imperative	-11
said modal	-6
said none	-5
said owed	-11
said past	-5
said present	-5
same unit	13
sentences 0	32
sentences 1	-49
sentences 2	-37
sentences 3	-38
shares	-7
sized	4
sold so	107
to clause end	2
told 1	9
told 1 count	37
told 1 length	-19
told 1 pack	-12
told 1 pointer	-34
told 1 volume	-6
told 1 weight	-63
told 2	-38
told 2 article	-126
told 2 count	-50
told 2 length	-16
told 2 pack	-9
told 2 pointer	-30
told 2 volume	4
told 3	-34
told 3 article	-24
told 3 count	-29
told 3 length	-26
told 3 pack	-21
told 3 volume	-19
told before	3
told bought left	-20
told bought null	-63
told bought null false 1	-57
told bought other	-78
told bought other false 1	-50
told bought wants	61
told by false	-10
told have have	-66
told have left	-17
told have left false 1	-34
told have move	5
told have need	42
told have null	-40
told have null false 1	-16
told have null false 2	-52
told have null false 3	-12
told have null true 1	-16
told have null true 2	-11
told have other	29
told have other false 1	-52
told have other true 1	70
told have use	7
told have use false 1	-12
told have wants	48
told have wants false 1	35
told have wants false 2	-36
told have wants false 3	-16
told have wants true 1	86
told have wants true 2	-50
told have work	4
told have work false 1	9
told have work true 1	11
told here	-51
told need have	8
told need have false 1	-17
told need have false 2	-9
told need have true 1	58
told need left	-42
told need left false 1	-32
told need left false 2	-28
told need left true 2	-6
told need move	-51
told need move false 1	-21
told need null	-73
told need null false 1	-63
told need null false 2	-14
told need null false 3	-3
told need null true 1	-77
told need null true 2	-15
told need other	-41
told need other false 1	-27
told need other false 2	-20
told need other true 2	-40
told need say	-24
told need say false 1	-23
told need use	-15
told need use false 1	28
told need use true 1	-59
told need wants	-59
told need wants false 1	-43
told need wants false 2	-18
told need wants true 1	-84
told need wants true 2	-5
told need work	-34
told need work false 1	-42
told need work false 2	-4
told need work true 1	-6
told returned null	88
told returned other	42
told returned other false 1	55
told returned wants	64
told returned wants true 1	75
told used buy	-50
told used have false 1	13
told used have false 2	-5
told used have true 1	-6
told used left	109
told used left false 1	116
told used left false 2	-36
told used left false 3	-17
told used left true 1	88
told used left true 2	12
told used left true 3	22
told used move	-21
told used move false 1	-36
told used need	-15
told used null	-28
told used null false 1	-3
told used null false 2	-28
told used null false 3	-13
told used null true 1	-30
told used null true 2	-21
told used null true 3	-8
told used other	-3
told used other false 1	31
told used other false 2	-8
told used other false 3	-7
told used other true 1	-27
told used other true 2	-8
told used other true 3	-4
told used use	-52
told used use false 1	-19
told used use false 2	-4
told used use true 1	-72
told used use true 2	-2
told used wants false 1	40
told used wants false 2	-41
told used wants false 3	-12
told used wants true 1	-11
told used wants true 2	-14
told used wants true 3	-16
told used work	-64
told used work false 1	-10
told used work false 2	-44
told used work true 1	-69
told used work true 2	-13
touches false	64
touches true	22
use buy	-7
use have	8
use need	4
use use	11
within &	43
within and	-57
within in	-102
within of	112
within on	-58
within out	-51
within over	-9
within the	-66
within up	-44
words 1	-27
words 2	16
words 3	8
words 4	8
`;
