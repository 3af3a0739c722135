/** Written by tests/learn/links.ts: a sign, and hundredths for what it says. */
export const LINKS = `
due now done head its	76
due now done head other	55
due now done head same	39
due now fixed head other	11
due now flaw head its	77
due now plan head in	37
due now plan head its	-42
due now plan head other	-23
end	-11
end done	54
end done flaw	28
end done flaw closed	41
end done word a	-26
end done word all	26
end done word already	86
end done word and	22
end done word are	5
end done word at	57
end done word back	14
end done word bar	-48
end done word base	68
end done word bedroom	19
end done word boards	-18
end done word box	90
end done word by	-32
end done word cabinet	7
end done word ceiling	-37
end done word close	61
end done word coat	-22
end done word cut	-49
end done word dining	-35
end done word done	106
end done word down	19
end done word dry	72
end done word dug	-12
end done word edge	-7
end done word em	-25
end done word every	-11
end done word everything	44
end done word exam	93
end done word filled	21
end done word finished	49
end done word first	27
end done word floor	-71
end done word for	-8
end done word found	96
end done word from	-22
end done word gate	-27
end done word good	91
end done word got	17
end done word gutter	74
end done word had	8
end done word hallway	44
end done word hang	18
end done word has	-75
end done word holes	35
end done word hose	71
end done word hung	-6
end done word in	21
end done word it	-8
end done word it's	66
end done word its	76
end done word laundry	57
end done word left	-87
end done word level	71
end done word like	-33
end done word lit	63
end done word new	12
end done word no	81
end done word north	-69
end done word now	120
end done word of	-40
end done word off	14
end done word old	-21
end done word on	11
end done word one	-35
end done word open	-33
end done word ordered	-87
end done word painted	51
end done word pantry	-45
end done word patch	79
end done word patched	-6
end done word planed	54
end done word plate	96
end done word post	-30
end done word put	-10
end done word rail	-30
end done word ran	105
end done word reset	-7
end done word round	-8
end done word run	48
end done word runs	-19
end done word sanded	74
end done word screwed	64
end done word screws	124
end done word sealed	64
end done word set	-36
end done word sink	43
end done word six	-37
end done word skim	51
end done word straight	-12
end done word swapped	87
end done word taped	76
end done word that	39
end done word the	-26
end done word three	-20
end done word through	79
end done word tight	32
end done word to	-24
end done word toilet	-13
end done word too	33
end done word top	22
end done word trap	48
end done word tub	85
end done word two	-64
end done word valve	87
end done word w	27
end done word wall	41
end done word water	-10
end done word way	-34
end done word we	-105
end done word went	-69
end done word window	-9
end done word with	14
end done work	54
end done work closed	136
end fixed	25
end fixed flaw	101
end fixed flaw closed	62
end fixed new	-42
end fixed word a	8
end fixed word all	-11
end fixed word an	21
end fixed word and	26
end fixed word as	26
end fixed word at	10
end fixed word back	8
end fixed word board	-23
end fixed word by	-82
end fixed word close	-19
end fixed word cut	-44
end fixed word dry	34
end fixed word floor	-5
end fixed word gate	39
end fixed word glue	-7
end fixed word had	49
end fixed word he	22
end fixed word hinge	-12
end fixed word holes	-42
end fixed word i	11
end fixed word in	72
end fixed word is	-39
end fixed word it	34
end fixed word its	48
end fixed word just	-5
end fixed word like	27
end fixed word loose	12
end fixed word nail	-42
end fixed word new	-60
end fixed word no	-44
end fixed word not	22
end fixed word now	80
end fixed word off	-5
end fixed word old	24
end fixed word on	26
end fixed word one	20
end fixed word only	41
end fixed word out	-22
end fixed word packed	46
end fixed word pulled	39
end fixed word put	58
end fixed word quiet	30
end fixed word screw	56
end fixed word screws	29
end fixed word she's	41
end fixed word size	-64
end fixed word so	-7
end fixed word solid	33
end fixed word stood	27
end fixed word that	35
end fixed word there	-23
end fixed word three	-24
end fixed word through	-16
end fixed word to	26
end fixed word took	-76
end fixed word turn	-12
end fixed word up	44
end fixed word wall	-57
end fixed word was	68
end fixed word water	34
end fixed word way	-60
end fixed word were	55
end fixed word you	39
end fixed work	-22
end fixed work closed	-36
end flaw	-35
end flaw flaw closed	61
end flaw new	-64
end flaw word a	10
end flaw word across	-26
end flaw word again	28
end flaw word air	-25
end flaw word all	-37
end flaw word along	-49
end flaw word already	42
end flaw word and	22
end flaw word are	-27
end flaw word around	-33
end flaw word at	-11
end flaw word back	24
end flaw word barn	-32
end flaw word bath	18
end flaw word bathroom	-65
end flaw word be	-15
end flaw word bedroom	-10
end flaw word behind	-39
end flaw word bent	-43
end flaw word black	-33
end flaw word blank	-8
end flaw word boards	-77
end flaw word bottom	-35
end flaw word bought	27
end flaw word box	15
end flaw word brass	-47
end flaw word breaker	-38
end flaw word broke	-55
end flaw word but	-50
end flaw word cabinet	-19
end flaw word came	-25
end flaw word can	-23
end flaw word cap	19
end flaw word cartridge	-47
end flaw word ceiling	-53
end flaw word clean	-41
end flaw word closer	-37
end flaw word closet	-17
end flaw word cold	-47
end flaw word comes	-9
end flaw word coming	-38
end flaw word cord	35
end flaw word corner	8
end flaw word could	-12
end flaw word counter	-57
end flaw word cover	40
end flaw word crack	-28
end flaw word cracked	-88
end flaw word cupped	-61
end flaw word dead	-70
end flaw word directory	-65
end flaw word dishwasher	-48
end flaw word doesn't	59
end flaw word down	30
end flaw word downspout	-21
end flaw word drags	-20
end flaw word drain	-35
end flaw word drawer	-21
end flaw word drip	-46
end flaw word drips	-34
end flaw word edge	-35
end flaw word either	-50
end flaw word em	46
end flaw word end	-11
end flaw word every	42
end flaw word exam	-86
end flaw word fan	-33
end flaw word faucet	-30
end flaw word for	-95
end flaw word found	12
end flaw word four	-31
end flaw word from	-21
end flaw word front	-26
end flaw word ft	-45
end flaw word full	48
end flaw word gap	-15
end flaw word garage	-12
end flaw word gfci	-59
end flaw word go	-59
end flaw word goes	-13
end flaw word gone	6
end flaw word got	51
end flaw word hall	-41
end flaw word hand	-49
end flaw word handle	-17
end flaw word hanging	-16
end flaw word has	-41
end flaw word hatch	-46
end flaw word have	-36
end flaw word he	-50
end flaw word head	-48
end flaw word high	-63
end flaw word hinge	-34
end flaw word hole	-32
end flaw word hose	-46
end flaw word hot	-50
end flaw word house	-22
end flaw word i	-51
end flaw word inside	-27
end flaw word into	-41
end flaw word is	-9
end flaw word isn't	-48
end flaw word it	-58
end flaw word it's	-43
end flaw word jumps	-28
end flaw word junk	-33
end flaw word just	-36
end flaw word kit	-21
end flaw word kitchen	-47
end flaw word latch	21
end flaw word laundry	-63
end flaw word leaks	-25
end flaw word left	-59
end flaw word light	42
end flaw word like	-43
end flaw word lobby	35
end flaw word long	-38
end flaw word loose	43
end flaw word low	-42
end flaw word middle	-24
end flaw word missing	-52
end flaw word nail	-23
end flaw word new	-35
end flaw word no	-34
end flaw word north	-37
end flaw word not	-39
end flaw word now	11
end flaw word of	7
end flaw word off	-73
end flaw word old	-51
end flaw word on	11
end flaw word one	24
end flaw word one's	-34
end flaw word only	23
end flaw word open	-26
end flaw word out	-5
end flaw word outlet	-29
end flaw word outside	-30
end flaw word over	-72
end flaw word painted	-53
end flaw word panel	-20
end flaw word pantry	22
end flaw word plate	-63
end flaw word porch	-41
end flaw word post	-33
end flaw word rail	-36
end flaw word reach	-51
end flaw word restroom	-33
end flaw word right	30
end flaw word ring	34
end flaw word rocks	-36
end flaw word rollers	40
end flaw word room	-19
end flaw word rotted	-21
end flaw word round	-61
end flaw word rusted	-52
end flaw word same	-38
end flaw word sash	27
end flaw word says	-19
end flaw word screws	-32
end flaw word second	-27
end flaw word see	-14
end flaw word shot	-43
end flaw word shut	-36
end flaw word side	-58
end flaw word sink	-47
end flaw word sits	-45
end flaw word slams	-47
end flaw word slow	22
end flaw word snapped	10
end flaw word so	17
end flaw word socket	-68
end flaw word soft	-29
end flaw word split	-62
end flaw word spout	-19
end flaw word sprayer	-27
end flaw word spring	-58
end flaw word stairs	-16
end flaw word standing	-45
end flaw word station	-23
end flaw word still	-71
end flaw word strike	-24
end flaw word strip	-25
end flaw word sweep	42
end flaw word swelled	-53
end flaw word switch	-10
end flaw word that	-10
end flaw word that's	-59
end flaw word the	-33
end flaw word there	7
end flaw word there's	-35
end flaw word theres	-16
end flaw word they	-31
end flaw word third	-16
end flaw word this	-53
end flaw word though	-41
end flaw word threshold	-69
end flaw word through	-32
end flaw word tile	-43
end flaw word time	-23
end flaw word to	-48
end flaw word toilet	23
end flaw word too	-17
end flaw word top	-64
end flaw word torn	-30
end flaw word track	-29
end flaw word tub	-60
end flaw word two	23
end flaw word under	-47
end flaw word unit	-10
end flaw word up	26
end flaw word valve	-30
end flaw word wall	-36
end flaw word was	40
end flaw word water	-9
end flaw word way	72
end flaw word weatherstrip	-41
end flaw word when	-21
end flaw word where	-24
end flaw word window	-40
end flaw word wires	-38
end flaw word won't	-61
end flaw word wont	45
end flaw word x	-33
end flaw word you	-30
end flaw work	17
end flaw work closed	13
end plan	-70
end plan flaw	-89
end plan flaw closed	-30
end plan new	-50
end plan word a	-35
end plan word after	-36
end plan word again	-63
end plan word all	-31
end plan word and	-56
end plan word are	41
end plan word as	-29
end plan word asked	-21
end plan word at	11
end plan word back	8
end plan word be	-56
end plan word both	17
end plan word box	-65
end plan word by	-13
end plan word cabinet	-10
end plan word can't	-12
end plan word carpet	-9
end plan word ceiling	-28
end plan word close	58
end plan word closet	-27
end plan word coat	-10
end plan word come	-24
end plan word comes	-31
end plan word cut	-8
end plan word day	-20
end plan word do	-33
end plan word door	-39
end plan word down	-76
end plan word dry	-32
end plan word edge	-28
end plan word em	19
end plan word fill	-62
end plan word first	-29
end plan word five	-16
end plan word foot	-18
end plan word for	-33
end plan word fri	-43
end plan word friday	-42
end plan word from	-42
end plan word ft	-40
end plan word get	-39
end plan word gets	-62
end plan word getting	-41
end plan word glue	-31
end plan word go	-35
end plan word goes	-67
end plan word gonna	-17
end plan word got	-37
end plan word gotta	-38
end plan word grout	-54
end plan word half	50
end plan word hall	38
end plan word hallway	-28
end plan word hang	-40
end plan word has	-28
end plan word have	-59
end plan word he	37
end plan word he's	-20
end plan word her	-20
end plan word i	6
end plan word i'll	-58
end plan word i'm	-25
end plan word in	-62
end plan word is	-29
end plan word it	-28
end plan word it's	-30
end plan word its	-19
end plan word just	-7
end plan word kitchen	-12
end plan word left	-40
end plan word like	-42
end plan word mon	-44
end plan word monday	-53
end plan word morning	-68
end plan word mrs	-14
end plan word must	-28
end plan word need	-21
end plan word needs	-58
end plan word new	-39
end plan word no	-17
end plan word not	-39
end plan word now	-63
end plan word off	-31
end plan word old	-14
end plan word on	-24
end plan word once	-25
end plan word one	-54
end plan word other	-27
end plan word out	-33
end plan word over	-21
end plan word paint	-32
end plan word ply	-21
end plan word pushed	-9
end plan word put	-16
end plan word rail	-24
end plan word rehang	-40
end plan word replace	-79
end plan word reset	-32
end plan word round	39
end plan word run	-46
end plan word saturday	-48
end plan word says	-35
end plan word screw	-66
end plan word screws	-62
end plan word second	-52
end plan word she	-32
end plan word sheet	-13
end plan word shelf	-14
end plan word shelves	-32
end plan word skim	38
end plan word still	-38
end plan word store	-8
end plan word swap	-65
end plan word take	-37
end plan word th	-34
end plan word that	-31
end plan word that's	50
end plan word the	-25
end plan word then	-24
end plan word there	-42
end plan word they	-40
end plan word those	-38
end plan word three	-10
end plan word thursday	-39
end plan word til	-22
end plan word tile	-53
end plan word till	-29
end plan word to	-45
end plan word today	-71
end plan word tomorrow	-16
end plan word too	-26
end plan word top	-19
end plan word touch	-61
end plan word trim	-42
end plan word tuesday	-31
end plan word two	-29
end plan word up	-26
end plan word us	-17
end plan word want	-47
end plan word wants	-53
end plan word we	-33
end plan word wednesday	-49
end plan word when	-29
end plan word whole	-20
end plan word with	83
end plan word you	-13
end plan work	-72
end plan work closed	-7
end verb 	-23
end verb ask	-29
end verb build	29
end verb cap	-17
end verb caulk	52
end verb clo	58
end verb cut	-6
end verb dig	-12
end verb do	47
end verb drop	26
end verb faucet	42
end verb finish	84
end verb fre	35
end verb get	-22
end verb glu	-26
end verb go	-49
end verb grout	43
end verb hang	59
end verb install	42
end verb lay	-32
end verb mak	-80
end verb mov	21
end verb open	35
end verb order	-87
end verb paint	-72
end verb patch	-30
end verb plan	63
end verb pull	-52
end verb push	28
end verb rak	-58
end verb rehang	-40
end verb replac	8
end verb reset	-8
end verb sand	30
end verb screw	-39
end verb seal	81
end verb send	-83
end verb sit	-12
end verb skim	83
end verb tak	-12
end verb touch	49
end verb wash	-21
end word a	-16
end word about	32
end word across	-26
end word after	-70
end word again	-9
end word air	-25
end word all	6
end word along	27
end word already	61
end word an	59
end word and	6
end word are	5
end word around	29
end word as	72
end word asked	-21
end word at	27
end word back	23
end word bags	-82
end word band	-45
end word bank	45
end word barn	-39
end word base	82
end word basement	-37
end word basin	82
end word bath	-31
end word bathroom	24
end word battery	25
end word bay	17
end word be	-51
end word bedroom	8
end word been	59
end word before	-7
end word behind	17
end word bent	-46
end word black	-38
end word blank	-8
end word blew	51
end word board	-45
end word boards	-49
end word bolts	11
end word both	-8
end word bottom	-85
end word bought	27
end word box	35
end word brace	32
end word bracket	-48
end word brass	-51
end word breaker	-38
end word breezeway	5
end word broke	-20
end word but	-49
end word by	-47
end word cabinet	-6
end word came	-36
end word can	-32
end word can't	-30
end word cap	37
end word carpet	-45
end word cat	-9
end word caulk	-11
end word caulked	70
end word ceiling	-55
end word cement	-61
end word chair	38
end word change	-25
end word changed	82
end word check	-28
end word chewed	-28
end word chimney	-97
end word clamped	-41
end word clamps	6
end word clean	33
end word close	61
end word closer	44
end word closer's	-40
end word closet	-44
end word coat	-41
end word cold	-54
end word come	-45
end word comes	-31
end word coming	-41
end word cord	70
end word corner	39
end word could	-41
end word counter	-8
end word cover	24
end word crack	-6
end word cracked	-107
end word cupped	-61
end word cut	-28
end word day	-64
end word dead	-46
end word dimmer	-6
end word dining	-39
end word dinner	-60
end word directory	-65
end word dishwasher	-25
end word do	-33
end word doc	-18
end word doesn't	68
end word don't	-44
end word done	40
end word door	-7
end word door's	-24
end word dowels	-10
end word down	26
end word downspout	-21
end word downstairs	78
end word drag	44
end word drags	-20
end word drain	-17
end word drawer	-80
end word drip	43
end word drips	-42
end word driver	-95
end word drop	-17
end word dry	48
end word duct	7
end word dug	-12
end word edge	-27
end word eight	-22
end word eighth	41
end word either	-54
end word eleven	-73
end word em	39
end word end	-11
end word ends	-47
end word every	24
end word everything	44
end word exam	33
end word exit	-37
end word fan	37
end word faucet	-45
end word feet	-8
end word fill	22
end word filled	-21
end word filter	-47
end word finish	-15
end word finished	49
end word first	-30
end word five	-19
end word flickering	-16
end word flight	36
end word floor	-58
end word foam	37
end word foot	-39
end word for	-63
end word found	67
end word four	-15
end word fourteen	-36
end word frame	-13
end word freed	42
end word fri	-63
end word friday	-40
end word from	-14
end word front	-61
end word ft	-58
end word full	74
end word furnace	-13
end word gap	-15
end word garage	-62
end word gate	-11
end word gate's	21
end word gave	70
end word get	-67
end word gets	-69
end word getting	-41
end word gfci	-61
end word glue	-52
end word glued	24
end word go	-48
end word goes	-93
end word gone	35
end word gonna	-17
end word good	98
end word got	28
end word gotta	-36
end word ground	74
end word grout	-52
end word gutter	25
end word had	28
end word half	29
end word halfway	-94
end word hall	33
end word hallway	47
end word hand	24
end word handle	-52
end word hangers	-37
end word hanging	-53
end word has	-74
end word hatch	-44
end word have	-66
end word he	48
end word he's	-20
end word head	19
end word heater	79
end word held	39
end word her	70
end word high	-63
end word hinge	-42
end word his	21
end word hole	-38
end word hollow	24
end word hook	-62
end word horse	-69
end word hose	35
end word hot	-14
end word house	42
end word hung	20
end word i'll	-58
end word i'm	-34
end word i've	-38
end word ill	-73
end word in	10
end word inch	-16
end word inches	-48
end word inside	-67
end word into	-20
end word is	-21
end word isn't	-50
end word it	-19
end word it's	-18
end word its	39
end word jo	-51
end word jumped	21
end word jumps	-27
end word junk	-33
end word just	-25
end word keeper	36
end word kick	54
end word kit	-35
end word kitchen	-80
end word knife	85
end word lamp	-22
end word landing	-13
end word last	59
end word latch	21
end word laundry	23
end word leaks	-25
end word left	-69
end word level	85
end word light	64
end word lights	-39
end word like	-30
end word lit	78
end word little	-58
end word lobby	9
end word lock	-56
end word long	-11
end word longer	21
end word loose	65
end word lost	-86
end word low	-42
end word made	-85
end word make	-41
end word maker	-40
end word man	-24
end word me	29
end word mech	-47
end word mesh	-29
end word metal	13
end word middle	-69
end word minutes	55
end word missing	-49
end word mon	-44
end word monday	-53
end word more	48
end word morning	11
end word mortar	44
end word mouse	74
end word moved	55
end word moves	-26
end word mrs	-30
end word mudroom	14
end word must	-28
end word my	30
end word nail	-48
end word need	-35
end word needs	-73
end word new	-42
end word nice	68
end word night	-41
end word nipped	62
end word no	-16
end word north	-72
end word not	-34
end word nothing	10
end word now	91
end word number	-43
end word nut	35
end word of	-8
end word off	-40
end word old	-17
end word on	10
end word once	-25
end word one	-18
end word one's	-45
end word ones	12
end word only	41
end word op	-23
end word open	-21
end word opened	68
end word ordered	-94
end word other	18
end word out	-17
end word outlet	34
end word outside	-32
end word over	-10
end word owner	31
end word packed	46
end word packing	35
end word paddock	-70
end word paint	-83
end word painted	7
end word panel	-20
end word paneling	-50
end word patch	17
end word patched	19
end word peephole	-31
end word piece	-76
end word pipe	45
end word planed	88
end word plugged	72
end word ply	-80
end word pops	-59
end word porch	-101
end word post	-30
end word pull	-48
end word pulled	-8
end word pump's	58
end word pushed	-58
end word quarter	31
end word quiet	66
end word rack	-29
end word rail	-35
end word rain	-46
end word ran	131
end word reach	-49
end word rec	-50
end word rehang	-40
end word rehung	71
end word replace	-81
end word reset	21
end word restroom	-15
end word right	36
end word ring	34
end word rm	13
end word rocks	-36
end word rollers	40
end word room	-31
end word room's	-80
end word root	-73
end word rotted	-21
end word run	11
end word runs	-13
end word rusted	-56
end word s	-19
end word same	-31
end word sanded	74
end word sash	27
end word saturday	-48
end word says	-36
end word scraped	72
end word screw	29
end word screwed	90
end word screws	66
end word sealed	59
end word seam	41
end word seat	-8
end word see	-14
end word set	-36
end word she	-8
end word she's	34
end word sheet	-62
end word shelf	-78
end word shelves	15
end word shop	-20
end word shot	-47
end word shut	-36
end word shutoff	14
end word shuts	88
end word side	39
end word siding	47
end word sign	-54
end word sill	38
end word sit	-46
end word sits	-49
end word six	-39
end word size	-64
end word skim	63
end word slams	-47
end word slide	-8
end word slider	-68
end word slow	22
end word snapped	6
end word snugged	63
end word so	22
end word socket	-22
end word soffit	-68
end word soft	-54
end word solid	60
end word some	-13
end word spice	-29
end word split	-61
end word spout	-42
end word sprayer	-27
end word spring	-58
end word squeaks	46
end word squirrel	13
end word stairs	-16
end word standing	-28
end word station	-24
end word steel	38
end word step	-42
end word steps	-22
end word still	-101
end word stood	27
end word stop	-18
end word stops	-82
end word store	-8
end word straight	-12
end word straighten	-74
end word strike	15
end word strip	-24
end word stripped	-50
end word stuck	-45
end word stud	26
end word stuffed	-21
end word swap	-65
end word swapped	86
end word sweep	71
end word swelled	-53
end word swings	74
end word switch	-25
end word take	58
end word taped	78
end word tee	-62
end word th	-25
end word that's	35
end word thats	-9
end word the	-31
end word them	20
end word then	-24
end word there's	-41
end word theres	-16
end word they	-26
end word thing	39
end word third	-29
end word thirty	-27
end word this	28
end word those	-72
end word though	-41
end word three	-31
end word threshold	-43
end word through	24
end word thursday	-39
end word tight	104
end word til	-48
end word tile	-24
end word tiles	-17
end word till	-28
end word time	-19
end word to	-48
end word today	33
end word toilet	9
end word tomorrow	-16
end word took	-138
end word top	-35
end word torn	-30
end word touch	-22
end word towel	56
end word track	11
end word trim	-59
end word tripped	26
end word truck	10
end word tub	31
end word tuesday	-36
end word turn	10
end word twas	-23
end word two	-28
end word under	-59
end word unit	-28
end word up	14
end word upstairs	55
end word urn	-7
end word us	-36
end word v	-17
end word vacuum	6
end word valve	45
end word vent	-70
end word vinyl	-68
end word w	24
end word wall	-25
end word want	-47
end word wants	-69
end word was	88
end word wash	-21
end word washer	-19
end word water	16
end word way	-6
end word we	-107
end word weatherstrip	-41
end word wednesday	-61
end word weeping	-13
end word went	-56
end word were	63
end word when	-31
end word where	-23
end word while	38
end word will	-42
end word window	-31
end word wire	-79
end word wires	-38
end word with	49
end word won't	-60
end word wont	39
end word wool	44
end word wrong	-34
end word x	-40
end word you	26
end work before flaw	-81
end work before flaw closed	76
end work before new	-82
end work before work	-55
end work ends flaw	74
end work ends flaw closed	68
end work ends work	54
end work other flaw closed	25
end work other new	-18
end work other work	16
end work other work closed	60
end work same flaw	24
end work same flaw closed	-20
end work same new	-65
end work same work	39
flaw false fixed	-14
flaw false flaw	-15
flaw false head in	6
flaw false head its	10
flaw false head other	-17
flaw false head same	12
flaw false plan	-8
flaw true fixed	52
flaw true flaw	29
flaw true head in	46
flaw true head its	-10
flaw true head other	32
flaw true head same	17
flaw true plan	34
head in	6
head in day	-19
head in days	21
head in done flaw closed	33
head in done work	25
head in done work closed	34
head in fixed flaw	26
head in fixed work closed	-69
head in flaw flaw	66
head in flaw work	-9
head in flaw work closed	-57
head in last	-19
head in next	-15
head in note	83
head in plan flaw	10
head in plan flaw closed	-54
head in plan work closed	-38
head in week	-44
head in yesterday	26
head its	8
head its day	-22
head its days	32
head its done flaw	10
head its done work	-9
head its fixed flaw	15
head its fixed flaw closed	31
head its fixed work closed	11
head its flaw flaw	33
head its flaw flaw closed	-31
head its flaw work	47
head its last	-47
head its next	35
head its note	-56
head its plan flaw	-20
head its plan work	9
head its plan work closed	-22
head its week	56
head its yesterday	-34
head other	-19
head other day	-12
head other days	-28
head other done flaw closed	-31
head other done work	-10
head other done work closed	-17
head other fixed flaw	-18
head other fixed flaw closed	-60
head other fixed work	15
head other fixed work closed	13
head other flaw flaw	-21
head other flaw flaw closed	-15
head other flaw work	-33
head other flaw work closed	-10
head other last	8
head other next	17
head other note	-23
head other plan flaw	8
head other plan work	-6
head other plan work closed	-18
head other week	-52
head other yesterday	-15
head same	14
head same day	5
head same days	-7
head same done flaw	20
head same done flaw closed	-22
head same done work	38
head same done work closed	-78
head same fixed flaw	74
head same fixed flaw closed	14
head same flaw flaw	13
head same flaw flaw closed	-7
head same flaw work	28
head same flaw work closed	-11
head same last	5
head same note	43
head same plan flaw	19
head same plan flaw closed	-25
head same plan work	21
head same plan work closed	10
head same week	45
its all	29
its all done flaw closed	-20
its all done work	14
its all done work closed	-26
its all flaw work closed	22
its all plan flaw	70
its all plan flaw closed	45
its all plan work	23
its all plan work closed	-69
its half	16
its half done flaw	66
its half done flaw closed	-22
its half done work	35
its half fixed flaw	63
its half fixed flaw closed	13
its half fixed work closed	15
its half flaw flaw	-10
its half flaw flaw closed	39
its half flaw work closed	-42
its half plan flaw closed	-49
its half plan work	-22
its half plan work closed	35
its most	47
its most plan flaw	-26
its none	-16
its none done flaw	-21
its none fixed flaw	6
its none fixed flaw closed	-8
its none fixed work	-47
its none flaw flaw	-12
its none flaw flaw closed	-18
its none flaw work	-23
its none flaw work closed	-9
its none plan flaw	8
its none plan work	-18
its none plan work closed	-25
its some	-8
its some done flaw	7
its some done flaw closed	-13
its some done work closed	-66
its some fixed flaw	-18
its some fixed flaw closed	-25
its some fixed work closed	-43
its some flaw flaw	33
its some flaw flaw closed	-34
its some flaw work	-15
its some flaw work closed	-46
its some plan flaw closed	-10
its some plan work	48
its some plan work closed	-42
known all	45
known half	30
known most	73
known none	-35
known some	-19
named all done flaw	36
named all done flaw closed	-22
named all done work	-16
named all done work closed	-24
named all plan flaw	-13
named all plan work closed	-39
named half done flaw closed	-75
named half done work	7
named half done work closed	-50
named half fixed flaw	28
named half fixed flaw closed	41
named half flaw flaw	71
named half flaw flaw closed	20
named half flaw work	25
named half plan flaw	7
named half plan flaw closed	-64
named half plan work	8
named half plan work closed	-40
named most done flaw	51
named most plan flaw	15
named none done flaw	-13
named none done work	-11
named none fixed flaw	-10
named none fixed flaw closed	-11
named none fixed work	-49
named none flaw flaw	6
named none flaw flaw closed	-20
named none flaw work	-28
named none flaw work closed	-9
named none plan work	-21
named none plan work closed	-24
named some done flaw	33
named some done flaw closed	32
named some done work	41
named some done work closed	-19
named some fixed flaw	15
named some fixed flaw closed	-50
named some fixed work closed	-39
named some flaw flaw	-24
named some flaw flaw closed	-38
named some flaw work closed	-74
named some plan flaw	16
named some plan flaw closed	-22
named some plan work	43
named some plan work closed	20
new done rules join	-10
new done rules new	6
new fixed rules join	16
new flaw	23
new flaw rules join	-17
new flaw rules new	25
new plan	-8
new plan rules join	-91
new plan rules new	23
new points true	16
new size 1	-22
new size 2	-23
new size 4	36
no point day	17
no point last	-8
no point next	10
no point note	-13
no point week	18
no point yesterday	-10
none day later	-18
none day no	24
none day now	34
none first a	24
none first bottom	22
none first door	12
none first exam	26
none first front	-35
none first has	-52
none first i	15
none first i'll	20
none first i'm	59
none first in	-41
none first it	33
none first its	-69
none first kitchen	-21
none first laundry	-48
none first mrs	47
none first needs	82
none first no	-81
none first old	32
none first she	37
none first still	-21
none first that	11
none first that's	-19
none first there's	29
none first theres	9
none first they	-35
none first toilet	-56
none first two	14
none first wants	-9
none first we	19
none flaw	-11
none flaw ruled	-29
none flaw weighed	39
none plan	14
none plan weighed	29
none points false	-5
none points true	9
none size long	-35
none size scrap	-17
none size short	25
none verb ask	-65
none verb book	82
none verb bring	94
none verb call	63
none verb change	11
none verb close	34
none verb do	-40
none verb fill	-52
none verb get	-62
none verb go	-55
none verb hang	-45
none verb install	-45
none verb look	68
none verb make	18
none verb move	-79
none verb paint	-45
none verb put	92
none verb replace	-39
none verb run	-98
none verb screw	-35
none verb send	-40
none verb swap	10
none verb take	85
none who other	86
none word a	14
none word about	23
none word after	-56
none word again	-48
none word along	-16
none word already	28
none word an	43
none word are	-22
none word at	-11
none word back	-69
none word barn	-66
none word bath	-83
none word bathroom	-68
none word be	-49
none word bedroom	-61
none word before	-59
none word behind	-79
none word black	15
none word boards	-39
none word booked	96
none word both	-108
none word bottom	-28
none word box	52
none word brace	38
none word brass	-62
none word breaker	-55
none word broke	-99
none word but	103
none word by	16
none word cabinet	-18
none word call	32
none word can	73
none word can't	-32
none word cap	-86
none word carpet	-84
none word ceiling	-26
none word change	19
none word chimney	-28
none word close	8
none word closer	-33
none word closet	12
none word coat	-23
none word cold	-57
none word come	-8
none word comes	-70
none word cord	-56
none word corner	-56
none word could	-45
none word counter	24
none word cover	-80
none word crack	-68
none word cracked	-134
none word cut	-18
none word day	-19
none word dead	10
none word dimmer	-24
none word dishwasher	-64
none word do	-34
none word doesn't	-98
none word doing	59
none word door	-72
none word down	16
none word downspout	7
none word drawer	-90
none word dry	-74
none word edge	-59
none word either	-55
none word em	-48
none word end	-17
none word every	11
none word exam	31
none word fan	58
none word fill	22
none word filter	-7
none word first	35
none word five	41
none word floor	64
none word foot	-23
none word for	-12
none word found	-16
none word fri	-103
none word friday	19
none word from	-26
none word front	-23
none word ft	-104
none word gate	46
none word get	-61
none word gets	-89
none word getting	29
none word gfci	-56
none word glass	127
none word glue	-8
none word go	-62
none word goes	-12
none word gone	-102
none word gonna	7
none word got	-57
none word gotta	-9
none word grout	-35
none word gutter	42
none word guy	37
none word had	78
none word half	-27
none word hall	-18
none word hallway	-92
none word hand	-78
none word handle	9
none word hang	-19
none word hanging	-78
none word has	20
none word hatch	-65
none word have	7
none word he	51
none word he's	53
none word heads	50
none word her	-14
none word here	112
none word high	-75
none word him	84
none word hinge	-76
none word his	100
none word hole	17
none word hook	-41
none word hose	-46
none word hot	-57
none word i	9
none word i'll	-6
none word i'm	48
none word i've	47
none word in	-11
none word inside	-72
none word into	31
none word is	26
none word isn't	11
none word its	-8
none word jumps	-42
none word just	-7
none word kitchen	-90
none word last	-23
none word latch	-65
none word laundry	22
none word leave	70
none word left	-23
none word light	6
none word like	16
none word lobby	-11
none word lock	17
none word long	-70
none word look	68
none word loose	-44
none word me	52
none word missing	-71
none word mixer	82
none word mon	-72
none word monday	-24
none word more	39
none word morning	-75
none word mrs	18
none word my	37
none word need	56
none word new	21
none word north	-65
none word not	79
none word now	-91
none word of	-23
none word off	-56
none word old	96
none word on	-24
none word once	6
none word one	-18
none word only	-13
none word open	-61
none word out	-50
none word outlet	-48
none word over	-23
none word owner	30
none word paint	-21
none word painted	-39
none word panel	53
none word pantry	-55
none word piece	23
none word plate	-86
none word porch	-47
none word pull	-70
none word put	52
none word quarter	42
none word rail	-90
none word reach	-42
none word replace	-73
none word reset	6
none word restroom	-60
none word rocks	-54
none word room	-40
none word room's	-11
none word rotted	-45
none word round	-63
none word run	-42
none word rusted	-40
none word same	-21
none word sash	-79
none word says	37
none word screw	-86
none word screws	-38
none word second	5
none word see	43
none word she	24
none word shop	54
none word short	38
none word shot	-75
none word side	-85
none word sill	92
none word sink	-30
none word sits	-90
none word six	46
none word skim	-86
none word slams	-73
none word slide	34
none word slow	13
none word smells	129
none word snapped	-53
none word so	-23
none word socket	-81
none word soft	-49
none word split	-17
none word spring	-66
none word stairs	25
none word station	-73
none word step	36
none word still	29
none word store	24
none word stove	42
none word strip	-51
none word swap	10
none word sweep	-20
none word switch	-72
none word take	-25
none word th	-68
none word that	36
none word that's	27
none word thats	89
none word the	-9
none word them	64
none word then	24
none word there	9
none word there's	-16
none word theres	-27
none word they	28
none word thing	-24
none word third	26
none word this	-34
none word those	-25
none word though	-51
none word three	13
none word threshold	-52
none word through	-64
none word thursday	30
none word til	18
none word tile	-26
none word till	-62
none word time	-44
none word to	-59
none word today	-25
none word toilet	-69
none word tomorrow	-56
none word too	39
none word took	68
none word top	-59
none word torn	43
none word track	-46
none word trim	-97
none word tub	15
none word tuesday	29
none word two	55
none word under	15
none word unit	-51
none word up	-13
none word us	-34
none word valve	-18
none word wall	12
none word want	-9
none word wants	-46
none word was	58
none word way	-83
none word we	8
none word we're	124
none word well	12
none word when	-10
none word where	-57
none word whole	-8
none word will	36
none word window	8
none word with	20
none word won't	39
none word wrong	84
none word x	69
none word you	-53
pair done flaw	12
pair done flaw closed	-10
pair done work	9
pair done work closed	-21
pair fixed flaw	12
pair fixed flaw closed	-19
pair fixed work closed	-13
pair flaw flaw closed	-17
pair flaw work	-11
pair flaw work closed	-21
pair plan flaw	8
pair plan flaw closed	-13
pair plan work closed	-18
places clash	-26
points day done flaw	-6
points day done flaw closed	-44
points day done work	-52
points day done work closed	14
points day fixed flaw	-30
points day fixed flaw closed	-6
points day fixed work	-10
points day fixed work closed	-25
points day flaw flaw closed	-15
points day flaw work	-15
points day flaw work closed	-15
points day plan flaw	-42
points day plan flaw closed	-19
points day plan work	-15
points day plan work closed	-15
points day things 0	-36
points day things 1	-31
points day things 2	44
points days done flaw	-24
points days done flaw closed	-71
points days done work	20
points days done work closed	-34
points days fixed flaw	71
points days fixed flaw closed	23
points days fixed work	-15
points days fixed work closed	25
points days flaw flaw	-10
points days flaw flaw closed	-5
points days flaw work	-14
points days flaw work closed	-11
points days plan flaw	8
points days plan flaw closed	-30
points days plan work	14
points days plan work closed	19
points days things 0	-9
points days things 1	-13
points days things 2	8
points last done flaw	7
points last flaw flaw	-75
points last flaw flaw closed	-15
points last flaw work closed	-25
points last plan flaw	39
points last plan flaw closed	5
points last plan work closed	11
points last things 0	11
points last things 1	14
points last things 2	-72
points last things 3	31
points next done flaw	-27
points next done flaw closed	9
points next done work closed	55
points next fixed flaw	-54
points next fixed flaw closed	47
points next fixed work closed	14
points next flaw flaw	-12
points next flaw flaw closed	-66
points next flaw work	38
points next flaw work closed	27
points next plan flaw closed	7
points next plan work	45
points next plan work closed	41
points next things 0	37
points next things 1	25
points next things 3	-14
points next things 4	-22
points note done flaw	-28
points note done flaw closed	24
points note done work	-22
points note done work closed	-18
points note fixed work closed	43
points note flaw flaw	-13
points note flaw flaw closed	-12
points note flaw work closed	20
points note plan flaw	-45
points note plan flaw closed	-9
points note plan work	9
points note plan work closed	13
points note things 0	-12
points note things 2	14
points week done flaw closed	-52
points week flaw flaw	63
points week flaw flaw closed	-6
points week plan flaw	16
points week plan flaw closed	-13
points week plan work closed	-21
points week things 0	-39
points week things 1	-50
points yesterday done flaw	35
points yesterday done flaw closed	-40
points yesterday done work	28
points yesterday done work closed	-30
points yesterday fixed flaw	-16
points yesterday fixed flaw closed	-48
points yesterday fixed work	-54
points yesterday fixed work closed	-43
points yesterday flaw flaw	54
points yesterday flaw flaw closed	-14
points yesterday flaw work	-11
points yesterday flaw work closed	-24
points yesterday plan flaw	-23
points yesterday plan flaw closed	-28
points yesterday plan work	-47
points yesterday plan work closed	-7
points yesterday things 0	-31
points yesterday things 1	25
points yesterday things 2	20
room alike	-60
room alike head in	-51
room alike head other	-27
room other	-49
room other head in	-36
room other head its	-83
room other head other	-31
room other head same	-32
room same	13
room same head in	-5
room same head its	24
room same head other	10
room same head same	10
room unsaid	9
room unsaid head in	33
room unsaid head its	31
room unsaid head other	-16
room unsaid head same	25
rules new	-10
rules new done flaw	7
rules new done flaw closed	-8
rules new done work closed	-14
rules new fixed flaw	14
rules new fixed work closed	-30
rules new flaw flaw closed	-16
rules new flaw work	-25
rules new flaw work closed	-23
rules new plan flaw	18
rules new plan flaw closed	-12
rules new plan work closed	-19
rules other	-25
rules other done flaw closed	-14
rules other done work	47
rules other done work closed	-40
rules other fixed flaw	-66
rules other fixed flaw closed	-41
rules other fixed work closed	28
rules other flaw flaw	-18
rules other flaw flaw closed	-14
rules other flaw work	-16
rules other flaw work closed	-6
rules other plan flaw	-25
rules other plan flaw closed	-16
rules other plan work	26
rules other plan work closed	-13
rules same	16
rules same done flaw	19
rules same done work	-6
rules same fixed flaw	47
rules same flaw flaw	12
rules same flaw work	76
things 0	-32
things 0 day	-26
things 0 days	-6
things 0 last	-9
things 0 next	-11
things 0 note	-21
things 0 week	-65
things 0 yesterday	-27
things 1 days	-14
things 1 last	-11
things 1 next	34
things 1 note	-7
things 1 week	-8
things 2	34
things 2 day	7
things 2 days	16
things 2 last	-17
things 2 next	28
things 2 note	35
things 2 week	41
things 2 yesterday	29
things 3	17
things 3 day	9
things 3 last	34
things 3 next	-7
things 3 yesterday	-47
things 4	51
things 4 next	36
when day	-15
when day done flaw	23
when day done flaw closed	-15
when day done work	-26
when day done work closed	-27
when day fixed flaw	-6
when day fixed flaw closed	-6
when day fixed work	-10
when day fixed work closed	-25
when day flaw flaw	26
when day flaw flaw closed	-33
when day flaw work	-33
when day flaw work closed	-22
when day plan flaw	-24
when day plan work	-41
when day plan work closed	-18
when days done flaw	27
when days done flaw closed	-12
when days done work	16
when days done work closed	-32
when days fixed flaw	58
when days fixed flaw closed	-27
when days fixed work	-16
when days fixed work closed	22
when days flaw flaw	-9
when days flaw flaw closed	-23
when days flaw work	30
when days flaw work closed	-48
when days plan flaw	-10
when days plan flaw closed	-63
when days plan work	51
when days plan work closed	-26
when last done flaw	-27
when last done flaw closed	40
when last done work	7
when last flaw flaw	-34
when last flaw flaw closed	-22
when last flaw work	-19
when last flaw work closed	-25
when last plan flaw	45
when last plan flaw closed	-10
when last plan work	-52
when last plan work closed	11
when next	13
when next done flaw	-48
when next done work	-38
when next done work closed	57
when next fixed flaw	-97
when next fixed flaw closed	52
when next fixed work	21
when next fixed work closed	14
when next flaw flaw	-11
when next flaw flaw closed	26
when next flaw work	25
when next flaw work closed	33
when next plan flaw	29
when next plan flaw closed	58
when next plan work	6
when next plan work closed	-38
when note	-7
when note done flaw	-39
when note done work	-23
when note done work closed	9
when note fixed flaw	-12
when note fixed work closed	43
when note flaw flaw	-80
when note flaw flaw closed	35
when note flaw work	-6
when note flaw work closed	20
when note plan flaw	-30
when note plan flaw closed	-18
when note plan work closed	33
when week	-5
when week done flaw	67
when week done flaw closed	18
when week done work	-17
when week done work closed	-37
when week flaw flaw closed	-32
when week flaw work closed	-27
when week plan flaw	41
when week plan flaw closed	-48
when week plan work closed	-43
when yesterday	-13
when yesterday done flaw	19
when yesterday done flaw closed	-45
when yesterday done work	45
when yesterday done work closed	-58
when yesterday fixed flaw closed	-64
when yesterday fixed work	16
when yesterday fixed work closed	-63
when yesterday flaw flaw	42
when yesterday flaw flaw closed	-39
when yesterday flaw work	-27
when yesterday flaw work closed	-33
when yesterday plan flaw	-28
when yesterday plan flaw closed	-10
when yesterday plan work closed	-14
work alike done flaw	64
work alike done flaw closed	-72
work alike done work	30
work alike done work closed	9
work alike head in	19
work alike head its	-56
work alike head other	30
work alike head same	-38
work alike plan flaw	-49
work alike plan flaw closed	-29
work alike plan work	-51
work alike plan work closed	12
work before done flaw closed	-10
work before done work	-61
work before done work closed	-49
work before head in	-20
work before head its	-47
work before head other	-8
work before head same	24
work before plan flaw closed	6
work before plan work	37
work before plan work closed	-15
work ends done flaw	37
work ends done flaw closed	32
work ends done work	15
work ends head other	-13
work ends head same	92
work ends plan flaw	63
work ends plan flaw closed	-80
work ends plan work closed	-12
work none fixed flaw	12
work none fixed flaw closed	-19
work none fixed work closed	-13
work none flaw flaw closed	-17
work none flaw work	-11
work none flaw work closed	-21
work none head its	31
work none head other	-30
work none head same	27
work other done flaw closed	-15
work other done work	-19
work other done work closed	-21
work other head in	9
work other head other	-19
work other plan flaw	11
work other plan work closed	-19
work same done flaw	24
work same done flaw closed	70
work same done work	79
work same head in	14
work same head its	74
work same head other	57
work same head same	-38
work same plan flaw	-44
`;
