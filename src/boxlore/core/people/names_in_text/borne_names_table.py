"""Names of families, places and books, and the famous, folded: names 0.3.0, Faker 40.63.0, GeoNames, WordNet 3.0, @faker-js/faker 10.6.0; made by make_borne_names.py."""

FAMILIES = """
0aalto 5nen 4s 2nei 2rden 3ons 3ts 2s 3a 3en 3mae 2vik 1babei 3d 4ie 3rca 3scal 3tantuono 4e 2ba 4gnale 4s 5li 5ov
7a 5zadə 4te 3ott 2dallah 3i 3o 3ullah 7oglu 7yeva 7zadə 2ele 4l 5a 6n 4s 3rcrombie 4g 4hart 4nathy 5ethy 3yta 2icic
2les 2ney 2ola 4ina 6s 4s 2rahamova 7s 8en 8on 8son 4mov 7ic 6witz 5s 6on 4ssart 3ego 4u 3on 2sher 4ire 3ton 2urto
1ccardo 2edo 3rbi 4o 3vedo 5s 2haorainn 4rya 3berger 9ova 3enbach 4son 3ison 3leitner 2ker 5l 5man 8n 5son 3les 5y
4in 3man 2ord 3sta 2ree 2ton 2uff 3na 1dadia 3ir 3mczyk 4e 5c 6ova 5k 5s 4ova 4s 5ki 5on 3n 3sme 2cock 4x 2dington
4s 2elaar 4man 4son 3n 3r 4holt 2ger 2inolfi 2kins 6on 4son 5son 2ler 2olfsson 4ph 3rno 2riaansen 5ensdr 8e 9n 8sens
3ovic 3yaens 2zijevic 1ebi 3y 2do 2ije 2rts 5z 1fanasjev 1gan 3oglu 3r 4wal 3yeva 3zzi 2ee 3r 2garwal 2has 2in 2nesi
4w 2ostinelli 7i 5o 3vic 2rawal 3en 2uado 4yo 3do 3ero 3iar 4la 6r 5era 5o 4naldo 4rre 3llo 3on 3rto 3sti 6n 1hart
2earn 6e 3rn 5e 2l 3berg 3ers 3gren 3in 3qvist 3strom 3uwalia 2madi 2n 3er 2o 3kas 3la 3nen 2rens 2uja 3mada 1ichele
4holzer 4inger 2ello 2gner 2ken 5s 3in 2lin 2nmneach 3sboro 4worth 2raksinen 3meas 2tken 1jello 1kbar 2elis 3r 4lund
4man 4s 3sson 2htar 2in 4s 2macic 2ridge 1laimo 3m 4eda 4o 3nen 4iz 4ko 3rcon 3s 3talo 4orre 2ba 4nese 4rado 5ran
4ugh 3ee 4r 5di 5o 6la 5s 5tini 6s 7on 6y 3oni 4rnoz 3recht 4ight 5tton 4o 3u 4querque 4ry 2cala 5de 4ntar 8a 4raz
4zar 3ocer 5k 4lea 4rn 4tt 2daco 4na 4y 3er 5ete 5son 3obrandi 3rich 5dge 2egre 5ia 3jandre 4os 3ksandrov 5eev 3man
6y 3rs 3shire 4si 3xandersson 7re 2fano 4ro 3ieri 3onsi 4rd 3redsson 2garin 3er 2i 3aga 3cea 3ff 3ghieri 2kire 3ovic
3sne 5is 2lain 5re 4rd 4s 3bright 6tton 3dredge 3ee 4man 4n 5de 7r 7s 4r 5by 4yne 3good 3igood 4k 4ng 4s 5on 3man
4on 3oway 3red 3shouse 4op 4up 3ums 2m 3agia 5ro 5uer 4nsa 5za 7r 4raz 4zan 3eida 4ndarez 3gren 3odovar 4n 5acid 5d
5te 3qvist 2oisio 3ngi 4so 4zi 5o 2paidis 3ert 3hin 2sina 3op 3ton 3up 2t 3amirano 3era 3hoff 3ieri 4zer 3man 6n 3om
2varado 5do 5enga 6s 6z 5o 3e 4ar 4rez 5son 4s 4y 3is 3ord 1mador 3ker 3ldi 4rada 3n 4n 4ovic 3ral 3t 4o 3ya 2bler
3rasas 4iz 4osino 5zic 3urgey 2edee 3n 4dola 4t 3rson 3s 3y 3zcua 4quita 2ick 4o 3don 4zic 3go 3s 2maniti 5n 3erman
3on 5s 2o 3n 3r 4e 5s 4im 4os 6o 2puero 2rein 2undsen 6on 1nand 3rqizi 3stasi 3ya 2cheta 4ondo 3iaux 2derberg 5l
5sen 6on 6son 5ton 4s 3ing 5o 3ra 5de 5sek 6ik 8ova 6ova 4easen 7sen 8on 5ev 5n 5otti 6zzi 5sen 5u 5ws 4ies 5jasevic
6evic 4zejewski 3ujar 2g 3eli 5l 4rer 3iolello 3lada 4in 3uiano 5llara 5ssola 5ta 4lo 2ichini 4ic 3ssimov 2jos 2kney
2nis 3sboro 3us 2sari 3boro 3ell 4ms 3ley 3on 3pach 3tett 2tal 5ova 3elami 3ikainen 3le 3olkovic 4nacci 5elli 8o
6tti 5ic 6ni 6oni 5ov 5sen 6son 5ucci 3tila 4onen 3unes 6z 2war 2zalone 1oki 1pablaza 3recida 4icio 2el 2gar 2ine
4is 2odaca 3nte 3rti 2pel 5l 5man 4rson 3lebaum 6y 5gate 5ton 5white 4in 6g 2site 5is 2te 1quilar 4no 4rre 1racena
3gao 4on 6es 3iza 3kaki 3mbula 6ru 3na 4cibia 4da 4eda 4go 5uiz 4t 3ujo 3vena 3ya 3zli 2bogast 4ur 3uckle 2cand 3e
4neaux 4o 3hambault 4er 5y 4uleta 3iniega 3o 4s 3uri 2d 3elean 3ito 3oin 2echiga 3hart 3llano 3nd 5s 5t 4s 4t 3valo
2gan 3entero 6i 6o 3o 3uelles 7o 5ta 4rio 2ias 5so 3ens 3fcanov 3no 3osto 3spe 3za 4mendi 2jona 2ledge 2mani 4s
3bruster 3ellini 4ndariz 5gol 5ta 6rout 4r 3ijo 4stead 4tage 3our 3stead 5rong 3wood 2naiz 4l 4u 5d 3er 4sen 5on 4tt
6e 3one 4tt 4uld 3wine 2o 3ca 4ha 5o 3nson 5son 3ra 3s 2p 3in 2rant 5z 3edondo 4gui 7n 4llano 4ola 4y 3iaga 7da 4bas
4eta 4ngton 4ola 3o 4wood 3uda 2senault 2teaga 4r 5burn 3hurs 3iaga 4gas 3man 3ner 3rip 3z 2u 3la 2vidson 6son 4n
4so 4zu 2wood 2y 3a 2zola 3ulu 1saro 3y 2berg 5ry 3ury 2cencio 3hauer 4man 2encio 4jo 4sio 2hbaugh 4rook 4urn 4y
3craft 5oft 3e 3ford 3ley 4ock 3man 4ore 3ton 3urst 3worth 2ikainen 2kew 3ins 2lanova 3und 2mundo 4s 2p 3lund 3rucci
2selin 2tete 3le 3orga 3rom 3udillo 1takisioglu 2chison 4ley 2en 4cio 3r 2herton 4y 2ienza 2kin 5s 6on 4son 2las
2nip 2taway 3ebery 4rberry 3wood 2wal 4ter 3ell 3ood 2zler 1ube 4rt 3in 3ry 3uchon 2clair 3oin 2det 5te 2er 4bach
2ger 3ustsson 2inger 2ld 3enti 3t 4man 2man 5n 3iller 2n 3ina 5s 2rand 3ora 2s 3t 4ermuhle 4in 4ria 2ten 3hement 3io
3rey 4y 2vinen 2xier 2yeung 2zenne 3ina 5s 1vallone 4os 3ns 4t 2elar 3ndano 4t 3ra 4ett 4ill 4y 3y 2ila 4es 4la 3na
3tia 2ogadro 3tina 6s 1wad 1xelson 5son 2ford 2tell 2undlu 5ov 7a 5zadə 1yala 2bar 2cock 2er 4s 2llon 3ward 2on 3tte
2res 2uso 1zar 2cona 2evedo 2nar 2ocar 3rin 2ure 0baade 2banli 4ti 5o 4yeva 3b 4itt 4o 3cock 3er 4y 3ic 5h 4n 5eau
8x 3jak 6ova 3ka 3u 2ca 4eir 5r 4k 3chus 4us 3h 4and 4elder 5r 4inger 4ler 4man 7n 4us 3ic 3kes 4lund 4man 4strom
4us 3oba 4si 4te 2dal 4mi 4n 3e 4l 4n 4r 3gett 4ley 3ia 4lla 6o 3oer 4glio 2ehr 3le 3na 3r 4t 3ten 6s 3yens 3z 4a
2gby 3gett 4io 4s 3irov 7a 3ley 4ioni 3well 2h 3amonde 9s 4rli 3e 4na 3l 3na 4o 5va 3on 3r 4i 2ier 3l 4es 5y 4is
4largeon 5ie 5y 4y 3n 4bridge 4e 5s 4s 4ter 3r 4d 4ead 3sceir 4den 4ley 3ty 3ze 2jaj 4monti 4n 4rdi 3c 3wa 2k 3er
3ixanov 3ke 5n 5r 3os 3sa 4hi 2l 3a 4guer 4krishnan 4n 4s 5ubramanian 4tinac 4y 4z 5ova 5s 3bi 4o 4uena 3ch 4om
3dauf 4eras 6rama 4ick 4ree 5idge 4ucci 4win 3entine 4y 3four 3i 4c 4ncic 5t 3jak 3ke 3la 5nce 6tyne 5rd 4enger
6tine 5ster 9os 5w 4ing 7er 4ou 4weg 3mat 4er 3ode 5is 4g 5h 4telli 3samo 4er 3tes 4imore 5ns 4z 5ell 3zer 2na 4ch
4s 5ova 3croft 3da 4ello 5ville 3e 4rjee 4s 4y 3field 3gert 4s 3h 3icevic 4k 3khead 4o 4ston 3n 4erman 4ing 5ster
4on 3o 4s 4va 6c 3sal 3ta 4on 3uelos 3ville 2ptista 2quero 2rac 5ca 4d 4hona 4jas 4l 4n 5ka 6ova 5ov 7a 6wski 4tta
3ba 5gallo 5rigo 4e 5au 5e 5r 6a 6ini 6o 5y 4ic 5er 7i 6ux 5r 4ora 5sa 5ur 5za 4u 3caccia 4ella 6o 5na 7s 4ia 4lay
4o 5mb 4us 3d 4en 4in 4sley 4well 3efield 5oot 4la 4nts 4r 4se 5i 6c 3field 3ga 5s 4er 4o 3ham 4orst 3ia 4c 5evic 4l
5e 5laro 6on 4sic 3ker 4holz 4ley 4man 4ovic 4sdale 3lett 4ow 6e 3man 4ore 3na 5ba 6y 5rd 4er 5tt 7e 5ville 4hardt
7t 5ill 5ouse 4um 4well 3offio 4id 4k 5ova 4zzi 3r 4a 5cco 5gan 5l 5nco 5s 5tt 5za 4e 5da 5iro 5na 6tine 5ra 7s 5t
6o 6t 7e 4ia 5ck 5e 6ntes 9z 8os 5ga 5nger 7ton 5o 6s 4nette 4on 5s 6o 5w 6s 3santi 4tow 3t 4a 4ee 5l 6l 6s 6t 5r 4h
5el 7emy 4l 5ett 6y 5ing 5ow 4o 5li 6ome 5n 5s 6ik 8ova 6ova 5va 6ic 8ova 5w 4ram 4sch 4z 3un 4sic 3wick 3y 3zini 2s
3a 4donna 4k 4ldua 3com 4unan 3el 3ham 5w 4ir 3inger 3kerville 5tt 4in 4o 5va 3ler 3nec 4ight 3o 4va 3quez 3sett
4ham 4i 4ler 4o 3t 4arache 4iaanse 6ense 6s 5da 5en 5n 3u 2taglia 4lla 3chelar 7der 7or 3e 4man 4s 4y 3ie 4sta 6e
3lle 3or 3ra 5c 4es 4nek 3son 3t 4a 5glia 4elli 5n 4ig 5n 5sta 7e 7i 4on 4s 4y 3y 3z 2uch 4om 3der 4oin 5ux 4ry 4uin
3er 3gh 5er 5man 5n 3m 4an 6n 4bach 4eister 5r 4gardner 7t 8en 8ner 3r 3sch 4tert 3tista 3wens 3za 2va 4ud 3e 4r 2wa
2x 3ley 3ter 2yer 5l 3les 6s 4is 6s 4or 3ne 5s 3o 4n 5a 3ramov 3singer 2zan 3e 4more 3ile 4n 3jak 3zi 1eacham 5um
3dles 3gle 3hm 3ird 3key 3l 4e 5r 4l 4s 3man 4er 4on 3ne 3rce 4den 5sley 3sley 4on 4ty 3taigh 4on 4tie 5y 4y 3ubien
4champ 6emin 7sne 4det 7te 5in 5oin 5ry 4ford 7t 4jean 4lieu 4mont 4pre 4regard 4vais 3ver 6s 3zley 2bic 2ccaria
4heria 3erra 3h 4ard 4er 4t 5el 5ol 7d 3k 4er 6s 5tt 4ford 4ham 4ius 4les 6y 4man 7n 4ner 4stead 4with 3nel 3raft
3ton 2dard 3ell 3ford 3good 3i 3nar 6ik 8ova 6ova 6z 3olla 4ya 3well 2ebe 3cham 5er 4kman 3de 4le 3gle 3hler 3kman
4s 3ler 3m 4an 3ne 3rman 4naert 5ink 4y 3sley 4on 3ts 2ffa 4ort 2gay 5e 3gan 4s 3ley 3onja 3ue 5lin 4in 2han 3l 4er
4ing 3m 3n 4e 4ke 3r 4ends 7t 6s 2ier 3jring 3l 4er 3reach 4n 5e 3ssel 2jarano 2ka 4ert 3bergen 2lair 4nd 5ger 3cher
3da 4en 3etic 4w 3ford 3grave 3in 4sle 4veau 3jajev 3k 4nap 3lamy 5nger 6toni 5rd 4emans 5r 5tini 5w 4i 5do 5nger 6i
6o 5s 5veau 4man 4o 5cchio 5my 5ws 4ucci 3mans 5r 4ont 7e 3osevic 4te 4v 3pere 3ser 3ton 4ran 4z 3ue 3ville 5n 3z
2mbo 4ry 3is 2na 4lly 4rd 4vent 8e 5ides 8z 3bow 3cic 4omo 3da 4el 5r 3edetti 4fiel 8d 4s 5ova 4t 4vides 3fer 4ield
4ord 3ge 4tson 6son 3ham 3ic 4gni 4tes 6z 5o 3ner 5t 6t 7e 4ing 7er 7field 7ton 3o 4it 4va 3sen 4on 3thin 4ley 5y
4on 4z 3us 5ka 6ova 5ova 5si 3z 2ourgeois 2quette 2ra 4kovic 4n 5ek 5kova 5ova 4rd 6i 3berat 3chem 5told 3ends 7e
5gario 6uer 5s 4s 5ford 3gan 6t 4dahl 4e 5n 5r 6on 6son 5son 5vin 4gren 4h 5mans 4in 4kvist 4lund 4man 7n 4oglio
4quist 5vist 4sten 6rand 7om 4vall 3inger 3k 4ahn 4e 5ley 5y 4ley 4man 4owitz 3langa 4usconi 3man 4ejo 4ingham 8im
4udes 7z 3naards 5d 5l 5rdi 8c 8ni 7ova 5sconi 5t 4er 5tti 5y 4hardt 4ier 5ng 6i 4olak 8ova 4s 5tein 4tsen 6son 3re
4ian 5er 5os 4ocal 4yhill 5man 3sani 4cheid 3tels 7en 5mes 4helot 5iaume 5o 4ilsson 5n 4oli 6ucci 5ni 5sa 4ran 7d
4sch 3ube 4men 3voets 3wick 3zina 6s 2sancon 4w 3encon 3hears 3nard 3se 5r 5tte 5y 4ler 4on 3ter 2tances 6ourt 3hea
5l 4une 3schart 3tencourt 6dorff 4in 5s 4on 6i 4s 3z 2uchat 3ret 4ret 3s 2van 3c 3er 5idge 5s 3ilacqua 5l 4ns 4s
2wley 2y 3ens 4r 5s 2zak 5ova 4nson 3emer 3ic 3jak 1hagat 3ilis 3kta 3lla 3ndari 3rdwaj 4gava 3sin 3t 4ia 4nagar 4t
5acharyya 5i 3vsar 1iagi 5otti 3nchi 7ni 5o 2bb 4ins 4s 4y 3eau 3i 3ler 2cak 4nic 3e 4k 5ova 3hler 3kel 5rstaff
4ford 4ham 4ley 4nell 2ddle 3well 2eber 3dermann 3hl 3ker 3lecki 4ik 6ova 3n 3r 4i 4man 7n 4straten 3sty 2gby 3elow
3gen 5rs 7taff 4ins 4s 3ham 3ler 5y 3nami 5rdi 3ot 2jelic 3lsma 2lbao 4o 4rey 3derback 3ek 5ova 3ger 3ka 4o 5va 3ler
4ings 8ley 7ton 5ot 5ps 4man 4ung 5ps 3odeau 3ski 3yeu 2naghi 3ette 3ford 3g 4aman 4ham 4man 4ula 3ion 3kley 3ner 4s
3tner 4z 2ondi 5o 2r 3ch 5field 3dsall 5ell 5ong 4well 3ge 3k 4eland 4holz 4ic 4land 3mingham 3nbaum 4ey 3o 4n 3t
4ic 3zniece 7ks 2sbee 3choff 4oe 3e 3h 4ell 3sell 5tt 7e 4on 6ette 6nette 3was 2tner 3schnau 3ting 7er 4le 4ner
2vens 4r 3ins 3ona 2wer 2xby 3io 3ler 2zjak 3zell 1jelis 2ork 5lund 5man 1laak 3ckburn 5er 5ford 5ledge 5man 6er 6on
7re 5shear 7ire 6tock 8n 9e 5welder 8l 6ood 3des 3gaic 4g 3ha 4o 5va 3in 4r 4s 5dell 5e 3ke 5ley 6y 5man 6ore 5ney
5r 5s 6lee 5y 4ley 4ney 3lock 3nc 5a 5hard 6et 8te 5o 4dford 5ing 5on 4e 5s 5y 4ford 4kenship 5inship 5s 4sett 4ton
3sco 4er 4i 5ngame 4ko 4s 5ingame 3tnik 4t 3u 4ensteiner 4ser 4velt 3y 4lock 3zej 6ova 5k 5r 5vic 4ic 6ko 4kova
4quez 2ea 4u 3cha 3dsoe 3es 3ich 4jenberg 3vins 3wanus 4ett 2ick 3n 3ss 3xt 2och 5er 4ker 3dgett 3emendaal 3hm
3kland 3m 4berg 4gren 4kvist 4maert 5e 4quist 5vist 3ndeel 6l 5iau 4k 3odworth 4mberg 5er 5field 5quist 3se 4s 5er
3ugh 4in 4nt 3wick 2ubaugh 3ford 3hm 3m 4berg 4e 5l 5nthal 5r 2y 3the 1oada 3ga 3n 3rdman 3se 3tman 4ner 4right
4wright 2badilla 4l 4n 5ovic 3b 4itt 3er 3o 3ula 5ova 2canegra 3ca 5ccio 4herini 4ioni 3elli 3hud 3k 4man 2daicin
4rt 3daugh 4en 4ie 4y 3en 5hamer 3hlaeir 7r 3ie 4ford 4n 5e 3kin 3nar 4er 3oni 3son 2e 3chat 4kx 3ding 3hm 5e 6r
3lter 3r 4ger 4ner 4s 3s 4e 5r 3tet 4tcher 3zio 2gadi 4ert 7s 4n 4r 5d 5t 3danov 3en 4r 5t 3gan 4ess 4s 3le 3nar 4er
3ovic 3ue 2han 5an 5nan 6on 5on 3l 4ander 4er 4in 3m 4an 3n 4bach 4er 6t 4sack 3on 3r 4er 2iardo 3ce 4hat 3llat 4y
3ssonneault 4vert 3tani 4o 3vin 3x 2janic 3orquez 2kenkamp 2lan 5d 6er 5os 3cevic 3den 4ing 4s 4t 4u 5c 3en 4r 4s 4y
3ger 3ick 4n 5g 6er 4var 3jkovac 3kesteijn 3l 4en 5r 5s 4iger 5n 6g 7er 4man 3nbach 3ogna 3te 4on 4z 3yard 3zmann
2man 4r 3bard 4erger 4ieri 3piani 2na 4nno 4parte 4r 4tti 4ventura 3bach 3darenko 4i 4ra 5ova 4umier 5rant 4y 3elli
4nfant 4r 4t 5ti 4y 3figlio 3giorno 3ham 3iface 4lla 4n 5o 3k 3neau 5ll 5r 5tt 7e 5y 4in 3o 4lis 4mo 3te 4rager 3vin
6i 2oden 3e 3gaerts 3her 3kman 4out 3mer 3ne 5n 3s 4e 3thby 5e 3zer 2pp 2ra 4h 4k 3ba 4ely 3chardt 5ers 7t 3de 5aux
5lon 5n 5rs 4ner 3ek 5ova 4l 5and 5li 4n 3g 4en 5r 5s 4hese 4ia 4man 4strom 3ik 5ova 4sova 5sov 3ja 4esson 3k
4holder 4o 5va 5wski 3land 3man 6n 3ne 5r 4stein 3ojevic 4s 5ak 4vsky 5y 4wski 3quez 3ra 5ni 5s 4ego 5ll 7i 5mans
5ro 4omeo 6ini 5ni 5r 3sellino 4iere 4t 3ton 4z 3um 4nda 3zomi 2s 3ak 5ova 4rge 3ch 4o 3e 4r 3hears 3ilj 4o 3ka 3ley
3man 6s 3nak 6ova 4jak 7ovic 3que 3serman 4hard 4i 4uyt 3t 4ic 6k 4on 4rom 6v 4wick 3urgi 3well 4orth 2telho 5la 6o
3ham 4well 3ic 5a 3kin 3sford 3t 4a 5ro 4eron 4icelli 5gliero 4omley 6s 5rff 4s 2u 3chard 6t 5er 6t 6z 4k 5aert
4sein 3dart 4ewijns 4reau 8x 3ffard 3ghner 5ton 3huizen 3ie 4llon 3knight 3langer 5y 4din 4ey 4ton 4ware 3rassa
4beau 4deau 5on 4g 5ault 5eois 6t 5oin 5uignon 4ke 4land 4n 5e 4quard 6e 6in 3squet 3thoorn 4in 4on 4te 4well 3vet
4ier 3whuisen 2va 3e 4e 4t 3y 2water 3den 3e 4n 5s 4rman 5sox 4s 3ie 3ker 3lby 4er 5y 4in 6g 3man 3n 4e 3ser 3yer
2yce 3d 4en 4ston 3er 5s 4s 4tt 6e 3kin 6s 3lan 6d 4e 5s 3nton 3se 5n 4ter 3ter 2zanic 5ovic 4rth 3ek 4man 3ic 5evic
5kovic 4kovic 1raaten 5z 3bham 3camonte 4co 4ero 5well 5y 4k 5e 6n 6tt 5in 5man 4un 4y 3dberry 5urn 7y 4den 5ock 5y
4en 4field 5ord 4ham 4ic 4ley 4shaw 6er 4t 4way 5ell 4y 3em 3fford 3gadin 5glia 4don 4g 5s 3hier 4mbhatt 3inard 5erd
4thwaite 3jkovic 3kebill 3ley 4ic 3man 6te 4billa 5lett 4e 4lett 4mer 3nam 5n 5ola 4caccio 5iforte 5o 4denburg 9rger
5ic 5l 5ner 5on 6w 5statter 7etter 5t 6ner 4ham 4kovic 4n 5an 5elly 6n 5igan 5on 5strom 5um 4scome 6um 5on 5tetter
4tley 5ner 5on 4um 3r 3se 5l 4field 4hear 8s 6r 4sard 5ell 6ur 5field 5il 4well 3tcher 4hwaite 4t 5en 5on 3ud 4er
4lt 4n 5stein 3vo 3wley 4n 5er 3y 4ton 3zeal 5ll 6ton 4iel 6r 2cko 2easail 4thnach 4ult 5x 4zeale 3ckenridge 3e 4ce
4den 5ing 5love 4n 4se 3gar 3heny 4m 5er 3it 3kke 3land 3mer 4ner 3ndel 5le 4na 6n 5eman 6n 6r 3scia 7ni 4e 4hears
4lin 4nahan 5ehan 4se 5ler 3ton 4t 4z 3uer 4gelensis 7mans 4nig 3w 4er 4ington 4ster 4ton 3y 3zina 6ova 4jan 4nik
2iain 4nd 3ccialdi 4eno 4hard 5ese 4ker 6y 5house 5ley 5ner 3dgeforth 6man 6r 7s 6water 4son 4well 3ede 5is 4mer 4n
4re 4se 4vingh 3gance 6ti 4gs 4ham 5ton 4man 3ley 4l 3mer 4mer 3ndley 4egar 5r 4ker 7hoff 5ley 5man 8n 4n 4son 4ton
3ody 4nes 3sco 6e 4ee 5no 4lane 4sette 5on 4ter 5ol 6w 3to 4tain 5en 5ingham 5on 4vec 3utean 3xey 3zee 5ndine 2las
3ek 4tic 2oach 4dbent 5dus 5head 6urst 5nax 5us 5water 7y 6ell 5y 3berg 4st 3chu 4k 5ett 5ington 5man 5way 3dbeck 4e
5r 6ick 6sen 5ur 4in 4sky 4y 3eckx 4ders 4k 5hoven 4shart 3gan 4den 5on 4gini 3kaw 3lin 3man 4berg 4ley 3nder 4k
4ner 4son 5tein 3oker 5ing 7s 5man 5over 5shire 4me 5field 3phy 3quet 3schi 4e 4ius 4nan 3thers 7ton 4t 3ugh 6an
6ton 4illard 7ette 4ssard 6eau 4wer 7s 3wder 4er 4ne 6ll 6r 5field 5ing 5lee 6ow 3xton 3y 4les 3z 4ova 2u 3adar
3baker 3ch 4k 5er 5ner 3der 3en 5ing 3ggeman 6r 4man 4naro 3hn 3iseal 3mback 6ugh 5elow 4field 4it 4leve 6y 4mett
5itt 3n 4a 4dage 5idge 4e 5au 5el 5l 6l 7e 8schi 7o 5r 5t 6te 7i 4gardt 4ing 4k 4ner 4ovska 8y 4s 5on 5wick 4t 5on
3scantini 4ka 5o 6va 4s 4t 3ton 3un 3yere 4ninckx 5zeels 2yan 5t 3d 4en 3er 3ner 3son 2zezinski 3ozowski 1ubb 3litz
2canac 4r 3ci 3h 4an 6an 6on 4berger 4egger 5r 4heit 5oltz 7z 4inger 4ler 4man 4ner 4olz 3kelew 4ingham 4land 5er 6s
6y 5in 4man 6ster 4ner 4walter 3y 2da 4i 4qli 3d 4e 3hlaeir 3ig 2eche 3hler 3lens 4l 4ow 3ndia 4o 4rostro 4tello
3rger 3ttner 2ffington 4ord 4um 3kin 2garin 3bee 3g 4s 3non 3ueno 2hl 4er 4mann 3r 2ick 3e 3js 3sson 3tron 2jard
2ker 3ovec 5ska 7y 4wski 3vic 2lger 3jan 3kley 3lard 4en 5r 4ington 6s 5on 5s 4och 6k 4uck 3ter 4ot 3zoni 2mb
3gardner 6ner 3pers 4us 2nce 4ic 3dy 3ger 4ic 3ic 3n 4ell 3tin 6g 4on 3yadzadə 5rd 2onauro 4o 2rbach 5ge 5nk 3cardo
4h 5am 6rd 5ell 6tt 8e 5field 5ill 4iaga 4ul 3d 4ett 7e 4ge 4ick 5ne 5tt 3es 5ova 3ford 3g 4an 4e 5r 5s 6s 5tt 4her
4in 4oon 5s 5yne 4staller 3ic 3k 4art 4e 5s 5t 6t 5y 4halter 6rt 5ead 5older 4ley 4s 3leigh 5son 5y 4ing 7ame 5son
3man 4eister 3nach 5m 4ell 5s 5tt 7e 5y 4ham 4ley 4s 5ide 3pee 4o 3rage 4ell 5ss 4i 5er 5ll 5s 6s 5tt 4ough 8s 4us
6s 3se 4ic 4on 3t 4ch 4on 4scher 3well 2sby 3cetta 4h 5er 3e 4r 4y 3hee 5y 4man 4nell 4ong 4way 3ick 3ke 4irk 3ljeta
3oni 3quets 3s 4ard 4e 5ll 5y 4iere 3tamante 4illos 4os 3well 2tala 3eau 4ra 5baugh 3kovic 8h 4us 3ner 3selaar 3tars
4e 5rfield 6worth 4imer 6ore 4ler 4ram 5ey 4s 3z 2xton 2yse 4se 2zard 3bee 3ov 3zard 4ell 1yard 4s 3s 2bee 2e 3r 4ly
4s 2field 3ord 2ington 2ler 3und 2noe 3um 2ram 3d 3ge 3ne 5s 4s 3om 3um 2strom 1əsiroglu 0caba 4llero 4n 5illas
3barli 3e 4ll 6o 4za 6s 3ibbo 3o 4t 5o 3ral 6es 4era 6o 4ini 2ccianemico 5oppoli 3eres 3ho 2ddell 5n 4ow 3e 4fau 4na
6s 3hain 3iz 3le 3ogan 4rette 5na 3wallader 4ell 3y 2esar 3tani 2farchia 3farelli 4ee 5rkey 7y 6ty 5y 4rey 3ua 4k
2galj 3giano 3le 3ney 4in 4otto 2halane 3ill 6ane 4r 3oon 2i 3mbeal 6ul 3n 4e 5ro 5s 3rn 5s 4oni 3son 2jigas 2l
3abrese 6o 4han 4rco 4tayud 4way 3bo 3cote 3deira 5r 6a 6on 8e 6wood 4well 3e 4s 4y 3fee 3gari 3hoon 5un 3i 3kins
3laghan 5ham 7n 5n 6an 5s 5way 4e 5baut 5gari 8o 5ja 5n 6der 6s 5s 5waert 4icoat 5er 5gan 5han 5nan 5s 6on 4oway 4y
3ton 3vert 5t 5y 4illo 4o 3zada 2macho 4lov 4nni 4ra 5ena 5go 5illo 3bell 4ier 4ra 5idge 5on 3den 3eron 3icione
4lleri 4no 4re 4scione 3mack 5rata 4el 3pa 5gna 5na 6ella 9i 6o 5s 4bell 4field 4illo 5on 5se 6i 4o 5s 5y 4uzano
3uccini 4s 2nada 6y 5y 4le 6s 5i 5s 4s 4van 3chola 4ino 3daux 4elaria 4ia 4ler 3ela 5las 4t 5e 5ta 4vascini 3field
3gelosi 3il 4pe 4zales 6res 3n 4aday 6y 5n 4ella 4iffe 5ng 5zzaro 4y 3o 4va 6s 3sler 3tara 4erbury 6o 4imori 5n 4o
5n 5r 4rell 4u 4well 4y 3up 2o 3mhanach 3uette 2parros 4sso 3devila 3ecchi 4hart 4k 5ova 4l 5le 4rs 5ton 4tillo 3ka
4o 5va 6ic 8ova 3la 5n 4e 5s 4inger 5s 4ovic 8ova 3o 4bianco 4ne 4zzi 3p 4elli 7o 4les 4s 3ra 4io 3ua 5igh 5na 6o
4to 2raballo 4cciolo 4way 3bajal 6o 5llo 5ugh 4erry 6y 4o 5ne 7ll 3camo 3dano 4ella 7o 5n 6as 5r 4iel 5llo 5n 6ale
4on 6a 6e 5so 5za 6o 4ucci 4well 3ey 3fagna 3gile 6l 4onja 3ic 5o 4gnan 4llo 4ni 5o 3lberg 4e 5ton 5y 4i 5er 5le 5n
6o 5sle 4ock 5s 4s 5en 5on 5son 4ucci 4yle 3mack 5ig 4ean 4ichael 4ody 5n 6a 5uche 3n 4ahan 4eal 5gie 5iro 5ll 5r 6a
6o 5s 5vale 5y 4ogurska 9ky 5tte 3o 4cci 4lan 5l 6o 4n 5e 4sone 4thers 3paccio 4entier 5r 4ino 5o 3r 4agher 5nza 5ra
5sco 6quillo 5ud 6x 5way 4e 5iro 5ll 5no 5on 5ra 7s 6o 5tero 4ick 6o 5era 7e 5g 6an 6y 5llo 5ngton 5on 5zales 6o 4o
5ll 5n 5w 5zza 4uth 7ers 3son 4tarphen 5ens 8en 4well 3tagena 4e 5e 5r 4hy 4ier 4ur 4wright 4y 3ullo 4n 4so 4thers
3vajal 5lho 4er 4ille 3wile 3y 2sadei 5o 6s 5y 4grande 4l 5e 6ggio 5odi 5s 4nova 8s 4res 6z 5in 4s 4vant 3cio 3ella
7ti 4y 3hen 4in 5on 4man 4well 3iano 5s 4er 4llas 4ni 3key 3ler 3ner 3on 3par 4erson 3s 4ady 5no 5ra 6t 4el 6l 7a
6man 5n 5rley 7y 5tte 4iano 5dy 5n 5ty 4on 3tagna 5ldo 5neda 6o 7n 4eel 5jon 5leyn 6l 7ano 9os 7i 8tto 7o 8n 7s 5r
4iglia 8one 5le 6la 7e 8ja 7o 8n 5oni 4leberry 6man 4o 5n 6guay 5r 6ena 4rejon 5illo 5o 3well 2tala 6n 7o 5do 4nia
5zaro 3e 4nazzi 3hcart 4ey 3lett 4in 3oe 4n 3ron 3t 4aneo 4igan 5n 2udell 4ill 7o 4le 4ron 3field 3lder 4ey 4field
4kins 3ne 3sby 4ey 3then 2valcante 9i 5ier 5laro 6o 4nagh 6ugh 5na 4zos 3ender 4r 5ly 3ieres 4n 5ess 5s 4tt 2wley
3thon 2yer 3lor 3ton 3wood 2zares 3orla 1ea 3farcaigh 3nainn 3ra 4ley 3sar 4er 2ballos 2cere 3h 4ova 3i 2deno 3illo
2h 2ide 3risc 3tinn 2ja 2kovska 7y 2laya 3entano 3is 3ma 4ina 6s 4s 2ndejas 4ron 3iceros 3tek 6ova 5no 5rs 2orais
3thach 6nach 2peda 3has 2rar 4volo 3da 5n 3ezo 3i 3mak 6ova 3na 4e 4ik 6ova 4och 7ova 4y 3on 3quiglini 3rato 4o 5ne
3utti 3vantes 8z 4en 6ova 6y 5ra 2saroni 6tti 3chi 3nak 6ova 4ek 6ova 3pedes 3sna 3taric 2ulemans 3ppens 2vallos 1ha
3bot 3ce 4ko 4on 3d 4a 4bourne 4ha 4well 5ick 3ffee 5in 7s 4in 3gnon 4oya 3hal 3i 4dez 4rez 4sson 3krabarti 7orty
3lfant 4k 5er 4mers 4upka 7ova 3mberlain 9nd 8in 5lee 7ss 6iss 4lee 4ness 4orro 4pine 5lin 3n 4a 4cellor 6y 5y 4d 5a
5er 5ia 5ler 5ra 7n 4ey 4g 4nell 3o 3pa 5rro 4delaine 4ell 7e 4in 4lin 4man 4pel 7l 8e 5le 5uis 4uis 5t 3r 4boneau
7neau 4est 5tte 4land 5ebois 6ston 7worth 5ier 5ton 4ney 4on 4pentier 5ie 4rier 5on 4tier 5rand 3son 4se 4tain 5een
3tfield 4ham 4man 5on 4riand 8t 4terjee 7ton 3u 4det 5hari 8y 6ry 6uri 5ry 4han 4sse 4veau 6t 5in 3varria 4ers 5s 5z
4ira 5s 3wla 2ea 4ra 4tham 5wood 3ca 4hi 3da 3e 4ma 4seman 5man 4ver 3n 4ard 5ult 6x 4ey 4g 4ier 4oweth 3rian 4ry
4ubini 4y 3shire 4ley 4ney 5ut 4s 5er 5on 4tnut 3ung 3valier 6ley 7ier 4ez 4resson 5olet 3wning 2habra 2i 3ang
4ppetta 4ramonte 4sson 3chester 4o 5ine 3dester 3en 4sa 3gi 3lders 5ress 5s 4es 4son 4ton 3ndamo 4g 4n 5ici 3odo
3pman 4ps 3sholm 4m 4olm 3ttenden 5olini 5um 5y 4wood 3u 3vers 2mielewski 3ura 2o 3ate 3e 3i 3kshi 3n 4g 3pard 4ra
3que 6tte 3tzen 3u 4dhary 6ry 6ury 4inard 3van 6ec 8ova 6ova 3w 4dhury 3y 2rappa 6ova 3etien 3isman 5ten 8sen 9on
6iaens 8no 9sen 9son 7e 6man 8s 6ner 6offerse 9ersen 9erso 7pherso 3odtrud 4nister 2u 3bb 3dik 6ova 3mbley 4ley 3n
4g 4n 3pp 3rchill 6well 1iampi 3nciolo 4i 3ragain 2bin 3ula 5ka 6ova 5ova 2cala 3cone 3ero 3horius 3ilia 2d 2ernaova
5ik 7ova 5y 3slak 2fuentes 2gan 5ik 7ova 5ova 7ic 3er 5ova 3naroli 2k 3otic 2lea 3ibrasi 3ley 4in 2marosa 3ini 5o
2ndric 3gizoglu 3namon 4eir 3tron 2offi 3sog 3thaigh 5og 4ti 2polla 3riani 2rino 3ule 5is 2s 3co 3neros 3sell 3terna
8s 2uinin 2vaschi 2zmesija 4ic 1laar 4ssen 3baugh 4orn 3ck 3es 5dr 5en 5ner 5sens 6on 4ys 3fferty 6y 4lin 3iborne 4r
3ncy 4ton 3pp 5er 3rach 4dy 4e 4idge 4k 5e 5son 4y 3ssen 5on 3tterbuck 3unch 4s 5en 5ing 5on 5sen 3vero 4in 3wson
3xton 3yborn 8e 5rooks 4comb 4pool 8e 4son 4ton 6r 2eary 4ver 6s 3ek 4s 3gg 4horn 3land 3mente 7s 4mer 5ons 4ons
3naghan 3rc 4kin 4y 3veland 5nger 3wis 2ifford 4t 3mer 3nard 4e 4ger 7man 5man 4kscales 4ten 5on 2odfelter 3er
3gherty 3herty 5ssey 7y 3ney 4inger 4tz 3onan 5e 6y 3pton 3re 3sset 5on 3thier 3ugh 4se 6r 4tier 3w 4er 6s 3yd 2ubb
3ff 3key 3ne 3te 4ter 2yburn 3mer 3ne 1oachman 3dy 3kley 3n 3rdi 3xum 2bb 4ins 4le 4s 3le 3o 4s 3rda 5ova 3urn 2ca
3ci 3hran 7e 3iarelli 3kburn 4erham 4rell 5um 3o 2ddington 3er 3ina 3y 2e 3lho 4lo 3n 4e 5n 2fer 3felt 5y 4ield 4man
3ield 3re 2gan 4r 3burn 3dell 4ill 3er 3gin 6s 3hill 4lan 3ley 3swell 2halan 4n 3ee 4n 3n 3olan 3rs 2igny
3ncheanainn 4in 4ner 5in 2ke 4r 3ley 2la 4ngelo 4s 3bach 4ert 4urn 3clough 3diron 4well 3e 4grove 4lla 4man 4s 4tti
4y 3fer 3gan 3houn 3ic 4net 3l 4ado 5o 5rd 6t 5zo 4en 6eler 5ran 5t 6t 7e 7i 5y 4ie 6r 5gan 6non 5n 6a 6der 6g 7s 6s
7on 7worth 5s 6on 4man 4odi 4um 4y 3man 4enero 3om 5a 5bo 5er 4rado 4simo 4t 3paert 3quitt 3reavy 3son 4ton 3ter
3ucci 4m 5bo 6us 4nga 3vard 4in 3well 3yer 2macho 4r 5tun 3ber 5st 4i 4oni 4re 3eau 6x 4ncini 4rford 5iato 4s 3isky
5so 3man 4ins 4ons 3o 4lli 3pere 4o 5s 4ton 3stock 3yn 2nant 4ola 4rd 4tser 5y 4way 3bhae 4oy 3cannon 3der 4ie 5t
4oleo 5n 4ren 6y 5on 4un 3efrey 4rly 4sa 4y 3fhaola 4orti 3gdon 4er 3iglio 3kle 5in 7g 3lan 4ey 4in 4on 3mee 4y
3nachton 5ghy 5lly 5ughton 4eeley 7y 5ll 7an 7y 5r 6s 6y 4ole 6ly 5rs 3ole 4ver 3rach 5di 5oi 4ee 4oy 4y 3saidin
4idine 4tant 8ine 3tarini 4er 4i 4rafatto 5eras 3verse 6y 3way 4ell 3yers 2ogan 3ke 4s 5ey 5ley 5on 3lahan 4en 5y
4idge 4s 3mbs 4er 5s 3nan 4ey 4rod 4s 3per 6man 3ts 3ver 2pas 3eland 4nhaver 4s 3her 3land 4ey 4in 3p 4a 5ge 4edge
5ns 4in 6ger 4le 4ock 5la 2rbacho 5t 4eil 5tt 4in 5tt 4o 5z 4y 3chado 4oran 5s 3deiro 5r 6o 4ier 4le 4oba 5n 5va
4ray 4uff 3ea 4t 3ia 4c 4ell 4sh 3ker 6y 3l 4e 5ss 5tt 5w 5y 4iss 3mack 5n 4ican 6k 5er 4y 3nejo 5lison 8se 9en 8z
5t 6t 7e 5z 4il 5ng 5sh 4man 4ut 5z 4wall 5ell 3ominas 4nado 5el 3p 4ataux 4us 5z 3r 4adi 4ea 5ia 5ll 5r 4idan 5gan
5veau 4y 3si 4o 5n 4tiaens 3t 4es 6e 5z 4ina 7s 4right 3um 3valan 3win 2sandey 3by 3cair 3endey 5tino 5za 4y 3grave
5ove 3ic 3man 3ner 3per 3s 4ette 5y 4iga 4y 3ta 5les 6onga 5nza 7i 5s 4e 5la 6lo 8e 5r 4igan 5lla 7o 4ner 4on 2ta 3e
3hern 4ran 5en 3ic 3ner 3o 3ta 4en 5r 4ingham 4le 4man 4o 5ne 4rell 5ill 2uey 3ghlan 6in 3lombe 5n 4son 5ton 4ter
3nihan 4ts 3rcey 4nane 5oyer 4sey 5on 4temanche 6nay 6r 5ney 5ois 5right 4ville 5oisier 4y 3sar 4ins 3tee 4o 4ts 4u
5re 6ier 3vreur 2varrubias 3ell 4rt 4y 3ic 4n 5gton 2wan 5s 4rt 3den 3ell 5y 4n 3ger 4ill 3herd 3ie 3les 5y 3man 2x
2yer 3le 3ne 2zad 4r 5t 1rabb 4ill 4tree 3craft 3ddock 4er 3fton 3gg 3han 5y 3ighead 4n 5e 3mer 4psey 6ie 5ton
3ndall 5ell 4er 5y 4ford 4gle 4k 4ley 5y 4mer 4or 4ston 3ry 3se 4s 3vens 5r 3w 4ford 4ley 3y 4ton 2eager 5h 4mer 4n
4sey 5man 5on 5y 3dle 3e 4ch 4don 4kmore 4l 3gan 4er 3han 3ighton 3means 5r 4in 4onesi 3nshaw 3peau 3spi 6n 5o 4s
5ey 5well 4well 3tton 3var 4oisier 2iado 3bb 5ons 5s 3chton 4k 3ddle 4er 3gger 4ler 3lly 3m 4mins 3ner 4ion
3omhthain 4stoir 6uir 3pe 4pen 5s 3safulli 4ler 4man 4pi 4s 5man 4t 5ea 5oforetti 4well 3tchfield 6low 4es 4tenden
8on 3velli 7o 2nekovic 3kovic 2oad 4l 3ce 4ker 6tt 3foot 4t 5s 3han 3il 3ker 3ley 4l 5y 3martie 4er 4pton 4well 3n
4an 4elly 4in 4k 4ly 3oker 5s 4m 5s 3pper 3sbie 5y 4e 4ier 4key 4land 5ey 4san 5en 6tt 5land 6ey 6in 5man 5on 5white
3ta 4eau 4hers 4ts 5y 3use 3wder 4e 5ll 4l 5ey 4nover 4son 4ther 3xton 3y 4le 3zier 2uce 5s 3dden 3ickshank 3m 4b
5ley 4e 4ley 4p 5ler 5ton 4rine 3nk 3se 3tcher 6field 3z 2yan 3er 1sonka 1uadra 6do 2bbage 3illos 3ric 2ccia 3ek 2da
3d 4ihy 4y 3e 3ic 3joe 3ney 2e 3llar 3nca 3rvo 3sta 3to 3va 5s 2ffe 5e 4ie 2gia 2idithe 3llin 3neain 3rteis 2k 3man
3on 2lberson 6t 7son 4reath 6th 3hane 3i 4na 3jak 3l 4en 6s 5r 5y 4igan 5nan 8e 6s 5son 4oty 4um 4y 3ot 3p 4epper
3ver 2mberbatch 6land 4ie 3iskey 6y 3ming 7ham 7s 6s 5skey 7y 2ndari 4iff 4un 3eo 3ha 3nane 4een 4iff 5ngham 4y 3un
2omo 2pic 3p 4les 4s 2ratoli 3ci 5o 3d 4y 3eton 3ic 4el 3lee 5y 3nane 4een 4utt 4yn 3ran 5oin 4en 5y 4ie 6r 5n 4y
3tin 5s 6s 4o 4singer 2sack 4no 3hing 4man 3ick 3son 3tard 4er 4is 3umano 2thbertson 3ler 4ip 3rer 4ight 4ufo 3shall
6w 3ter 4s 3uli 2varli 3elier 2yler 3pers 3vers 2zzocrea 1venic 3tko 6vic 4nic 2itan 2rtila 1ybulski 2pert 3hers
3rich 7ova 2r 3us 1zajkowski 3pla 3rnecki 2ech 3rwinski 1əbrayilov 2fəroglu 6va 5zadə 2mənli 5zəminli 0dabbs 3ney 3o
3rowski 2chgelder 8t 7t 3osta 3us 2da 3dario 3e 3o 4va 2ems 2ggett 3li 3ostino 2hl 4berg 4e 5n 4gren 4in 4ke 4quist
5vist 4strom 3m 4en 4s 2ibhis 3gle 4neault 4re 3ken 3l 4ey 2ke 2lal 3eiden 4s 5sandro 6io 3ke 3l 4a 5ire 5pe 5ra 5s
4ey 4inger 3mau 3rymple 3ton 4un 3uz 3y 3zell 4iel 2mato 3brosio 3eron 3iani 4co 4janic 3janovic 3m 4ann 3ore 3pier
3ron 2naher 3cak 6ova 4iak 7ova 4y 3dolo 4rea 5idge 3e 4k 5ova 3ford 6th 3g 4elo 5rfield 4l 3i 4ell 6s 7en 7on 7son
4lov 4s 3ko 5va 3ley 3n 4er 4inger 3o 4s 4va 3sby 4ereau 3t 4onio 4zler 2o 2r 3a 3bonne 4y 3cy 3dar 4en 6ne 3gan
3ley 4ington 3mody 3nall 3ojkovic 4sa 3r 4ah 4ington 4ow 3st 2s 3ey 3gupta 3her 4iell 4ner 3ilva 3s 2tta 4ilo 2ub
4ert 3gherty 5tery 6rey 7y 3lton 3m 3phin 3tanec 4ovic 2valos 3enport 4rn 4s 4y 3idova 5s 6on 6son 4es 4la 4n 4s 5on
5son 4tt 3odov 4ren 2w 3e 4s 3ick 3kins 3ley 3son 2yal 3e 3ton 2za 1eacy 3dy 3k 4ins 4ova 3lba 3nda 4e 4gelis 4s
3rborn 4dorff 4ing 4man 5ond 4th 3s 4e 4on 4y 3therage 4on 3ver 6s 2belic 5jak 5lis 4rry 3lois 3nam 5r 6ova 3oer 4lt
4rd 4se 3roux 4uyne 3usk 2camp 6s 4rlo 5o 4stro 3esare 4uninck 3hamps 5nt 3icco 3kard 4er 6s 6t 3lerck 7q 4ue 3ock
4ninck 4sta 6er 4teau 2deaux 3mon 3rick 2e 3gadan 5n 3han 3l 4ey 4y 3mer 4s 3n 4ey 4y 3re 4ing 4y 3s 4e 3ter 2falco
4zio 3elice 4o 3ilippo 3oor 4rd 5est 5ge 3rancisco 7o 4eitas 2garmo 3en 5naro 4orge 3nan 3raff 7enreid 5w 4egorio
4oat 5ot 7e 4yse 3ueldre 4zman 2haan 4rt 4ven 3errera 3mel 3n 4er 3on 4yos 2igan 4nan 3nes 3seach 3tch 4z 2j 3ardin
3ean 4sus 3ohn 4ng 6he 2keyser 3ker 3ys 5ova 2lacerda 5ruz 4doey 4ere 4fuente 4garza 4haye 5oussaye 5unty 4mora
4ncey 5ey 5noy 5o 5y 4o 4p 5az 5ena 4rgy 5iva 5osa 4torre 5te 6re 4ughter 5nay 6e 4vega 3bosque 3cambre 5stillo 4id
4ourt 4roix 3edda 4e 4o 5n 4u 4ze 3forge 5sse 3gadillo 6o 3haye 4ez 3ima 4sle 3k 3l 4e 4inger 4ucci 3mas 4onte 5tte
3oach 5tch 4era 4ney 5g 4renzo 5me 4sreyes 5santos 4ughrey 8y 4zier 3p 4h 4orte 3real 4io 4osario 3toro 5ur 3uca 5ia
4na 3valle 5ux 4ecchio 4igne 2maio 4n 5et 4r 5co 5ee 6st 6t 5ia 5s 5tini 8o 4si 4tteo 3by 3ello 5o 4nt 4o 4rs 5y
4ulenaere 4yer 7e 3ing 4r 3ko 3mendaal 5r 3oss 4tt 4ulin 3ps 5ey 5ter 3sar 3uth 4ynck 2nault 3by 3gg 4ler 3ham 3ihan
4son 5sov 3k 4er 3man 5rk 3n 4ard 4ehy 5nberg 5tt 5y 4ie 5ng 5son 6ton 4y 3smore 4on 3ton 3ys 3zer 2o 3l 2palma
4squale 4ul 4z 3ero 4w 3oorter 3p 3rez 4iest 3ue 4y 5dt 2ramus 3by 3ezic 3mody 5tt 3oche 4sa 5e 5ier 5sett 4uen 3r
4ickson 6o 5g 5nger 4y 5berry 3y 4cke 2sai 4lvo 4ntiago 7s 3biens 3camps 4hamp 8s 5enes 4oteaux 3hazo 4ields 4mukh
4ong 5tel 4pande 4usses 3ilets 5va 4mone 4o 4r 3jardins 3kins 3lauriers 3marais 4edt 5t 3oto 4usa 5za 3pain 4res
3rochers 8s 5siers 3sart 4y 3tefano 2taille 3hier 3ournay 3rick 4y 3ti 3weiler 4iler 2utsch 7mann 2vally 4n 5e 6y
5ney 4ughn 5lt 5x 3eau 4cka 6ova 4nney 4r 5a 5eaux 6ux 5s 5y 3i 4lle 7rs 6y 4n 5e 5ney 4ta 5o 5t 3lin 3oe 4lder 4re
4s 4y 3riendt 6s 2waele 4ld 5l 5t 4n 4r 3berry 3ees 6e 4z 3ilde 4tt 6e 3oody 3ulf 2y 3o 4ung 2ze 1haliwal 3r 3wan
2illon 3ngra 2ondt 1iaconescu 6u 3llo 4s 3s 3z 2bble 3ella 4nedetto 3iase 6i 2carlo 3ken 6son 5rman 6son 6t 5y
4inson 5son 4man 4s 5on 3us 2domenico 4nato 4vic 2ebold 3derich 3go 4uez 3hl 3mer 3ner 3p 3rckx 4ick 7x 4king 5s
3sbach 5ergen 3tl 4rich 7k 4z 3u 4donne 3z 2ffin 4ley 3iore 3ranco 2gby 3ennaro 3gin 6s 4s 3iacomo 4ovanni 4rolamo
3nan 3regorio 2jkman 4stra 3oux 2ke 2lbeck 3day 4y 3eo 3l 4ane 5rd 4e 5n 5r 5y 4inger 7ham 5on 4man 4on 5w 4s
3orenzo 3worth 2ma 4ggio 4rco 5tino 4tteo 6ia 4uro 3ick 3mick 3ond 2namarca 4n 4poli 4rdo 3een 3ger 5s 6s 4le 6r
4man 4us 3h 3kel 4ins 3neen 3smore 3u 3widdie 2olun 3n 4ne 4un 3rio 2palma 4olo 4squale 3ietro 3pel 2rcken 3ks 5en
3nberger 3rane 3ven 2salvo 4nto 3cin 3dero 3hman 4on 3kin 3muke 7s 3ney 3on 3tefano 2tschlerin 3tman 5er 4o 4rich
3ullio 2venney 4r 5s 3iney 4to 2x 3ion 4t 3on 3son 2zdar 3on 1mitriev 1oak 3n 4e 2bbelaere 4in 6s 4s 3es 3ler 3os
3re 4ic 3sinska 8y 4on 3y 2chioiu 3kery 4ins 4x 3olomanska 9sky 3quier 2dd 4s 3gen 3rill 3son 2e 3ring 4r 3sburg
2ggett 3hair 4erty 3lioni 2herty 3n 2i 3ngeard 3ron 2lan 3by 3ce 3e 4nc 4s 4zal 7ova 3ic 4n 5ar 5sek 3lard 4inger
4off 3ph 5in 2man 3broski 6wski 3enech 3ingo 6ue 8s 8z 5ikovic 5kovic 5o 5quez 5y 2nagher 6y 4hoe 5ue 4ire 4ldson
5son 4relli 4ti 5oni 3cevic 3egan 4lson 4r 4s 4y 3g 3ini 4s 3ley 4on 3moyer 3nan 5y 4ell 7an 7y 5r 3ofrio 4ghue 4ho
6e 5ue 4so 4van 3y 2ody 3ey 3gan 3han 3lan 4ey 4in 5ttle 3rhof 4nhem 4ty 2ppler 2rado 4n 4zio 3cha 3dan 3e 3fer 4man
3gan 3ia 4ng 4ty 3ka 4o 5va 3man 3n 4an 4er 3ot 5ova 4va 3r 4ance 4ian 4ough 3sch 6ner 4ett 5y 4man 3tch 4on 3y 2sch
3hi 3s 4antos 4ett 7i 4i 3tal 6ova 4er 6t 4ie 2tson 3ts 3y 2ucet 6te 3d 4igan 3gan 4herty 5ty 4lass 3mont 3se 3thit
7t 2vara 3er 2w 3d 4ell 5n 4le 4y 3e 4ll 4r 5g 4y 3ler 5y 4ing 3nard 4er 5s 5y 4ie 5ng 4s 2xey 2yal 3en 3le 3on
2zier 1raaisma 3eger 3ghi 4icevic 4obratovic 5jevic 5o 3jna 5ova 3ke 5ford 5s 4ulic 3ndic 3peau 3ughn 3ves 3xler 3y
4ton 3zic 2ees 3her 3iling 3nnan 5en 5on 3ssler 3tvic 3wes 4ry 4s 3xler 3yer 2ian 3es 5en 5sen 3ggers 5s 3nkard 4non
3scoll 4kell 5ill 2obna 5y 3guett 3han 3let 3ma 3ney 3ppa 5ova 3st 3tar 6ova 3uin 3z 4d 5ov 2uart 3b 4in 3cker
3mheller 4m 5ond 5y 3ry 3so 2yden 3e 4r 3sdale 1ua 3ne 3rte 2bay 3e 4y 3in 3lin 3nicka 3ois 4se 4vecak 5ska 7y
3reuil 3uc 4isson 4que 3y 2ca 4n 3harme 4ene 5sne 3ker 5tt 4sworth 4worth 3los 3ote 2da 4s 5h 3ek 5ova 3geon 3ik
5ova 3ka 4o 5va 3ley 3o 4k 5ova 4va 2ell 3nas 3rr 3t 3z 2fault 3f 4ey 4ield 5n 4y 3our 3rane 5sne 4ene 5sne 2gal 4n
4r 4s 3gan 4er 4ins 3uay 2hamel 4rt 3ig 3on 3y 2ignan 3nsmearach 3venvoorden 2jardin 3movic 2kes 3ic 2la 4c 4ney
3becco 3ey 3in 3la 4ova 3ohery 4va 2mais 4s 3ina 5s 4trescu 3mer 3ond 5t 4rtier 4ulin 2nagan 4vant 4way 3bar 3canson
3das 3fee 4ord 3gan 3ham 3igan 3kel 6berger 4in 4le 6y 5in 3lap 4eavey 7y 4op 3mire 3n 4am 4e 5back 4igan 5ng 4y
3phy 3ser 4on 4ton 3ton 3worth 2odo 3ng 2plantis 4essis 3ont 3pstadt 3ras 4e 5e 5y 3uis 4y 2que 5sne 5tte 2ran 5d 5t
6e 4sevic 4zo 3bin 3ca 4o 5va 3den 4ik 6ova 3ek 5ova 4n 3fee 3gan 4in 3ham 3ica 5ova 4eux 4nic 4s 5ova 3ka 5n 4ee
4in 4o 5vic 8ova 6ska 8y 3nan 4in 6g 3o 4cher 4n 4ux 4va 5ic 7ova 5sky 8ova 3r 4ah 5nt 4ett 4ihy 3so 4t 3y 4ea 2sa
3e 4k 5ova 3icka 6ova 4k 5ova 3ka 4o 5va 3ova 3sart 5ult 2tcher 3il 3ka 4o 5va 3ra 4ieux 3t 4a 4on 2val 5l 4ncic 5el
3ivier 1vojak 3nc 5ova 3rak 6ova 4ska 6y 1wane 2yer 1yal 3r 2ck 3us 2er 3ss 2ke 4ma 4s 3stra 2sart 3on 1zapo 2ene
4is 2iedzic 2urjanin 9ova 1əmirbəyli 0eaddy 3es 3s 3y 2gan 3lin 2ker 4s 3in 5s 2ley 3y 2mes 2nes 2rhart 3le 5s 5y 4s
3nhardt 4shaw 3p 3wood 2sley 3on 3tep 5rday 6ling 7y 6wood 4ham 4in 4land 4man 4on 4ridge 4wood 2tman 4on 3on 2ves
1bbert 2el 4ing 3rhard 8t 7t 8er 4l 5e 5y 4sole 4t 5h 2ling 2ner 2ron 2y 1ccles 6ton 2havarria 3evarria 5erria 3ols
2kbauer 3el 4nrode 4r 5t 3hardt 4off 3les 5y 4und 3man 3stein 2o 2tor 1dberg 2dings 6ton 5s 3leman 2elen 4man 4son
5tein 3n 4field 4s 3r 2gell 4rly 5ton 3in 5gton 2ick 3n 4ger 5ton 2linger 3und 2man 3iston 3onds 7on 5son 3undson
2ney 2strom 2vardsen 7son 2wards 1eckhout 2lls 3man 2rden 1fird 2timie 1gan 2ea 3r 4ton 2gen 4r 5s 3leston 2li 4nton
4te 5is 2orov 1hlers 5t 2mann 2ret 3hardt 6t 3lich 1ibl 2ch 4berger 4elberger 5nberger 5r 4horn 4inger 4ler 4ner
4orn 3khoff 2de 3son 2genwillig 2jkelboom 2land 3er 5man 5s 3firt 2mer 2narsson 4udi 2schen 3ele 4n 5barth 6erg
5hart 7uer 6ower 5man 3l 3ner 2vers 1kberg 2dahl 2elund 2holm 2lof 3und 2man 2strand 5om 1lam 4in 3tli 2berts 7e
2ders 3red 6ge 4idge 2em 3y 2gin 3ueta 2iason 5sen 6on 3zalde 4ondo 2kin 5s 3s 2lard 3edge 4fson 4nberger 6urg 5der
4r 5be 7e 5man 5y 4tt 3inger 6sen 7on 7worth 6ton 4ot 6t 4s 5on 5ton 3man 3sworth 3wood 3zey 2more 2o 3fsson 3ranta
4za 3y 2rod 2sass 3berry 3ea 4mulder 4n 5aar 4r 3ner 3on 3ton 3wick 2well 3ood 2y 2zey 3y 1manuelli 7sson 2berton
3ree 5y 4y 2erick 4t 2ig 3lsson 3nov 2men 4r 5t 3ons 2o 3nd 2rich 5k 1ncina 6s 4so 2der 5s 3icott 3o 3res 4izzi
3sley 2e 2g 3berg 3dahl 3ebretson 4l 5brecht 5en 5hardt 5ke 5man 8n 5s 4n 4r 3l 4and 4e 5bert 5hart 5man 5r 6t 5s
4ish 4und 3man 3ram 3strom 3vall 2loe 4w 2nis 2o 3chs 3s 2right 4quez 2sley 3minger 3or 2trekin 4inger 3wistle
2yeart 2zinger 1off 1pley 3ing 2p 3erly 5son 3inger 3ler 3s 2stein 1razo 2b 3e 4r 3y 2ceg 5ovic 2dman 6n 2gotic
2hart 3out 2ices 4ksen 6on 4son 5son 3ksen 5on 5son 2javec 2kkila 2lacher 4ndson 7son 3er 2m 2ni 4ts 2onen 2pelding
2rani 3ico 4go 2sek 3kine 2tel 3l 2vin 5e 5g 2zen 1scalante 5era 5ona 4milla 4rcega 3obar 5edo 4lano 4to 3ribano 5va
3udero 2helman 3leman 2kelinen 4w 3ola 3ridge 2lick 4nger 2pada 4na 5ol 4rza 3ejo 4y 3inal 5o 6sa 6za 4ritu 4tia
3osito 3y 2queda 5r 4ibel 5vel 2sary 3er 4x 3on 2tabrook 4y 3eban 4ll 4p 5p 4rly 5s 4s 4ve 6s 6z 4y 3ill 3rada
1tchison 2erovic 2heredge 5idge 5ton 3ier 3ridge 2ter 3inger 2zel 3ler 3old 1ubank 6s 2dy 2gster 2ler 2re 3ich 3y
2stace 4ice 1vanoff 4s 3tt 2eland 3ns 5en 5on 3quoz 3raert 4de 4ett 4hart 4itt 4ly 4man 4s 5ole 6n 4ton 5s 2ins 2oy
2rard 1walt 3rt 2ell 3rs 4t 2ing 1xley 2posito 2um 1yler 2man 2re 2vazali 5li 1zell 2zell 0fabbri 3ela 4r 3ian 6o
7va 4janic 3ra 4e 5gas 7t 4izi 4y 3us 5ova 2cer 3kler 2dden 3ian 2es 2gan 3er 5strom 3giani 3iani 4n 3otto 3undes
2herty 4y 3y 2illa 4s 3n 3rbank 8s 4child 5loth 4fax 5ield 4hall 4ley 4man 4weather 3son 3vre 2jardo 3nor 6ova 2lbo
3co 5ne 7r 3es 3goust 6t 3ier 3k 4ner 3laci 4er 4in 5s 4on 5ppio 4s 3vey 3zone 2ncher 3e 4lli 3g 3khauser 3n 4in 6g
4on 3sler 3t 4ini 4oni 5zzi 3ucci 2rago 4h 4nda 3ber 3ell 3fan 3go 3ia 5s 4na 5elli 4sh 3kas 6ovska 9ky 3land 4ey
4ow 3nan 4er 5se 5y 4ham 4on 4sworth 4um 3r 4agher 5nd 5r 4e 5l 6l 7y 5n 5r 4ier 5ngton 5or 5s 6h 6sey 7y 4ow 4y
3thing 3well 2sano 3ching 3iang 7ova 3on 3sett 2ttori 2ucett 7e 4her 4onnier 3ght 4no 3l 4k 5ner 5s 4l 3ndez 4tleroy
3re 3st 3ver 2va 4ta 3ela 3orite 5s 3re 5au 2wcett 2zekas 3io 1eagin 3ly 3rn 4on 4raigh 3ster 3therston 9one 2bus
2chant 4ner 3teau 2der 5ici 7o 3ler 3orov 7a 4tov 2ehan 3ley 4y 3mster 3ney 4stra 4y 2gan 3ley 2han 3er 3illy 3r
4inger 2ichtenschlager 7r 6inger 6ner 3ereisen 3ghery 4l 3joo 3nberg 4en 4gold 4stein 3rtear 3st 2kete 2lan 3ban 4er
3d 4ek 6ova 5r 4man 7n 4t 3iciano 4u 4z 3ker 3ler 6s 4inger 4man 4ner 4ows 4s 3ten 4gen 4man 4ner 4on 4s 4y 4z 5er
2nderson 4ley 3elon 3g 3ighty 4more 3ley 4on 3n 4ell 7y 5r 5ssey 4ing 3ske 4ter 7macher 3ton 4ress 3wick 2rber 3cher
3ebee 4nac 3gerson 4uson 3land 3m 4i 3nald 5ndes 8z 3on 3rabosco 5da 5gamo 6ni 5n 6d 7ez 7iz 7o 6te 7i 5ra 6i 7s 6o
5ta 5zzi 4ee 5ira 5l 6l 5r 6a 7s 6i 6o 5tti 5yra 4i 5er 7a 5gno 5ll 5n 5s 5ter 4o 5n 4ucci 3stl 2ssenden 4ler 3ta
2tt 4er 6man 6s 4y 3zer 2uerstein 2well 2y 3der 3s 1iala 4ova 2bonacci 2ca 3hter 5inger 3ino 3k 4es 3o 4va 2dler
2ebig 3cke 3dler 3lden 5s 3ramosca 4e 5ns 4ro 6s 2fe 4r 3ield 2garo 3gs 3ueiredo 5ras 6edo 6oa 7la 2ke 4s 3rətoglu
2langieri 4r 4tov 3ban 4in 3c 4ova 3er 4s 3ip 5cic 5ek 7ova 5ic 5ko 7va 5ova 7ic 5pelli 6ini 6ov 3kins 3ler 4ion
4more 3ogamo 3son 3zi 2nan 3ch 5am 5er 4k 3dlay 5ey 3egan 4tti 3k 4a 4beiner 4e 5l 6stein 4le 6a 4ova 3layson 4ey
3negan 5ll 5ran 6ty 4ie 4ucane 3otto 3ucane 3zi 2ol 3ravanti 4e 5ntino 4illo 5ni 4ucci 2queroa 2restone 3kins 3tear
4h 2sch 5bach 5er 6tti 4us 3er 5ova 3hback 5urn 4el 4man 3k 4e 2tch 5ett 3e 3tipaldi 4s 3z 4gerald 5ibbon 9ns 4hugh
4martin 6urice 4patrick 4simmons 7ons 4water 2zer 1jodorov 1lack 3gg 3herty 4ive 3iano 3kes 3ment 4mang 3nagan 5ry
4ders 4ery 4igan 4nagan 5elly 6ry 5igan 4tz 3tley 4t 3ugher 3vin 3x 2eckenstein 3eman 4ner 5or 4twood 3go 3ischer
7hacker 7man 9nn 5her 6man 3ming 7s 3sher 5man 3tcher 3ury 2ickinger 3egner 3nchum 4k 4n 3ppen 5o 2or 4ea 5s 5z 4io
4y 3urnoy 3yd 2uckiger 3dd 3ellen 3harty 3ker 3ry 2ynn 4t 3the 1oa 2bbs 2cht 3oni 2dor 2erster 2gaca 4rty 4s 5ova
4zzaro 3el 3g 3le 5man 2idl 2lan 5d 3ch 3den 3etti 4y 3ger 3kerts 5sson 3lansbee 4ett 4iero 5s 4mer 3mar 3se 4om 3tz
2mby 3in 2nck 3dren 3g 3jallaz 3seca 3t 4aine 5na 6ez 4enot 5s 3ville 2ody 3r 3s 3te 4man 2ran 5d 3bes 4is 4ush
3cier 3d 4e 4ham 4yce 3e 4hand 4ster 4t 3gac 6ova 4ey 3jan 3kin 3man 3naciari 4ey 3rest 7er 3s 4berg 4ell 4gren 4hee
4lund 4man 4t 5ner 4yth 7e 3tenberry 4ier 5n 4ner 6y 4son 4una 6y 5yn 3za 2scari 3dick 3hee 3key 3s 4ett 4um 2ti
2ucart 4h 5e 6r 3lds 4k 5s 3quet 3rnier 3se 4hee 4t 3t 4ch 4s 4z 2wler 4kes 2xwell 4orth 3x 2y 3e 3le 1racci 3dy 3ga
4oso 3her 4m 3iley 4re 4se 4zer 3kes 3ley 4ick 3mpton 3na 4ceschi 5h 5illon 5k 5oise 4dsen 4ekova 4ic 6evic 4jic 4ka
5e 6l 5huizen 5o 6va 5s 4o 5va 4qui 4scini 5en 5on 5sen 6on 4tz 4usic 4va 4zen 6se 3ry 3s 4e 5r 4her 4ier 4ure 3tes
3usto 3wley 3y 3zee 4ier 2eaney 3chette 3dericks 9sen 9son 7ksen 5s 5tte 4ricks 9on 6ks 8en 8son 3eborn 4d 5man 4l
5and 5ey 5s 4ney 4r 4se 4th 3goso 3i 4l 4s 4tag 6s 3mie 4ont 3nch 4ette 3re 4ichs 3scobaldi 4e 4hour 4quez 3twell
3udenberger 8urg 7thaler 4nd 3w 3y 2iar 4s 3berg 3ck 5e 5s 3d 4ay 4dle 4ley 3edel 6rich 5l 6and 9er 6i 5man 4hus 4l
4r 5son 4s 5e 6n 3go 3is 3ley 3mer 6ova 3nk 3sbee 5ie 5y 4ch 5ic 4ina 4k 4on 3tch 4h 4sch 7e 4ts 3zzell 2ketic
2oehlich 4lich 3hlich 3lov 3man 4m 3schauer 6l 2uge 3hwirth 3tos 2yar 3e 4r 3man 1tacnik 7ova 2orek 6ova 1ucek 3hs
2dge 2ente 6alba 6s 6z 4zalida 3rtes 2gate 2hr 4man 7n 2jii 4moto 4ta 4wara 2lbright 3cher 3ford 3gham 5um 3k 4erson
4s 3len 5r 6ton 4ilove 4mer 4wood 3mer 4ore 3op 3p 3ton 4s 4z 2nches 7s 3derburg 9k 3es 3g 3k 4e 4houser 3nell 2qua
5y 2rda 3eder 4y 3guson 3lan 4ow 3man 3ness 3r 4er 3tado 2sani 3co 3eli 6er 3on 3sell 3ter 4on 2tch 3ral 4ell 1ye
2fe 3fe 1ərəcov 0gaasch 2ba 4ldon 3ba 5na 5rd 4ert 3el 3hain 3ler 3rieli 7son 8son 3ud 2dberry 4ois 3d 4a 4is 4y 3e
3sden 4on 2ertner 3ta 4e 2ffney 4ord 2ggini 3liano 6rdi 3ne 5r 4ier 4on 3ys 2hagan 4n 3leitner 2iatto 3ciunas 3er
3ley 4ius 4lard 4ys 3ne 5ard 5r 5s 5y 4s 3ser 3tan 4er 4her 4o 3zauskas 2jardo 2la 4n 5te 4rza 4viz 4z 3braith 5eath
3dames 7z 4ikas 3e 4ana 6o 5ti 4ntine 5zone 4sic 4y 3gano 3iano 5zzo 4c 5ia 4jn 4k 5ova 4lei 4ndo 4peau 3l 4ager
6her 5her 5nd 5rdo 6t 5way 4e 5go 7s 6uillos 5n 5r 5s 5t 5z 4i 5en 5gan 5her 5more 5on 5van 4man 4o 5gly 5way 4ucci
5p 3ova 5ic 3tarossa 3uppi 4sha 3van 6i 4ez 4in 3yean 4on 2ma 4che 3bill 5no 4lin 4oa 4rel 7l 3ez 3ino 3mage 4ill
4on 6s 3sjager 2ndara 4hi 4y 3esan 5h 4y 3gemi 4l 4uly 3ley 4y 3n 4away 4on 3o 3s 3t 4t 4z 3z 2ona 2ra 4te 4van 4y
3ber 4utt 3ceau 5s 4ia 3d 4e 5a 5lla 5nhire 4in 6er 4ner 4uno 3ett 5y 4y 3finkel 3g 4allo 5n 6o 3ibaldi 6y 4ca 4epy
3lick 5ng 4ock 5w 3man 4endia 4on 3neau 5s 5tt 5y 4ica 5er 3obbio 4falo 4n 4zzo 3r 4aghy 5hy 5rd 5way 4en 5t 6son 6t
4ick 5do 5ga 5hy 5s 5ty 4one 5w 4y 3st 3ten 4lan 7d 4man 4ner 4on 3ver 5y 4in 3wood 3za 4on 6i 2saway 3con 3hi 3kell
4ill 5n 6s 3par 6d 6ova 8ic 9cova 4er 6i 3s 4away 4er 5tt 4ner 3t 4elum 2tely 4wood 3hers 3ica 3lin 6g 3son 3ti 5s
4o 5n 4ringer 2udet 6te 4in 4reau 8lt 3ghan 3l 4ke 4t 3na 3se 3thier 4ier 4reau 8x 3vin 2vaghan 4lier 8ova 3enda
6ova 3ican 4gan 3ornik 8ova 3rilov 2ya 3den 4os 3hart 3lor 3man 4on 3nard 4or 3tan 4on 2zaway 3o 4va 1ean 4y 3ran
4hart 5eart 4ty 4y 2bhardt 6t 3o 2ddes 2ens 3r 4aerts 4ling 4ts 6en 2gic 2herty 3l 4ert 3ring 7er 4ke 2ib 3er 3ger
3l 3s 4e 5l 5r 4ler 4sler 4t 2labert 3b 3dens 3emanovic 3inas 3lemeyer 5r 4i 3man 2men 3ito 3mill 2nao 3dreau 5on
3eart 4faas 4st 3gler 3o 4t 4va 5ese 3t 4hner 4ileschi 6i 7ni 4ner 2oghegan 3rges 7cu 2phart 2ra 4ce 5i 4ghty 4rdi
5ghty 4ssimov 3ber 3des 3en 5a 3ke 5n 3lach 4ing 3main 5nn 6o 6y 3ner 3ow 3rish 5ts 7e 8n 6y 3st 5ner 3th 4z 3vais
2ss 4ner 2tchell 3er 3tinger 4y 5s 3z 2udens 3ens 2vaert 2yer 1feller 1hent 3orghiu 2islain 2oerle 3lson 5ton 3se 4h
1iacconi 4ometti 3mbrone 4musso 3ncola 4etti 4inazzi 4nelli 6tti 5ini 5one 6tti 5uzzi 4vecchio 3rdina 2bb 4ens 4on
6s 4s 4y 3ert 3ilisco 3lin 3ney 3son 2ddens 4ings 3ley 3ney 2elen 3rschner 3s 4e 5n 4s 2ffin 4ord 2ger 3li 5o 6tti
3uere 2labert 4rdoni 3bane 4ertson 4reath 5ide 3christ 4rease 3dea 5n 5r 6sleeve 4uff 3e 3fillan 4ord 3gunn 3ham
4ooly 3kes 5y 3l 4ain 5m 5n 6d 5rd 4eland 5n 6water 5s 6pie 5t 6t 7e 5y 4ham 4iam 6rd 5c 6k 5eron 6s 5gan 5land
5ngham 5s 6on 6pie 4man 5ore 4ock 5n 5oly 4s 4um 3man 5rtin 4er 4ore 5ur 3pin 3reath 4oy 3senan 4on 4trap 3tner
3yard 2mbel 3enez 5o 2nder 4l 3ea 4r 4s 5e 5io 4van 3g 4erich 4ras 5ich 3n 4ea 6dha 4itty 6y 3sberg 5urg 3talas 4er
4her 4y 3yard 3zburgas 2oberti 4un 3litti 3nnachtaigh 3rdano 4getti 5i 3vine 2pe 3son 2radello 4ldo 5t 4rd 6i 4ud
3on 5a 4uard 5x 3schner 3ton 3van 2sbert 3elmeyer 3h 3t 2ttens 2uliani 5etti 3nta 5i 3sti 2van 3ens 4rn 1ladden 4e
4ney 4stone 3ncy 4tz 4z 3sco 4er 4gow 4novic 4per 5ie 4scock 5er 5man 3tt 4z 3ude 3van 4in 4or 3zer 4ier 2eason 5ure
4ton 4ves 3dhill 3eson 3nn 5on 3ssner 2ick 5man 3dden 4ewell 3gora 3nes 5ur 3onnain 3sson 2oden 4t 3or 3ss 4teir 6r
3ver 3wacki 2uck 2ynn 1meiner 1natz 2odde 1obeil 4r 5t 3in 3le 5t 2chenour 3nik 6ova 2da 4rd 5t 3bey 4old 6t 5ut 4y
3dard 3ec 4froid 4rts 4t 3frey 5oid 3in 5a 5es 6z 5ic 3ley 3oy 3sey 3win 2ebel 3dert 4hart 3hring 3l 3rens 4gen 4ing
3thals 4sch 4z 5inger 2ff 4aux 4in 6et 3orth 2gan 4rty 3gans 4in 6s 3uen 2heen 2icoechea 3n 4es 4gs 4s 2key 3hale
2la 3dberg 5latt 4enberg 5r 4farb 4ing 4man 4ner 4oni 4rick 4sberry 5chmidt 5tein 6on 3e 4y 3gi 3ightly 4no 3l 4a 5n
4iday 4ner 4um 3ob 3son 4ton 3ub 5ev 5ic 2mboc 3er 4s 4z 3ila 4s 2ncalves 3g 4ora 3i 3sales 7z 6ves 4er 3tsarov 3yea
3zaga 5las 6es 7z 6o 2o 3ch 3dale 6l 4e 5ll 5n 4fellow 4in 6g 4lett 5oe 6w 4man 4ner 5ight 4rich 6dge 5ow 5um 4s
5ell 5on 5peed 4will 6n 5yn 4year 3ge 3lsby 3sby 4sens 3vaerts 2pal 2ransson 3bunov 4y 3den 4illo 4y 3ecki 4e 4nc
4van 4y 3ham 3i 4s 3jup 3litz 3man 4ley 3ney 3rell 3ski 4uch 3ton 2sch 5l 3e 3ha 4orn 3lin 3nell 5y 3s 4age 5rd
4elin 5r 5t 6t 4iaux 4man 3wami 2tcher 3hard 3ic 3o 3t 4ardi 4hard 4i 4schalk 3z 2udeau 4reau 5iaan 4y 3gh 3in 3lart
4d 5en 5ing 4et 6te 3r 4dine 4ley 3veia 2vaerts 4n 4rts 3e 4a 3oni 4rcinovic 2w 3an 5s 3dy 3en 4r 3in 5s 2yal 3ette
3vaerts 2za 3zano 4i 3əlov 1raber 4her 4ill 4le 4ner 4owski 3cey 4ia 5n 3ddy 4enigo 4o 4y 3ff 4ton 3gg 3hams 4m 4n
3indorge 5ger 3jeda 3mmer 4sci 3n 4ado 7s 5ta 6elli 6h 4berg 7ry 4da 5berry 5e 6rson 5ison 5jean 5staff 5y 4ey 4ge
6r 4ier 5llo 4lund 4strom 4tham 3s 4ser 5i 5l 5o 4ty 3ttan 5on 4z 5er 5l 3u 3vatt 4elle 5r 5s 4ina 5tt 4ley 4ois
3ybeal 5ill 4er 4s 3ziani 2ba 4c 2ealish 5ly 4ney 4r 4thouse 4ves 3co 3dicak 3ear 4hy 4ley 5ish 5y 4nawalt 5baum
6erg 6latt 5e 5field 5halgh 7w 6ill 5ing 5law 6eaf 7e 5man 5ough 5span 6tein 5wald 8t 7y 6ell 6ood 4son 3gersen 4gio
5s 4o 5ire 5ri 7c 7o 6ova 5v 4son 4us 6ova 3ig 4j 4ner 4sch 3ll 3mese 4illion 3n 4ier 4nan 4z 3sham 4s 3then 3wal
2gic 3urevic 5ic 5ovac 2ialais 3bble 3ce 3der 4ley 3eco 4go 4r 4s 5ser 3feo 4fen 6th 6y 5ie 6n 7g 6s 6th 8s 3gg 5s
4oriev 4sby 3jalva 3llo 3maldi 7o 5ni 4es 4m 5er 6tt 4shaw 5ley 3nder 5le 5staff 4er 4ius 4nell 4stead 3sby 4e 4ham
4oni 4sett 5om 4t 4wold 3tsch 4ti 5on 3zzard 5le 2na 3ova 2oarke 4t 3b 3ce 3en 5endaal 6stein 4sbeck 3ff 3gan 4g 3h
3jean 3leau 3mov 3ndel 5in 4er 4lund 4roos 4skis 3ogan 4ms 4te 4ver 3s 4e 4jean 4se 5i 5man 5o 4venor 4z 3te 4h 5e
4tner 3ut 3ver 3wney 2ubb 5s 4e 5r 4isic 3ijl 3llon 3nberger 4d 5ner 5y 4er 5wald 4wald 3ver 2zetic 3incic 3nar 6ova
1schaider 4wandtner 2trein 1uajardo 3l 4andi 4tieri 3n 3rana 5to 4dado 5ia 6ola 4iento 4neri 3y 2bain 3ben 3eran
5ovic 2cci 2de 4lj 3ino 2el 3rcio 4in 4nsey 4ra 5eiro 6ra 7o 6tte 5ier 8o 5o 4tin 3vara 2ffey 2gan 3genberger
3lielmi 2ha 2ibert 3cciardini 4e 4hard 3da 4i 4one 5tti 4ry 3han 3jarro 3lbert 4d 4ford 6yle 4l 5emette 6n 6t 5on
6ry 6t 7te 6u 3mond 3n 4an 6e 4evan 5y 4izzelli 4n 5ane 5ess 4yard 3on 4t 3ry 3t 4art 4errez 4ierrez 3zar 2la 4n 4ti
3brandsen 7son 3ick 3lberg 4edge 5ry 5tt 7e 5y 4ickson 5on 4o 5tta 3otta 3yas 2mbs 3m 3p 4rich 2ndersen 7on 3n
4arsson 4ell 6s 4ing 3pf 2o 2pta 4on 2rganus 3ley 3ney 3rola 3ule 2se 4v 3man 3s 4oni 3tafson 7son 5vson 7son 4in
2te 3h 4ridge 6e 3ierez 6res 8z 4rrez 3knecht 3man 6n 3owski 3shall 2yer 4tte 3nn 3on 4t 3ton 2zik 3man 3zi 1waltney
2in 4n 2yn 4n 1əncəli 0haack 3g 3k 4enson 3pala 5nen 6iemi 3r 3s 4e 3taja 3visto 2ber 5l 5man 3ha 3ib 3lak 6ova
3suda 6ova 2cibəyli 7ov 4zadə 3kbarth 4ett 4l 5er 4man 4ney 4worth 2ddad 4en 4ix 4ock 5x 3en 4rer 3field 3ley 4ock
3not 3rovic 3sell 3zic 2efner 3ngreve 3ring 2fer 3fey 4ner 4ord 3ley 4iger 3ner 2ga 4man 4n 5s 4r 5a 5ova 3berg 3e
4dorn 4man 7n 4n 5doorn 4r 5man 5ty 3g 4erty 4ins 4lund 4strom 3ins 3ler 4und 3man 3ood 4pian 3strom 3ue 3y 2hessy
3n 4e 2icead 3d 4en 5r 4inger 3gh 5t 4ler 3le 3n 4aut 4dl 4es 4zl 3re 4ston 3slip 3th 2jdu 3ek 3kova 2k 3ala 4nsson
3e 4s 3karainen 4er 4inen 2lak 5ova 4mbek 4pir 4sz 3bert 3comb 3deman 5r 3e 4s 4y 3facre 4ord 3iburton 3laday 5han
5m 5nan 4berg 4e 5nbeck 5r 5tt 5ux 5y 4gren 4iburton 5day 5gan 5k 5n 6an 5ssey 4man 4ock 5ran 5way 6ell 4um 3me
3onen 3pen 5rn 4in 3sdorf 4ey 4tead 6d 3terman 4on 3uska 6ova 3varsson 4erson 4orsen 7on 2mada 4lainen 4n 5n 3blen
6ton 5in 5y 4rick 6ght 4urg 4y 3dan 3el 4r 3il 5l 5ton 3ler 5tt 4in 3m 4ack 5n 5r 6strom 4el 5rer 6l 7e 6s 5s 5tt
4itt 4ock 5n 6d 7s 6s 6tree 3ner 3on 3pson 4ton 3rick 2n 3afin 4k 5ova 3bury 3ce 4hett 4ock 3da 4e 5l 4l 5er 6y
3eberg 4graaff 4k 5ova 4l 4r 4s 4y 3ford 3ger 3kard 4e 5rson 4ins 7on 4o 5va 4s 3ley 4in 4on 4y 3n 4an 4card 4ecart
5man 5r 4igan 5nen 6g 4on 4ula 5m 3over 3rahan 5tty 3sard 4com 4el 6l 6man 5n 4ford 4haw 4ley 4on 4sen 7s 5on 3us
5ek 7ova 5ka 6ova 5ova 3zek 5l 6ova 2ppel 2ra 4da 4hoe 4ldsson 5son 4n 4pin 3baugh 4er 6t 4in 5son 4our 4uck 3dage
5way 4castle 4ee 5man 5r 5sty 4i 5e 5man 5n 6g 5son 4man 4nett 4rick 4t 4wick 3en 4wood 3gadon 5n 4er 5tt 4is 4rave
8s 5eaves 5ove 3i 4ng 3jo 4u 3ker 5y 4in 6s 4less 4ness 4onen 3less 5y 4off 5w 3man 4er 4on 3n 4den 4ed 5r 5tt 5y
4ish 4ois 3o 3pe 5r 4ole 4ster 3r 4ah 4el 6l 6son 5r 4igan 5hy 5ll 5man 5ngton 5s 6on 6s 4od 5ld 5p 3shaw 5barger
5man 3t 4e 5r 4field 5ord 4ig 6an 5kainen 5n 6g 4l 5e 6y 5ine 4man 7n 4ness 6tt 4on 4sell 5field 5horn 5ock 4t 4ung
4well 5ick 4y 4z 5ell 5ler 5og 3van 6ek 8ova 6ova 5rd 4ell 5y 4ill 7e 5n 3ward 4ell 4ood 2san 3brouck 3cak 6ova
3egawa 4laar 3h 4imoto 3kell 5tt 4in 6s 3lam 5uer 4er 5tt 4inger 3s 4an 4e 5l 6l 5n 5tt 4inger 4ler 4on 3tey 4ie 5ng
7s 4on 2tchell 6r 6tt 3field 3haway 4cock 4orn 3ley 3maker 3taway 4en 5r 4inger 4on 2ubert 4rich 3ck 3er 3ffer 3g 4e
5n 4h 5ey 5t 6on 4land 3k 3mer 3n 3pert 4t 3sberger 4e 5r 4ler 4man 7n 3tala 5maki 2vel 4man 4ner 4rinen 5ty 3iland
3licek 6kova 3ran 6ka 7o 8va 6ova 2we 4s 3ke 5s 4in 6s 7on 4s 3ley 3n 3orth 3s 3thorn 8e 2yashi 3craft 3del 5n 4on
3ek 4r 3good 3hurst 3les 3man 3ne 5r 5s 4ie 3re 3se 4lett 3ter 4on 3ward 4ood 5rth 2zelip 5tine 6on 5wood 4n 5veld
3lett 5wood 5y 3zard 1eacock 3den 4ley 4rick 4y 3ffy 3ld 4ey 4y 3ney 3phy 3rn 5e 5s 4on 3sley 3th 5erly 4on 3vener
5y 4ner 2bb 3enstreit 4rling 5t 3ron 2chenberger 4t 3imovic 3k 4art 4el 5r 5tt 4ler 4man 4o 5va 4stall 2dberg 3den
5rman 3gepeth 3igan 4n 3ley 4und 3man 3rick 3strom 2elan 3nan 4ey 3r 4e 4kens 4schop 3ter 2ffernan 6on 4ington 4ner
4ron 3ley 4in 3ner 2garty 3de 3edus 4r 3g 4arty 3land 3wood 2hir 3l 2id 4el 6berg 5man 5n 6reich 5r 6scheid 4rich 7k
4t 3er 3gl 3jman 7s 5en 3kkila 6nen 3l 4ig 4man 3m 4an 6n 4bach 3ndl 4e 5man 8n 5n 4onen 4richs 4s 5alu 5oo 4tz 6e
7lman 4zl 3rens 3se 5r 4kanen 4ler 4s 5enberger 3tman 7n 4z 5man 2kker 2ldt 3enius 4ry 3fer 4rich 3geson 6son 3in
3land 4berg 4emans 5r 5voort 4gren 4man 4strom 4wig 3man 4erhorst 4ick 5nen 3sel 5n 4ley 3t 4on 3vey 3wig 3y 3zer
2mbree 4y 3enway 4tsberger 3ingway 3men 5r 4ing 3pel 5nstall 4hill 2nault 3ck 3dershot 7on 4ley 4on 4ren 5ick 8s 9on
8x 6ks 8e 6x 5y 3ebry 4gar 5han 4ry 4y 3g 4en 3in 3k 4e 5l 4le 3ley 4ine 3n 4ebry 5lley 7y 5n 5ssey 7y 4ig 6an 5nger
7s 8son 5s 3rard 4icks 8on 5ksen 7son 5on 5ques 8z 4otte 3schel 4el 5n 4haw 4lee 6r 6y 4on 3tges 4horn 4on 4schel 4z
2pburn 3enstall 3ler 3ner 3p 4ner 3worth 2r 3aghty 4s 4ty 3bst 3don 3edia 4ford 4mans 4tik 7ova 4ward 3ing 4ty 3lihy
3mans 7en 7on 7son 4ighausen 4osilla 9o 3n 4adez 5ndes 8z 7o 4don 4on 3od 4ld 4n 4ut 5x 3ranz 4ell 5n 5ra 6o 4ick 5n
6g 7ton 4man 7n 4od 5n 3sey 4h 5berger 5ey 5man 4om 3tel 4rampf 4z 5ler 5og 3vas 4e 5y 4ia 3zberg 4ig 4og 2ser 3kett
4in 3lin 3s 4e 5r 4ion 4ler 4on 3ter 4on 2therington 4ur 3rick 3tinger 4ner 3zel 2uer 5tz 3ser 2ver 2wes 4tt 3itt
3lett 3son 2xspoor 2y 3drich 4ərli 3er 3len 3man 6s 3ne 3vaert 3ward 4ood 1iatt 2bbard 4ert 4itts 4ler 4s 3ner 2ce
3k 4erson 5y 4lin 4man 5on 4ok 5x 4s 5on 2dalgo 2ebert 3rro 4s 3tala 5nen 4t 2ga 3bee 4y 3don 3gin 6botham 6s 7on 4s
3ham 4fill 4land 4smith 4t 5ower 3ley 3uchi 4era 7s 2lburn 3debrand 9dt 9t 5rbrand 4reth 3e 4man 4s 3ger 3lard 4e 5n
6brand 5r 6y 5y 4house 4iard 5er 5ker 5s 4man 4yard 5er 3mer 6ova 3son 3tner 4on 4unen 4z 3yard 2mes 3melbauer
2nckley 3derliter 4man 4s 3er 5man 4s 3ic 3kel 4le 6y 4son 3man 3nant 4enkamp 5y 3ojos 7a 3richs 3shaw 4on
3terberger 6egger 6leitner 4on 4z 5e 3z 4e 2ott 2pp 4le 4s 2rano 3d 3es 3sch 6man 9n 4h 4t 3t 4h 3vonen 2se 4r 4y
3hon 3le 3ton 2tchcock 5ens 3e 3t 4le 3z 2vely 2x 3on 3son 1jalmarsson 2elm 2ort 1ladka 5y 3vac 6ik 8ova 6ova 2inik
6ova 4ka 5ova 1oadley 3g 4land 3ng 3r 4au 4d 4e 5au 2ban 4rt 3bs 3dy 3good 3son 2cevar 3h 4leitner 4reiter 4stetler
3kaday 4enberry 6smith 5r 5tt 4ing 4man 2dak 4pp 3der 3el 3gdon 4e 5s 4in 6s 4kins 8on 4son 3l 3nett 3o 3son 3za 4ic
4ova 2edemakers 3fer 4t 3hn 5e 3ks 5tra 3len 4scher 3ppner 3rner 4r 3y 2fbauer 3er 3f 4er 4man 7n 3ig 4nger 3ler
3man 6n 4eister 3statter 5etter 2gan 5s 3berg 3e 3g 4an 5rd 4e 3le 4inger 4und 3sett 3ue 2hl 3man 3n 2isington 2ke
3kanen 2lahan 4ppa 3bert 4rook 3cik 6ova 4omb 7e 3daway 4en 5rman 4ren 4sworth 3eman 3ford 3gate 4ersson 4uin 3ic
5ek 7ova 5ka 6ova 5ova 4field 4k 5ova 4man 3l 4aday 5nd 7er 7sworth 5r 6s 5us 5way 4e 5man 5n 6beck 5ran 5y 4iday
5er 5field 5man 5nger 7shead 8worth 6s 5s 6ter 4man 4oman 6on 5n 5way 6ell 4ywood 3m 4an 4berg 4es 4gren 4quist
5vist 4strom 3ohan 4man 4painen 3quin 3sey 4inger 4t 5ein 6n 5on 3t 4e 5r 4haus 5uis 4man 4on 4z 5claw 5man 3ub 5ec
7ova 6k 7ova 5ka 6o 7va 5ok 6va 5y 3voet 3yfield 3z 4apfel 4enbecher 5r 4inger 4knecht 4l 4man 7n 2m 3an 3es 2naker
4n 3da 4eveld 3ea 4ycutt 3g 3ig 4ng 3kanen 2ogers 3ker 4s 3ley 3per 3se 5r 4ier 3ten 4s 3ver 2pes 3kins 3p 4e
5nbrouwer 4ing 4s 3son 3wood 2ra 4cek 5kova 4k 5ova 4n 3d 3e 4mans 3gan 3l 4e 3mann 5zabal 3nback 5eck 6rger 5uckle
4e 5r 4ich 6k 5g 5ng 4sby 4ung 4yak 3owitz 3rell 4ocks 3sley 4tman 3ta 4on 3vat 6ek 6h 7ova 6ic 7nec 3witz 2sae 3e
4y 3ford 3ier 3kin 6g 6s 7on 3ler 5y 3mer 3p 3s 4eini 3tak 6ova 4e 5tler 6ter 2taling 3chkiss 3t 4inger 3z 2u 3ben
3chens 5in 7s 4k 3de 4ijk 3gardy 4h 5taling 6on 3k 3le 4ihan 3pt 3rican 5gan 5hane 3seknecht 5l 5man 5r 4ley 4man
4ton 3tz 2ve 4l 4y 3is 2warth 3e 4ll 6s 4r 5ton 5y 4s 3ie 4ngton 3land 4e 5tt 5y 3se 5r 3ton 3ze 2xie 2y 3e 4r 3le
3os 3t 2z 3a 3jan 3ova 1rabar 3nic 4j 3sko 6va 4tinski 2dlicka 7ova 2en 2ianka 6ova 3bar 4ernik 3c 4ova 2mo 4va
2obon 6ova 3vat 2sak 2uba 4y 3ska 5ova 4ovska 8y 2vojic 2zenjak 1sieh 2u 1ua 3ng 3rd 4t 2ba 3bard 4ell 5rt 4le 4s
3el 4r 5ts 6y 3in 3ler 3mann 3ner 3ova 2ck 4abee 6y 4ins 4o 5va 4s 5tep 2dacek 7ova 4k 3dleston 3ec 5ova 3gens 4ins
3kins 3nall 3ock 3son 4peth 2ebner 3l 3mer 3rta 6s 3t 2ff 4aker 4ine 4man 4ord 3nagel 6l 2ges 3gard 4ins 3hes 5y
4ley 4s 3ley 3uet 4ley 2hn 3tala 2i 3e 3jben 5rechts 4s 4zing 3sman 3tt 3zar 4enga 2kill 2lbert 3ett 3ing 6s 3jev 3l
4inger 3me 3s 4e 5y 4houts 4kes 4t 3t 4gren 4man 4s 2mbert 4let 3e 4r 4s 3iston 3mel 6l 5r 4ətov 3phery 5reys 6ies
2nd 4ley 4t 3eycutt 3g 4ate 4erford 3ley 3nicutt 3saker 4berger 4icker 5nger 4ucker 3tington 4ley 4sberry 5man
3ziker 2ot 4ari 3vinen 2pka 4ova 3p 2rd 3lbert 5urt 6t 4ey 4imann 3sey 4t 3tado 4t 3witz 2s 3ak 5ova 4r 5ova 3by 3e
4by 4k 5ova 4man 4ynbəyli 6li 6oglu 7v 8a 3k 4a 4ey 4ins 4ova 3man 3njak 3o 4n 4va 3s 4ey 3t 4ak 6ova 4ed 4on
2tchcraft 5ens 6rson 6son 5ings 7s 8on 6son 3er 3h 3sell 4on 3t 4a 4er 6er 4o 5n 5va 4unen 3zler 2urdeman 3skonen 2x
2ybrechts 3ghe 3nh 3s 4mans 1wang 1yatt 2de 4n 4r 2er 2land 3er 3ton 2man 3el 4s 2nes 3man 2pes 2sell 3lop 2tonen
3tinen 2varinen 3onen 1əsənov 5zadə 0iacobucci 4velli 2danza 2go 2nnelli 4otti 4ucci 5zzi 1bacache 3nez 3rra 2orra
2rahimbəyov 7li 7oglu 8v 9a 1cenhour 2kes 1ddings 2risli 5oglu 1glesia 7s 2nac 4tjev 2o 3e 1halainen 2nacak 7ova
1kard 2eda 2ner 2onen 1ldirimoglu 2er 3s 2ic 3ff 3jic 3novic 2jin 2les 2ves 1mai 3nzadə 2bert 2el 3s 2hof 5f 2ler
2monen 2pastato 2rich 6ova 1nabinet 2ce 2fante 6ino 2galls 3ersoll 3ham 3le 5s 4is 3oldsby 3raham 5m 5ssia 3varsson
2iesta 3guez 2man 2nis 5s 3ocent 8i 3seadun 2ostroza 3ue 4ye 2sley 2teriano 5minei 9lli 2zaghi 3unza 1onescu 3ita
2ppi 2rio 1ppolito 1qbal 1raheta 2by 2eland 2iarte 3ck 3sh 3zarry 2vine 5g 1saacs 6on 3bəyli 3ksen 5on 5son 3xanli
2bell 2ella 3nberg 4hour 3r 4n 2ham 3ee 3mael 2lam 4s 3er 4y 2mail 4yilqizi 2om 3n 2raelsson 2sa 4c 1ten 2o 2urra
1ustas 1vancan 4dic 4ov 6ic 3rsson 3sk 5a 5ova 2ers 5en 5on 4y 3s 3y 2ie 2sic 1yengar 3r 1zaguirre 2quierdo 2zo
0jaakkola 4son 3nson 4us 3skelainen 3tinen 2blonski 2ceps 3kman 4s 5on 3o 4bi 5s 6en 6on 6son 5y 3quemart 7in 6t 6z
5ot 3uzzi 2dot 4ul 2eger 3n 2fari 3fe 2garinec 3ecic 4r 3ger 6s 4i 2hn 4ke 2ime 5s 3n 2kab 3el 4s 3obsen 6on 6son
4pec 5ovic 4vac 5ic 5lev 6jevic 3uba 5cek 8ova 6ik 8ova 6o 7va 5ec 7ova 6k 7ova 5ik 7ova 5ka 6o 7va 5ova 6wski 4pic
4s 2lakas 3bert 3onen 4vec 7ova 2mar 3erson 4son 3ieson 4son 3nik 2nak 5ova 3ca 4ek 6ova 4o 5va 3da 4l 4ova 4reau
3ecek 7ova 5ka 6o 7va 4kova 4s 4zic 3g 3i 4cki 4k 5ova 4sch 3k 4a 5uskas 4e 4o 5va 5wski 3ney 3o 4cko 7va 4sek 7ova
5ik 7ova 5ka 6o 7va 5o 6va 4usek 4va 3s 4dr 4e 5n 4on 4se 6n 7s 5on 3tosovic 9cova 4sch 4ti 4z 5en 3uary 4s 3zen
2que 5s 5z 2ra 4millo 3boe 3c 3dine 3man 4on 3nagin 4igan 3os 5ova 5z 3rard 4ell 5tt 3v 4e 5la 5npaa 4i 5nen 5s
2sinski 3prica 3so 2uhiainen 3k 3me 3nzema 7s 3regui 2vornik 2worski 2yaraman 3nes 1dotte 1eanbaptiste 4louis
4pierre 4s 2dlovska 8y 2fcoat 3fcoat 4eries 6s 7on 4ords 4reys 5ies 3imov 2ggij 3orov 2itz 2kel 2lavic 3en 3ic 4nek
5kova 3ks 3lison 4yman 2mison 3ric 2ndek 6ova 3ewein 3kin 6s 7on 4o 4s 3ner 5y 4i 5ng 7s 3sen 4on 4sen 3t 2on
2ppesen 4sson 3sen 4on 2reb 4z 3ic 3kins 4ovic 3makov 5n 3nigan 3sov 3usalem 2ske 3persen 3see 5l 5n 4op 4up 3ter
2ter 3t 4on 2wett 2zek 3kova 1ha 3veri 2onson 1iang 2lani 3es 2menes 6z 4rson 3inez 4son 3merson 2n 3ks 2ron 1obe
3stl 2chems 3kel 2dar 2esaar 2fre 2gi 2hal 4nnessen 9on 6sen 5sen 6on 6son 3ns 5en 5on 5son 5ton 8e 3son 2iner 5s
2kela 3inen 2licoeur 3ley 4iff 3y 2mini 2nasson 4ta 5ova 3ckheere 3e 4s 3jic 3ker 4man 3son 4son 2os 4ten 2pich 3lin
2rda 4en 3gensen 7on 3link 3quera 3risen 2sefsson 4phs 7on 4y 3hi 3ipovic 3lin 4yn 3t 2ubert 3rdan 2vanovac 7ic 3e
4r 3ic 4nelli 2wers 4tt 2yal 3e 3ner 2zic 3wiak 1uarez 2dah 3d 3kins 2en 3rgens 2govac 2hanson 4sz 3kam 3l 4in 2kic
2liano 4en 3liard 3y 2mper 2n 3as 5ova 3ck 5en 6r 3eau 3g 4fer 4wirth 3itz 3ken 5r 4ins 3tunen 2rado 4s 5ova 3ca 4ic
5na 6ova 4o 5va 3ekova 4sko 4tic 3gens 7en 7on 3ic 4k 5ova 4na 5ova 4sic 5son 3jevic 3ko 5va 6ic 8ova 3lina 3rijens
2sino 3sila 3tis 2ttner 2vara 3onen 0kaar 4ik 3sik 2bus 2czmarek 4or 2dak 5ia 3e 3ija 3lec 6ova 2elin 2fer 2gan 3er
3i 2hkonen 3l 4e 5r 4ina 3n 3r 2ikkonen 3l 3n 4dl 4ulainen 4z 3rys 3ser 2kar 2la 4mees 4n 5jos 4zic 3b 3cher 3da
3eja 5s 4r 3in 5ak 7ova 5in 5owski 4sh 5ka 6y 4ta 3jula 5rand 5ste 5vee 3la 5s 6te 4en 5rt 4io 4strom 3m 4an 4us
3nina 6s 3tenbock 7runner 6egger 3vaitis 4elis 5nas 2m 3arainen 3bs 3dar 3en 3inski 7y 3m 4er 6er 3p 4er 4s 2n 3agy
3da 3e 4pa 5s 4rva 4shiro 3g 4as 4ley 4ro 4ur 3ia 5k 6ova 4ski 3kaanpaa 3nan 3ode 3t 4er 4ola 2o 2padia 3eller 3oor
3p 4el 4ler 3ur 2r 3a 4gic 4m 5arko 4n 4s 3cher 3dos 3els 3g 4e 4l 3hu 5nen 3ier 3jalainen 3ki 4kainen 4lina 7s
3lberg 4e 4in 4ovic 4sen 5on 5son 5trom 3melic 3n 4er 5s 4ik 4s 3ova 3p 4e 4inski 4ov 4pinen 3r 4er 4o 3st 3ttunen
3u 4l 5ova 4za 3vinen 4onen 3z 2s 3ak 3e 4l 4maa 5ets 4r 3h 4yap 3k 3parova 4er 3s 3telic 5n 5r 4ner 2tes 3hagen 3ic
3ona 3tai 3z 4er 4man 2ucic 3ffman 8n 4man 7n 3l 4ina 6s 3pas 4pila 6nen 3r 3tz 3zlaric 2valiauskas 4nagh 6ugh 4sch
7ova 2wakami 4moto 5ura 2ya 3lor 3s 4er 2zakov 3ikova 3lauskas 1ea 3ch 3dy 3ley 4ly 4ty 4y 3n 4e 5y 4y 3pock 3r 4ney
5s 4se 4y 3sler 3ting 4on 3veney 6y 2ck 2e 3ble 3ch 3fe 5r 4fe 3gan 3han 3l 4an 4e 5r 5y 4ing 4s 4y 3naghan 5han 5n
4e 5r 5y 4um 3r 4y 3s 4e 5e 4ler 3ter 4on 3ver 6s 2ffer 2gler 5y 2hl 3oe 2ifer 3ghtley 3jser 4zer 3l 3m 3nanen 3per
3ser 4ler 4ter 3thley 4t 2lch 3der 3ecic 4kovic 4men 3ic 3l 4am 5r 4eher 5ms 5r 6man 5tt 5y 4iher 5ng 5son 4ner 4o
5gg 5va 4s 4um 4y 3m 3o 4va 3sch 4o 5n 3tenie 4ner 4on 4y 3vey 2mble 3mer 6er 3p 4er 4f 4painen 4ton 2ndall 4ig 4ra
5icks 5ova 3is 4z 5ova 3lan 4on 3na 5mer 5rd 4eally 5dy 5ll 7an 7y 5mer 5r 6son 5tt 5y 4ison 4on 3sy 3worthy 3yon 2o
3gan 4h 5an 7e 3han 6e 3ugh 3wn 2phart 3ler 5y 4inger 3ner 3pler 2r 3anen 3ber 4y 3ekes 5ovic 3foot 3ger 3in 5s
3khof 7s 3ley 4in 3mody 3n 4an 4er 5y 4s 3ova 3r 4ick 5gan 5sk 3schbaum 9mer 6en 4ey 4h 5aw 5ner 4ten 6tter 3ville
3wick 5n 2skinen 5talo 4ula 3ler 3sel 4inger 4ler 3ter 6son 4ner 2tcham 5um 3el 3ner 3ola 3ron 3ter 6er 6man 4ing
4ler 4ner 4unen 2udel 2vane 3ille 3o 2yes 3s 4er 1halil 4sa 3n 4g 4na 3re 3tri 2osla 3ury 2urana 1ibbe 4y 3e 3ler
2dd 4er 3well 2efer 4fer 3l 4y 3r 4ane 6s 4nan 3sel 2fer 2ger 3ht 2ik 3l 3s 4k 2kas 3er 3kas 2lawee 3bane 4ourne
4ride 4urn 4y 3coyne 3day 4ea 4uff 3e 4y 3foyle 3gallen 7on 4o 5re 3hooly 3k 4enny 3lebrew 5en 5n 4gore 4ilea 5nger
7sworth 5on 4ooly 5ran 5ugh 8ry 3martin 4er 4ore 3patrick 4elainen 3roe 5y 2m 3ball 4ell 5r 6lin 9g 4le 6r 4rel 7l
5o 6ugh 3e 4s 3mel 6l 4ons 3pel 3sey 3ura 3zey 2naghan 4han 4rd 3cade 5id 5nnon 4er 4h 5eloe 6n 3del 5r 4ig 4le 3et
3gery 4sbury 5ley 5ton 3iry 3k 4ade 4ead 5la 3lan 5w 4en 5y 3man 3nane 5rd 4e 5ar 5gan 5r 6k 5y 4ison 4on 4unen 4y
3sch 4ella 5r 5y 4ler 6y 5ow 4man 3tzel 5iger 3yon 3zel 5r 2pp 2raly 3by 3ch 5er 5mair 5ner 5off 3illov 4ncic 3k 4e
5ndall 4ham 4land 5ey 5in 4man 4patrick 4sey 4wood 3penstein 3s 4ch 6baum 6ner 4ipuu 4s 4t 3tley 4s 3wan 4in 2s 3el
5a 5ova 4r 3h 3ka 3man 3ner 3sane 4ee 5l 6jov 6l 4inger 4ner 3t 4ler 4ner 2te 3son 3t 4el 6son 5rman 4inger 4le 6son
4redge 6ll 4s 3zler 4mann 2uru 2vela 4tt 3i 4lo 4mae 6ki 4nen 5iemi 4stik 6o 2zer 1jaer 2eldsen 4lberg 1lahn 3mmer
3nac 3pac 6ova 4ka 5o 6va 4p 5er 3r 4ic 5n 3sic 4s 5en 5on 3tt 3usen 5ner 3vina 6s 2eckner 3iber 5rink 4jse 4man 4n
5er 5man 5schmidt 4st 3m 4encic 6t 4m 4t 3pac 6ova 3rks 3ybrink 2iebert 3gl 3ma 5cek 8ova 5s 4ek 6ova 4ko 6va 7ic
9ova 4o 5v 6a 3ne 4g 5beil 5elhofer 6nsmith 6r 5ler 4k 3zan 6ova 2ock 5er 3iber 3koc 6ova 3packa 7ova 4p 5ert 3s 4s
3tz 2uesner 3g 4e 1naack 3pp 5e 3rr 3uer 4s 5s 2eafsey 3cht 3eland 3ip 3pp 5er 3z 4evic 4ovic 2ickerbocker 3ghten
6on 6s 3ha 4ova 3pe 4p 3sely 4ley 2ockaert 3ers 3p 4f 4p 3tt 5s 3use 3wles 5ton 3x 2udsen 5on 4tson 3f 3pp 3th 4sen
5on 5son 1obal 4yashi 3elt 4r 5l 3ielska 8y 2c 3ak 5ova 4n 3evar 3h 4er 3ian 6ova 4jancic 4s 5ova 3jancic 3k 4a 4o
5va 3ova 3sis 3ur 5ik 7ova 5ova 3ərli 2dric 2ehler 4n 3ller 3man 3nig 3pke 4p 3rner 3ster 2f 3fler 3ler 2ga 4n 3er
3ler 3ut 2h 3an 3l 4er 4i 4meier 3n 4en 3r 3ut 3v 2istinen 3t 4la 3v 4isto 4ula 5nen 2k 3alj 4novic 3k 4o 5nen 3ol
4ric 2lar 5ec 5ic 5ova 3b 4l 3ega 4hmainen 4n 5c 4sar 7ova 5nik 3ic 3k 3l 4ar 6ova 4er 4man 7n 3m 3nik 6ova 3odziej
3ster 2mar 5ov 3ljenovic 3ulainen 2nda 4o 4ratjev 3ecna 6y 4n 3g 3ieczny 4g 4ng 6s 3opka 6ova 4valov 3radova 3sbruck
4tantinov 3t 4tinen 2o 3l 3n 4ce 4s 4tz 3p 4man 3rt 2pa 3ec 5ka 6y 3f 3jar 3onen 4va 3p 4a 4el 5nsteiner 4ova 2rando
3cak 6ova 3ec 5ova 4n 4t 3honen 3man 3n 4egay 3ol 4sec 3pal 4ela 4i 3sman 4tman 3t 4e 5lainen 4h 4man 2s 3anovic
3cevic 3hy 3i 4c 4nski 4r 3kela 4i 5nen 3onen 3s 4ler 3t 4anic 4elac 5n 5r 4in 4ka 5ova 4olzin 4rec 7ova 2ta 3hari
3ian 6ova 3kas 3nik 3ov 3t 4er 3ulic 7ova 2uba 4ova 3ry 2vac 5ek 6vic 5h 5ic 6k 7ova 5ova 5s 4l 5cik 8ova 5ova 4nen
4r 5ova 2wal 5czyk 5ewski 5ski 7y 2za 4cek 7ova 5ik 7ova 4k 5ova 3elj 3iol 3lov 5wski 3ma 4on 6ova 3ova 1raatz 3bbe
3ch 4k 3emer 3ft 3hn 3iner 5z 3jcar 5i 6ova 6r 7ova 5o 6va 7ic 9ova 4ewski 4icek 8ova 4nc 3ker 3l 4ik 6ova 4j 5evic
5ic 4l 4ova 6ic 8ova 3mar 6ic 6ova 4berger 4er 4mer 3njc 4tz 4z 3snohorska 9sky 4tina 7s 3tochvil 9lova 4z 5er 3us
5e 5haar 5ova 5s 3vitz 3wczyk 3xner 2celic 2ebs 3cke 3ger 3hbiel 3ider 5l 4n 5er 4tzer 3jcova 3ll 3mer 4ser 3nn 3ps
3sge 4lina 7s 4onja 4s 3usel 4tzer 4zer 2ick 3ebel 4g 5er 5l 4ns 4r 4va 5ina 7s 5s 3isa 3ner 4g 3sh 5na 7murthy 7n
4tensen 8son 5iansen 9son 5of 7fersen 9rsson 7ova 3vec 3z 4an 6ova 4ik 6ova 4ova 2oeger 4ker 3ger 4h 4man 3hn 3k 4er
3l 4l 4ov 3m 4er 3n 4berger 4e 5nberg 4steiner 3on 3pf 4ilak 8ova 4p 3tak 6ova 3use 4t 2pan 2sanac 2ueger 3g 4er
4lov 3ll 3m 4ina 6s 4m 3ns 3pa 4ova 4p 3schwitz 4e 3ze 2zelj 3naric 1ubec 5ova 4k 5ova 3iak 4cek 7ova 5ka 6o 7va 4k
5ova 3ko 5va 3o 4va 2cera 5ova 3harski 3ic 2drjavtsev 2ebler 3hl 4n 5er 3ster 2ffa 4ova 2gler 2har 3l 4man 7n 3n
4ert 4s 2ijpers 3lenburg 3per 6s 3sma 3t 2jala 4wa 5ski 3undzic 2kkonen 3ucka 2la 4s 3ick 4k 5ov 6wski 3karni 3l
3mala 3p 2mar 3er 3mer 3p 4ulainen 2na 4c 3da 4ova 4zina 7s 3en 3g 3ingas 3ka 4el 4le 4ova 3ova 3tz 3z 4e 2o 3smanen
2pa 3ka 4o 5va 3ova 3sjak 2rg 3ian 3ki 3land 3m 3onen 3th 4oic 4z 3uc 5ova 4villa 3vits 3z 4mann 2s 3a 3cevic 4h
3hner 3ka 4ova 3nir 6ova 3o 4va 3s 2tcher 3sar 3t 3z 2us 4e 5la 4ik 5sto 4k 2vezdic 2ykendall 2zma 4ic 5n 3netsov
1vist 1waadland 3k 3n 2iatkowski 2ok 3n 4g 1yler 4s 3lonen 2ne 2sel 5a 5ova 4r 2te 2zer 1ərimli 5ov 7a 5zadə
0laakkonen 4so 6nen 3n 4e 5mets 3s 3ts 2badie 5o 4rbera 5ge 5re 4s 4t 3be 3elle 4rge 3injan 3lanc 3ombard 4nte 4rde
4unty 4y 3ra 5dor 4ecque 4ie 5ola 3uda 5ova 2ca 4sse 4yo 3efield 4y 3h 4ance 5pelle 4er 4mann 3is 3ka 4ner 4o 5va
3lair 3ombe 4ste 4ur 6se 4va 3roix 5ss 2davac 3d 3e 4ck 3ner 3ouceur 3son 3ue 4ke 3wig 2enen 2fave 4yette 3ever
3ferty 5y 4oon 4ray 3lamme 4eur 3ollette 4n 5d 5taine 4rce 5est 5ge 5tune 4untain 3rance 4eniere 2garde 4sse 3e
4rweij 3ler 3o 4s 3range 4one 3uerre 4na 6s 3zdina 7s 2h 3aye 3ey 3iffe 3r 3t 4eenmaki 4i 5nen 3y 2i 3dhleis 3ghnigh
3ho 3l 3mer 3n 4ez 4g 3rd 3tinen 2jcak 6ova 4iak 7ova 3oie 2katos 3ey 3in 3oseljac 3s 2liberte 3l 4emand 4i 4y 3onde
4r 4ux 2mac 5ova 4nna 5tia 4rche 5r 6e 4s 4y 3bdin 4e 5rs 7on 6t 7h 7on 5th 4orghini 5t 6te 4recht 9s 6gt 5ight 3ere
4sch 3kin 3m 4as 4ens 5r 6s 4i 3on 5s 5t 6agne 4re 6aux 4the 5te 4ureux 3pe 5rt 4hear 6re 4inen 4kin 7s 4l 5ey 4man
4recht 3son 3y 2ncaster 4isi 4los 4tot 3da 5u 5verde 4e 5ros 6s 4graf 4in 5s 4l 4man 4reneau 6th 5um 5y 4strom 4wehr
4y 3ey 3ford 4ranchi 3g 4an 4don 4e 5nfeld 5r 6n 5vin 6oort 4ford 4ham 5orne 4lais 5ey 5inais 5ois 4ner 4ston 4ton
4worthy 3ham 3ier 4gan 3ka 4ford 4inen 4le 3ners 4ing 4on 3oue 3phear 3sberry 4ford 4ing 6k 3tigua 4z 3z 4a 2o 2pan
3e 4rle 3ham 3ierre 4ne 5ski 3lant 7e 3oint 7e 4rte 3p 4alainen 4in 3rade 3sa 2rabee 4mie 3cher 3dinois 4ner 3eau 4s
3gan 4ent 5y 4o 3imer 5ore 4os 4viere 3k 4in 6s 3mon 3occa 6o 5he 7lle 5k 5que 4sa 5e 4uche 3rabee 5naga 4ea 4ick
5son 3sen 4on 4son 3ue 3y 2s 3a 4lle 4ter 3eter 3hbrook 4ley 3ic 3key 4owski 4y 3ley 3s 4en 5ter 4ila 5ter 4nig 3ter
4ra 2ta 3ham 5n 4em 4rop 7e 3ier 4mer 5ore 3orre 4ur 3shaw 4on 3t 4a 4imer 6ore 5n 4uada 3vala 2u 3b 4ach 4er
3derdale 3er 3fer 3ghlin 3kkanen 3nay 3r 4eano 5nson 6t 5ys 4ia 5dsen 5la 5tsen 6zen 4sen 4y 3terbach 3ver 3wers 3x
3zon 2valle 7e 7y 6ie 4n 3ell 6e 4nder 4rgne 5riere 5ty 5y 3igne 4n 5e 3oie 3ric 2whon 5rn 3ing 3ler 5y 4or 3son
3ton 2xton 2yden 3field 3mon 3ne 3ton 2zar 5us 3cano 3enby 3o 1each 5man 4y 3dbetter 3hy 3ke 4s 3l 3man 4on 3nos 3o
3r 4month 4y 3sure 3th 5am 5erman 7wood 3vell 5ns 5y 4itt 4y 2ban 4r 5on 3eau 4dev 4l 4r 3lanc 3o 4euf 4n 4uef 4w
5itz 3reton 4on 4un 2chner 4uga 3lair 7e 4erc 7q 3ocq 4mpte 5te 4nte 4q 3roy 3uyer 2day 3better 3din 4on 4y 3ent
4rer 5man 4sma 4t 4zma 3ford 3onne 4ux 3uc 3wich 5th 2eb 3dom 4s 4y 3k 3man 6s 3n 4e 5y 3per 3s 4on 3t 2febre 5vre
4ver 5re 3f 4el 4ler 3kowitz 3ler 4ore 3ort 3twich 2gaspi 4ult 3endre 4r 5e 4tte 3g 4e 5tt 3ler 3nante 3ovic 3rain
5nd 4os 3uit 2hane 3ikoinen 4ste 3man 6n 3n 4er 3oux 3r 3t 4imaki 5nen 4la 4mets 4o 5la 5nen 2i 3b 4etseder 4owitz
3ghton 6y 3ja 3ker 3ninger 4o 5nen 3s 4er 4hman 4t 5er 3tch 4e 5r 4geb 4h 5ner 4ner 3va 2jeune 2land 4s 3eu 5x
3ievre 4jveld 3oup 2ma 4ire 5tre 4nski 4ster 8s 4y 3ber 4o 3elin 5le 4n 3ieux 4ng 4re 3ke 3ley 3mens 5r 4on 6s 3oine
4nd 5nier 4s 3pereur 3us 2naerts 4ghan 4han 3eghan 4han 3gauer 4yel 3hardt 6t 3ic 4han 3k 3nane 5rtsson 4on 5x 3oir
4x 3sen 3t 4ini 4z 3z 2onardi 4cavallo 4e 5tti 4g 4hardt 7tsberger 3pard 7i 3s 2page 3e 3ik 4sto 3ley 3ore 3p 4anen
4ert 4ik 3sik 6ova 2rcari 4h 5er 3ma 5n 3ner 3oux 4y 3uth 2sage 3cic 3h 4er 3ic 3jak 3kinen 4o 5var 6ic 3na 4iak 5k
4y 3perance 3sard 4man 3ter 3ure 2tcher 5worth 3elier 5lier 4ndre 3her 3o 4urneau 4va 3son 3t 4a 4iere 4ner 2u
3nberger 4g 3tgeb 2van 4sseur 4y 3eille 4ll 4nson 5thal 4que 4rett 8e 5ing 4sque 4y 3in 5e 5gston 5s 6on 4tt 3ron
2wallen 4ndowski 3ellen 6yn 3in 3ter 2y 3ba 3den 4on 3s 4en 3ton 3va 2zama 1heureux 2oir 1iang 3o 2bbey 3er 5atore
5t 3lik 2cata 3e 3ht 5enegger 7stein 3is 3on 3ul 2ddane 4ell 4le 4y 3en 3strom 2eb 4elt 5r 6man 3dtke 3geois 3kens
3n 4ard 3pa 4ina 6s 3shout 3tz 3u 3vens 2ggett 4ins 3htfoot 5le 5ner 5sey 5y 3on 4rio 3tvoet 3uori 2imatainen 3v 4a
5k 5magi 2jn 2kar 3ens 2le 4s 3ienthal 3ja 4egren 3lard 4emets 5r 5y 4ibridge 5s 4o 2m 3a 3bourg 3on 5es 2n 3ares
3ch 4k 4oln 3d 4ahl 5u 6er 4berg 5lad 6om 4e 5ll 5man 8n 5nberg 5r 6man 4fors 4gren 4h 5olm 4inger 4kvist 4ley 4mark
4ner 4o 5rfer 4quist 5vist 4roos 4sey 5kog 5ley 5trom 4vall 3eberger 7ry 4han 4s 3g 4enfelter 5rfelt 4le 4o 3hart
3inger 3ke 5r 4ous 3na 5ne 4eman 5y 4y 3quist 3schoten 5ott 4key 4ley 4ter 3thicum 4ner 4on 4z 3ville 3zy 2ovic 2pa
3e 3ford 3inski 3ka 4o 5va 3man 3ova 3p 4ens 5rt 4incott 4omano 5nen 4s 3scomb 4ey 4ky 4on 3tak 6ova 4on 2ra 3ette
3iano 2s 3enby 3h 3i 4ca 5ka 6y 3k 4a 4ova 3le 3s 3ter 4on 2tchfield 6ord 3herland 3tell 5n 5ral 4izzetto 4lefield
6john 6s 6ton 4on 4rell 3va 4ova 3win 3z 2u 3kkonen 2vengood 4rman 6ore 5otti 4say 3ingston 9ne 2zama 4na 4rraga
3otte 1jubetic 4ic 6ic 3ng 5berg 5gren 5qvist 1labres 3do 3mas 3nas 4es 4o 5s 2edo 2obet 3pis 3rens 6te 5t 2uch
1oaiza 3r 2bato 3b 3dell 3el 3o 4s 2cascio 3h 4el 5r 4lann 4ner 3kard 4e 5tt 4hart 4lear 5in 4man 4ridge 4wood 3oco
2den 2e 3b 3ffler 3hr 3p 3ra 3sch 3wen 2f 3fler 3gren 3land 4in 3tin 5s 4on 4us 2gan 4r 3gins 3han 3inov 3sdon 4ton
3ue 2h 3man 6n 4us 3r 2ibhead 4l 3dl 3seau 5lle 2j 3a 3ek 5ova 4n 3ka 4o 5va 3ova 2ke 4n 4y 3k 4en 2llar 4ey 4is
4obrigida 2man 5to 4s 4x 3bard 7i 7o 4roso 3eli 3mert 3onaco 3p 2ndon 6o 3en 4rgan 4y 3gacre 5n 4enecker 4fellow
4hena 4ino 4ley 4mire 4necker 4o 5ria 4shore 5treet 4well 5orth 3n 4dun 3on 2o 3mis 3ney 3per 3rits 3s 2per 4s 4z
3iccolo 3p 3resti 2r 3ang 6er 3ca 4h 3dan 3eal 4dan 5o 4ncin 5t 6z 7en 5z 6en 3ing 3reijn 3usso 2sa 4da 3ekann 4y 3h
3oya 3sett 2tt 4s 3z 2ucks 3den 5r 6milk 3gh 5lin 5man 5nane 5ran 6ey 6y 3nsbury 3que 3reiro 5nco 3viere 3ws 2vato
3eday 4joy 4lace 6dy 6nd 5ess 5l 4rn 4tt 6e 3gren 3in 5s 3ric 2wder 3e 4ll 4nstein 5thal 4ry 3man 3n 4ey 3rance 4ey
4ie 4y 3ther 2y 3a 3ola 2za 4da 4no 3ier 3oya 1ubbers 3in 5a 5ova 3och 3s 3y 2carelli 3chesi 4iano 3ena 4ro 4y 3ht
3iani 4c 4er 4o 4tt 3kett 5y 3us 3zak 2ddy 3low 4um 3ovisi 3wick 2ebbert 4ke 3ck 3dtke 3llen 3ngo 3ra 5s 3vano 2ff
3t 2go 2ht 2i 3bhead 3k 3s 4ead 3z 2jan 2kac 5ova 5s 4sik 3en 5s 4r 4s 3ic 4n 5ic 3k 3sa 4ic 4ova 4tina 7s 2m 3an
3breras 3i 4ste 3ley 3mus 3pkin 7s 3sden 2na 4m 3ceford 3d 4berg 5lad 4e 5en 5ll 4gren 4h 5olm 4in 4kvist 4mark 4on
4quist 5vist 4strom 4y 3ham 3n 4ey 4y 3sford 3t 2o 3ma 3ng 5o 2per 3ien 3o 3tak 6ova 4on 2que 2ria 4e 2sby 3cher 3e
3her 3is 3k 3sier 4u 3tenberger 4ig 2te 4s 3gen 3hi 4ra 3on 3s 3tenberger 5rveld 4rell 2u 3kkonen 2x 3ardo 2yckx
3ten 2z 3i 1yall 2barger 2den 3on 2ke 4s 3ins 2les 2mon 2nam 3ch 5echaun 6haun 3de 3e 3g 3n 3skey 2on 4s 2saght 2tle
3ton 1ətifxanli 0maag 3s 4ik 4winkel 3tta 2be 4rry 5y 3ie 3on 3rey 4y 2c 3a 4doo 4leavy 5len 5oon 5uso 4n 5ally 4rt
6hur 4ulay 6ey 3breen 5ide 3caffrey 5nelli 6n 5rtan 7hy 6ville 4lenaghan 4ole 5misky 5nachy 6naghy 5ol 5rmack 4rohan
4urtin 3dermott 5vitt 4onagh 7ld 6nell 5ugall 5well 4wyer 4yer 3e 4do 4gan 4k 5ova 4lgunn 4sic 4ver 5oy 4y 3fadden
5ll 5rlane 5ull 3gee 6han 4ill 7igan 5ng 6ley 6nitty 9y 6ty 4loin 5ynn 4overn 4real 6gor 5oarty 4uinness 5rk 3h 4a
5cek 8ova 6kova 5do 5le 5ta 6ova 4en 6ry 5r 4in 4nac 7ova 4o 5va 4uca 5gh 3ias 4ejewski 5l 4k 5ova 4nerney 5nes
5tyre 3k 4a 5y 4en 6na 6zie 5own 5sey 5vitt 5y 4ie 5n 6non 4le 5in 4o 5va 6ic 8ova 3lachlan 4ean 5nnan 5od 4in
4ysaght 3mahon 4illan 4onagle 5rrow 4ullan 7en 3nabb 6oe 7ola 5lly 5mara 6ee 4eela 5il 7l 5lis 4ulty 3o 4mber 4n 4va
3pherson 5ilbin 3rae 4ea 4i 3shea 4weeney 3tiernan 3veagh 5igh 3williams 3y 2dan 4r 5a 5iaga 6c 7ova 5ova 4y 3den
4ix 4ock 7s 5x 4ux 4y 3ej 5ova 4r 5a 5na 6o 4well 3igan 4sson 3ore 3rid 5gal 4uga 3sen 4on 3unic 2eda 3npaa 3ots
3rtens 3s 4alu 4tas 5re 3z 2ffei 2gal 5haes 5lanes 6on 5ova 4n 5a 5n 4r 4uran 3daleno 3ee 5an 4nnis 7ty 4r 5s 3gard
4io 6li 3i 4ll 4nn 6is 3lio 6ne 3nani 4er 5ss 4o 4uson 6son 3oon 3rassi 5th 4uder 3uidhir 5re 3wood 3yar 2h 3affey
4jan 4l 4n 5ey 4r 5aj 3e 4dy 4r 4u 3ieu 3le 5r 4um 3mood 4udov 8a 3n 4et 3on 5e 6y 5y 4od 3r 3urin 3y 2ia 3dana 4la
3er 5hofer 3llard 5et 5ot 6ux 3ne 5s 4or 4s 3o 4rano 3rhofer 4tin 3sonet 3tland 3ze 2jcen 3dan 6ova 4enic 3erus 4ska
6i 6y 4wski 3orana 3storovic 3umdar 2k 3arov 3ela 3i 4n 5en 3konen 3o 4va 6c 5ec 7ova 5ica 7ka 8y 5y 4wski 3ris
3simov 3ulu 2la 4carne 5hovska 9ky 4parte 4testa 4ve 3bon 4rough 3chow 3danado 4onado 3ec 4k 4nchini 4tic 4y 3fait
3herbe 4otra 3ick 4na 5en 5ova 6wski 4piero 4sek 7ova 4zia 3kin 3lard 4ery 5t 6t 7e 5y 4ick 5en 4on 5y 3m 4berg
4gren 4qvist 4strom 3nar 3o 4ca 4ne 6y 4of 4sev 4tt 4wney 4y 3pass 4ighi 3tais 4by 3veaux 3y 3zer 2mani 3ic 3men
3ojka 6ova 3ula 2nacorda 4han 3ce 5bo 4ha 5ester 4ia 5lla 5ni 4uso 3d 4a 5l 4el 6l 5r 6s 7cheid 5ville 4l 5a 4ujano
3er 4ss 3fredi 3g 4al 5n 6o 5t 4el 6s 5n 5s 4ino 4old 4rum 4ual 5m 5s 3hart 3i 4gault 4on 4s 5calco 3jarrez 4on 3ke
4in 3ley 4y 3n 4a 5n 4e 4ik 5nen 6g 7s 6o 5on 5ste 7o 5x 4o 5ia 4s 3ole 6sso 4s 3rique 8z 3s 4eau 5ll 4field 4illa
4ke 4o 5n 5ur 4son 4veld 7t 3tegazza 6na 4hey 4ooth 4yla 4z 3unta 3waring 3z 4anares 6o 4ella 5r 4i 4o 5ni 2o 2pp
2quet 2ra 4ble 4mbio 4ngoni 5o 5to 4s 5co 5ovic 4villa 4zzi 3burger 6y 3cacci 5no 6tel 4eau 5ron 4hal 6n 7d 7t 5etti
4il 5nek 8ova 6iak 6ko 8va 6ova 4o 5ni 5s 5tte 5ux 4ucci 5m 3den 5sic 4ones 3ecek 7ova 5hal 4kova 4nco 5zio 4s 5ca
5ova 4tic 4z 3fell 3gitova 4olis 4raf 5eiter 4uez 3ian 6i 6ova 4c 5evic 4en 4janovic 4n 5elli 8o 6tti 6z 5ger 5i
5kovic 5o 6vic 4otti 4puu 4s 5cal 3janovic 3kanjevic 4el 5rt 5y 4ham 4kanen 4l 5and 5e 6y 5und 4o 5s 6ova 5va 7c 6ic
8h 8ova 5witz 6ski 4s 4usova 3lar 5tt 4er 5y 4ier 4ow 6e 3mol 6ejo 5n 3nach 5n 3olt 4ne 6y 4s 5ova 4tta 3ple 3quardt
7t 5es 6t 7te 6z 3r 4a 4en 5ro 4inan 5ott 4o 5n 6e 5quin 4s 4ufo 3s 4ala 4den 4hall 5burn 4ic 5li 4on 4ton 3tan 6ova
4e 5l 6l 7i 7o 5ns 7son 4i 5c 5kainen 5nak 8ova 6cek 9ova 8vic 6dale 6eau 7c 8ova 7k 8ova 7lli 7s 7z 6ic 6ka 7o 8va
9ic 9icova 6ova 8ic 9cova 6sen 7on 7son 4on 6e 5rell 5va 4s 4tila 6nen 4ucci 4yn 4z 3usic 3x 3zano 4ic 4orati 2s 3ar
5ik 7ova 5ova 5yk 7ova 3cagni 5renas 6o 4heroni 4orro 3ek 4lli 4r 3hburn 3i 3ke 5ll 4ova 3lo 5v 6a 3na 4y 3on 3pero
3sa 5ro 6t 4e 5nburg 6gale 7ill 5ron 5t 5y 4ie 5n 6gill 4on 3tandrea 4en 5rs 7on 4in 4on 4rangelo 5o 6ianni 6pietro
3uda 2ta 4gne 4hlija 4mala 5oros 4na 4s 3chett 3eer 4jka 6ova 4o 5s 4r 5ne 4sa 4u 3hena 6ey 6y 5r 6ly 6ne 6s 5son
5ws 7on 4ias 7en 5esen 7on 6u 5s 6en 6on 4ol 5t 4urin 4y 3ias 6ko 8va 4c 4jas 5evic 4kainen 4lainen 5e 4s 3ko 5vic
3lock 3ney 3okanovic 4n 4s 5evic 4usek 6kova 4vina 3ranga 3son 4uda 5moto 6ura 3tarella 4e 5otti 5ra 6n 5s 6on 4hai
5es 6ws 5ies 6js 5ys 4ice 5la 5ngly 5s 6on 4ocks 5on 5s 5x 4son 5son 3ulic 6n 4rana 4s 3vejev 3z 4ke 2uch 4k 3dlin
3er 3ghan 3k 3l 4din 4e 4tsby 3ney 3pin 3reira 5r 6y 7ova 4iello 4y 3s 4t 3zy 2vra 4ic 2xey 3field 3on 3son 3well
2ya 3berry 3e 4r 5hofer 5s 3field 3hall 4ew 4ugh 3le 3nard 4e 5s 4or 3o 4l 4n 4ral 5ga 3r 4hofer 3sonet 3ton 3ville
3weather 2za 3iarz 4lescu 3on 3ur 5ek 3za 5curati 5nti 5rella 6iello 4ella 5o 4i 5ni 4occhi 5la 5ne 1cabee 3dams 4oo
5ry 3fee 3leavy 5enan 6r 5xander 4inney 5ster 4lister 4oon 4pin 7e 4unny 3nally 4drew 8s 4ulty 3rdle 4eavey 4thur
3tee 6r 3uley 5iffe 3veigh 4oy 2bean 4e 4th 3rayer 4een 4ide 5en 4oom 4yde 3urney 2caa 4be 4dam 5den 4fferky 8ty 8y
6rey 7y 4hill 4in 4leb 5l 6a 6ion 7ster 6um 4mmon 5pbell 4ndless 5e 5n 5ts 4rdle 5ley 5ney 5ra 6oll 7n 5t 6an 6e 7r
6hy 6ney 6y 5ver 6ille 5y 4skill 5land 6in 4ughan 7ey 5l 6ey 6ley 5sland 4w 4y 3hesney 4ristian 3lain 7e 5nahan 5ran
6y 5skey 5y 4ean 6ry 5ery 5llan 9d 5ndon 5skey 4intock 8n 4oskey 5ud 5y 4uney 6g 5re 6g 5skey 7y 3oin 4lgan 5l 6am
6ister 6om 7ugh 6um 4mas 5b 6s 5iskey 4naghey 8y 5key 5nell 6on 5ville 4oey 5l 4rd 5kill 6le 5ley 5mack 6ick 5ry
4urt 4wan 5n 4y 3racken 5dy 5e 5ney 6ie 6n 5ry 5w 5y 4ea 6dy 6nor 6ry 5e 6ry 5ight 4immon 4ory 5skey 6san 5y 4udden
3ubbin 4e 4llagh 7r 6en 7rs 7y 6och 7ugh 6um 6y 4mber 5iskey 8y 4ne 4rdy 5ley 5ry 5tin 4sker 4tchen 8on 2dade 4eid
4id 4niel 8s 4vid 3ermod 7tt 4vitt 3ill 3ole 4nagh 6ld 5ell 5nell 5ough 4rman 4ugal 8d 8l 6le 4wall 5ell 3uff 6ie 6y
4nphy 3wyer 3yer 2eachern 6in 3lduff 4fresh 4gunn 4haney 7non 6ttin 4ligott 6strim 4nay 5ea 4rath 5oe 6y 4vain 5een
4wain 8e 5ee 4yea 3naney 4eaney 4ry 4taggart 5ee 5ire 3vaddy 4illy 4oy 3wan 4en 2fadden 6in 4ll 6s 4rland 8e 6in
5ren 4ull 3ee 4rren 2gaha 6n 5ey 4lligly 4nn 4rity 5raghy 6igle 6y 5vey 5y 4ugh 7ey 5ran 4w 3eady 4e 5han 4hee
4oghegan 5rge 5wn 4rr 4ttigan 6rick 3hee 4ie 3ill 6icuddy 7gan 6y 5roy 4nley 5n 6is 7tty 5ty 4rl 5r 4vern 3lade
4inchey 8y 4oin 5ne 5thin 7lin 4ynn 3off 4ldrick 4nagle 5igal 4ugh 5rty 4vern 4wan 5en 6rn 3rady 5il 5ne 5th 5w 5y
4eal 5evy 5gor 5nehan 5w 4iff 4oarty 5ry 4uddie 7y 6er 3uffin 4igan 5ll 5nn 7ess 5re 6k 6l 4rk 2hale 4ney 4rry 3enry
3one 3ugh 2ildownie 4roe 6y 4vain 4wain 5ee 3neely 5rney 4nes 5is 4tire 5osh 5urff 5yre 3saac 3ver 4or 2junkin
2kaigue 5n 4mey 4y 3ean 4chnie 4e 5gan 5han 5l 5n 5ver 4llar 5vey 6y 4ndry 5iry 5na 6ey 6y 5zie 4ogh 5n 5wn 4rnan
6on 4vitt 4y 3ibben 4e 5rnan 4llip 6op 4m 4ng 5ley 5ney 6ie 7s 6on 5sey 6try 5zie 4ssack 6ick 4ttrick 3night 3own 4y
2lachlan 4in 4mb 4ne 4ren 4ughlin 5rin 4verty 4whorn 3ean 4er 5se 4igh 4llan 8d 4more 4ndon 5nan 4od 4roy 3in 3oon
6e 4ud 5ghlin 2macken 4han 5on 4kin 4naway 5is 5n 5us 4rtin 4ster 8s 4th 3eans 4namin 3ichael 4llan 6en 7r 6ian 7n
7on 6on 4nn 3onagle 4rris 6ow 3ullan 6en 6in 4nn 4rray 6ough 6y 5try 2nab 5b 5oe 4ir 4lly 4mara 5ee 4ry 4tt 4ughton
3ea 5l 6y 5r 4e 5l 6ey 6y 5s 6e 4il 6l 7y 4lis 5ly 4mar 4rney 4tt 4vin 4w 3icholas 8l 8s 4el 4ll 4nch 4sh 4tt 3ulty
4tt 2partland 7in 7on 3eak 4ek 4ters 3hail 4earson 5e 5rson 4ilbin 6lips 3olin 2quade 5id 6g 5y 4eary 5en 4ilkan
6lan 7en 5n 6n 5ston 2rae 4ney 5n 4y 3eady 4e 4ynolds 3oarty 4berts 4ry 4y 2shan 6e 5rry 4eehy 5rry 3padden 3wain
4eeney 2taggart 3eague 4rnan 3iernan 4gue 2vay 3eagh 4igh 4y 3icker 4tty 2walter 3hirter 4orter 3illiams 1eacham 5um
3d 4e 5r 4og 5r 6s 5ws 4s 3ghan 5er 3laid 4ey 4y 3ney 4y 3ra 4s 3s 4e 3ux 2bane 2cham 4ling 3iar 6ova 2dac 3ders
3eiros 4l 5lin 4ros 3ford 3ic 5i 4na 3lin 4ock 3rano 3vecka 7y 5d 6ev 6ova 2e 3ce 3han 3ker 4ins 4s 3naghan 5n 3res
4sman 4t 3s 3us 5en 2fford 2gaw 2haffey 3igan 3l 3ta 2ic 3dhreach 4inger 3er 3ghan 4s 3jer 3kle 3li 3ndl 4ers 4hardt
3s 4ch 4el 4ner 4sner 4ter 3xner 2jia 5s 3orado 2lady 4ncon 5der 5son 4ra 3by 3cher 3don 4rum 3e 4ndez 6rez 6y 4ro
4t 3gar 4oza 3i 4a 4can 5har 8ek 9kova 8ova 6er 8cik 9ikova 8ik 9kova 8ova 4llo 4n 4s 3la 5do 4en 5t 4inger 4o 5n 5r
5tt 3nick 5k 3o 3son 3ton 4zer 3ville 2mon 2na 4rd 3chaca 3de 5l 6l 6sohn 8n 5nhall 5s 5z 4ieta 5ola 5vil 5zabal
4onca 5sa 5za 3efee 4ndez 4ses 3g 4el 5s 4olo 3jivar 3ke 3nea 3on 3sik 6ova 3thonnex 4on 4zel 6r 3zel 4ies 2ra 4z
3cadante 6er 6o 5lli 5ntini 5ti 4ed 4ier 4ks 5x 4uri 7o 3edith 3gen 3icle 4da 5eth 4la 6inen 4no 4si 4wether 3kas
4el 4le 6y 4x 3lino 4o 3nagh 3rell 4iam 5ck 5field 5gan 5ll 5man 5tt 5weather 4ow 4yman 3sch 4hon 3tens 4z 3win 3z
2sa 4ric 3call 3erve 3ic 3kill 3ser 6ly 6smith 4ick 5er 5na 6g 7er 4mer 4ner 3ta 5s 4dagh 3zaros 2tcalf 7e 3ella
3heny 3ivier 3oyer 3s 3tler 4s 3z 4ger 4inger 4ler 2ucci 3nier 3rant 4er 4isse 3sburger 2yer 5s 6on 2za 3ei 3zetta
1iah 2cca 4o 3eli 4tic 3haelis 7s 8on 5lak 6ec 8h 9ova 7k 8ova 6ica 8ova 7k 8ova 6ka 7o 8va 6ski 5ud 6x 4eals
5langeli 6etti 6s 7on 4ie 6ls 8en 3kel 6sen 7on 5ns 4le 2ddaugh 4elkoop 5ndorf 4lebrook 9oks 6miss 6ton 3gett 7e
4ley 3kiff 2elcarek 4e 4ke 3r 4a 4s 3s 4ner 3ttinen 2fflin 2gliaccio 5ore 3non 6e 3ues 2halic 6k 7ova 5jevic 3elcic
5ic 3hailov 3ic 2jares 3sberg 2kell 4sell 3ic 3k 4elsen 7on 4ola 5nen 3lavcic 4ecic 4ik 6ova 4osko 8va 6ova 3ula 6k
7ova 6ndra 5cic 5ec 5ik 7ova 4s 5ova 2lam 4nesi 5o 4rdo 4s 4tic 4zzo 3bourn 4randt 4urn 3er 4tic 4voj 4wski 4y 3ian
4cic 4na 4tello 3la 5n 5r 6d 5y 4ea 5n 6der 5r 5t 6t 7e 4house 4ican 5gan 5kan 6en 6in 5man 5ner 6gton 5ron 5s 4man
4ner 4sap 7s 4wood 3mo 3ne 5r 3one 4slavic 4ta 5ic 5ova 4vac 3roy 3sap 4tead 3tenberger 7urg 2mica 3ms 3s 3un 2nac
5ova 4rd 5ik 4ya 3cey 4h 5ew 4y 3der 3et 3g 4o 4uez 5s 3has 3iati 4ch 5k 4han 7e 4x 3jares 3k 4s 3ne 5r 4ich 6k 5s
3ogue 3ter 4o 5n 4z 3yard 2ocic 2r 3abal 4glia 4lles 4montes 4nda 3eles 3o 4nov 4savljevic 3t 3əhmədov 4ləmov 2sak
3cell 3e 4r 3hler 4ra 3icher 4k 5ova 3kell 4ovic 3ner 3ra 3soni 3teal 4retta 5ik 7ova 5y 2tal 3cham 5ell 6m 5um 3ra
3schke 3t 4al 4en 5r 6egger 7r 6lehner 6mayr 4on 4s 3zel 2ura 2xon 3son 2yamoto 4shiro 2ze 4ll 6e 4r 3rahi 1lakar
2inar 6ic 2ynar 6ik 8ova 6ova 1oak 3ts 2berg 5ly 3ley 2canu 3cia 3enigo 3hlichen 3ibob 2di 4ano 4ca 4g 5liani 3lin
3ric 3ugno 3y 3zelewski 2e 3ller 3n 4en 4s 5endijk 3rman 3s 3t 2fardin 3fat 6t 4et 6t 4it 6t 2gensen 3herini 2hammad
8i 5ud 4n 5ty 4upt 3er 3ler 3n 3r 2ilanen 3r 3se 4io 2jica 3zis 6ova 2kros 6ova 2l 3den 6hauer 5r 3e 4graaf 4n 5aar
4r 4s 5ini 3in 5a 6r 7i 7o 5e 6r 5o 5s 4tor 3ler 5tt 4ica 4oy 3nar 3oney 3ter 3yneux 2mberg 2naco 4ghan 5le 4han
4rrez 3cada 5yo 4rief 3daca 5dori 5ini 5y 4or 4ragon 4uzzi 4y 3e 4ta 5te 3fort 3g 4an 4e 5r 4illo 3icelli 5o 4er 4z
3ks 3n 4ard 4et 5y 4ier 3onen 3real 4oe 5y 3salve 4en 4on 5ur 3tag 6na 6ue 5lban 6cini 6ti 7o 6vo 5na 7ri 9ello 6don
6elli 7z 6o 4e 5cchi 6ino 9s 5iro 6th 5jano 5leone 6ongo 5mayor 5negro 5ro 5s 6ano 6inos 6sori 5verdi 5z 4ford
4gomery 4i 5el 5jo 4oya 4serrat 4z 3zo 5n 2odie 4y 3k 3ne 5n 5y 6ham 8n 3r 4e 5field 5head 5r 5s 4head 5ouse 4ing
4man 4s 3s 4brugger 4e 2ra 4bito 4do 4es 4ga 4han 4is 4leda 6z 4n 5d 6i 7ni 5o 5t 6e 4r 5d 4ta 4vcik 8ova 6ova 5ec
7ova 3cillo 3eau 4e 5ls 4field 4head 5ouse 4ira 4jon 4l 5and 5l 6ato 6i 6o 5ock 4ncy 5o 4ra 4si 4tti 5z 4y 3fin 4ord
3gagni 5nti 4enstern 3iarty 4c 5ova 4llo 4n 5g 4s 5on 5sette 4ta 3lacchi 5n 4ey 3man 3nane 4eau 4ingstar 3o 4nes 6y
5ta 4sini 4va 4z 3phis 4urgo 3rell 4icone 5ll 5n 5sey 6on 6sette 8y 4occo 5ne 3se 3tati 4ensen 7on 4h 4ier 5mer 4on
3ucci 3van 6t 2sby 3ca 5rda 5to 4hino 3eley 5y 4mann 4r 3her 4ier 3ier 3kowitz 3lavac 4ey 3queda 6ra 3ser 4man
3teller 2ta 3e 4n 4s 3ley 3on 3singer 3t 4a 4e 5r 5t 4iez 4us 3ycka 6ova 4ka 5ova 3z 2ua 3lder 4in 4ton 5rie 6y 3nce
4ts 3ra 4eau 3sel 5r 4seau 3ton 3zon 2wbray 3en 4r 5s 5y 3rer 5y 4y 2xley 2y 3a 4no 3e 4r 5s 4s 3lan 4e 3nihan 2zart
3ee 3ingo 1rak 3ovic 3z 4ek 6ova 4ik 6ova 4ka 5o 6va 4ova 2iosain 2oz 4ek 1ucci 3ha 4ova 2dd 4en 3e 3ge 4way 3ri
4onja 2eller 2ganli 3ica 2hlbacher 5erger 5ock 4e 3onen 4vic 3r 2i 3js 3lleoir 3r 4head 2kai 3herjee 4opadhyay
2lcahy 5ir 3der 6s 4oon 5wney 4row 3et 3ford 3grave 5ew 3hall 5re 4ern 4olland 3ichen 3kerrin 5y 3laghan 5ly 5n 6e
7y 6y 5rkey 4en 6ax 6ix 6s 5r 6ova 6y 5t 6t 4ican 5gan 5kin 5n 6ax 6gs 6ix 6s 5s 4ner 4ooly 6ney 5ughney 5y 3queen
8y 3rain 4ooney 5y 4y 5an 3vaney 6y 4enna 5y 4ihill 5n 4y 2maw 3ford 3ma 4ert 2nari 3cie 4y 3d 4ay 4ell 5n 4o 4t 4y
3ford 3ger 4ia 4uia 3i 4z 3k 3n 4elly 3os 4z 3ro 5e 3sch 4ell 5y 4hi 4on 3z 2r 3ae 4kami 4tori 6vic 4wski 3ch 5ison
4ia 3dock 3ff 3gas 6ova 4uia 3ialdo 4llo 4n 5ova 4set 3k 3ley 3nane 4in 3o 3ph 5ey 5ree 5y 3r 4ah 4ell 4i 5eta 5hy
5ll 5n 4ow 4y 3tagh 4ha 5y 4y 3u 3vətqizi 2sabəyov 9a 4tti 4xanli 4zadə 3cet 3grave 5ove 3ial 4ck 4l 5ova 3selman
6white 5r 4o 5n 3tac 5pic 4o 5nen 3y 2tch 5ler 3h 3i 3ti 2ur 4sepp 2xtaroglu 2zic 4na 1yatt 2dlo 5va 2er 4s 2hre
2klebust 2ler 3lymaki 2natt 2res 3ick 6s 4e 2sliwiec 1əcnunbəyov 2hərrəmli 8oglu 8zadə 2likzadə 2mmədli 6quluzadə
6xanli 6zadə 0naber 3ors 2ccarato 6i 3e 3inovic 2dal 3eau 4l 4r 3i 4g 3karni 3ler 2ess 5ens 2f 2gao 4r 5ajan 4ta 3el
5e 3i 4oglu 3l 4e 3y 4s 2idu 3k 3r 2jar 3era 2kagawa 4mura 4no 4shima 4yama 3ic 2le 4pka 6ova 3l 4ey 4on 4s 4y 3ty
2m 2nda 3gle 3ney 3tz 2pier 3les 3oli 6tano 3per 4i 2quin 2rain 4ng 5jo 4simhan 4yan 7an 3cisse 3di 4one 3on 3ron
3ula 4sis 3vaez 3y 2scimento 3er 3h 3lund 3on 3sar 4er 2tale 4rajan 3h 4anson 3oli 3t 4a 2u 3ghton 4le 3jokas 3lt
3man 6n 4ov 3seda 2va 4ra 5ette 5ova 5ra 6e 7te 8te 6ia 6o 4s 3e 4z 3one 3ratil 8ova 2wrocki 2yak 4r 3lor 2zareth
5io 5ov 1ea 3ce 4htain 3gle 3l 4e 5y 4on 4y 3ncol 3ry 3se 2beker 4l 3lett 3ot 2caise 3ci 2dd 3ermeijer 3ic 2e 3ce
3dham 3han 3lan 4ey 4in 4y 3nan 3r 3s 4e 2ff 2grete 4i 5n 4on 2her 3ls 3ring 2idig 3ghbors 3hoff 3lan 4ian 4l 4sen
5on 3man 3ra 4ynck 2k 2ligan 4s 5sen 3ligan 5s 3ms 3sen 4on 2mcova 3ec 5ek 5kova 4th 2rger 3i 3o 2sbit 6t 3ler 3mith
3s 3ter 4or 2th 4erton 3o 3te 4les 6ton 4o 3zer 2u 3bacher 5uer 3feld 3gebauer 3haus 7er 4old 3linger 3man 6n 5yer
6r 4eister 4uller 3ner 3reiter 5uther 3schafer 3teboom 3ville 3wirth 3zerling 2vado 4la 6inen 4rez 3els 4n 4rs 4s 4u
3ille 4n 5s 4tt 4us 2wberg 6n 6ry 4ill 4old 4urn 6y 4y 3comb 7e 3ell 3hall 4ouse 3kirk 3land 4in 4on 3man 3port
3quist 3som 6e 5n 2y 3ens 3lon 2z 1go 2uyen 1ibali 3lett 2caise 4stro 3holes 6ls 6s 7on 3kell 6son 5ns 5rson 4le 6s
4ols 4s 5on 3odemus 4l 5au 6y 5etti 5ini 5l 5ucci 4sia 2da 2ebuhr 3derl 3haus 3lsen 5on 3man 6n 4eier 5la 5yer 4i
5nen 3rmann 3s 3to 3uwstraten 3vo 2gam 3gli 3ro 2hoe 2iranen 3t 2jman 3s 2kiforov 4tin 3lasson 3olaev 5ic 3ula 2land
3es 3les 3sen 4on 4son 2mac 3mo 5ns 3s 2pp 4er 2quille 2sbet 6t 3coromni 3evic 3hida 5mura 3kanen 3sen 4inen 3tor
2ta 3ra 4ova 3ta 4i 4o 3z 2ven 5s 2x 3on 2zet 5ic 3nanska 8y 1oack 2bauer 3les 4itt 2cera 3k 2da 2ell 2ga 3gle
3ueira 5ra 5s 2hlmans 2kes 2lan 5d 4sco 3cini 3d 3en 4s 4tte 3in 3l 4ee 3te 4ing 4y 2mm 4e 4ik 2nis 2onan 4e 4kester
3rdijk 2rac 4mbuena 3berg 4iato 4y 3cross 3d 4berg 4en 4gren 4in 5o 4lander 5und 4man 4quist 5vist 4strom 3en 3fleet
3gaard 4ren 3i 4ega 3lin 6g 3mand 7in 3red 5ll 4is 4man 4y 3sworthy 3thcutt 5ern 5ington 5rop 6up 5up 4on 3vell
3wood 2sal 3busch 3iglia 2ta 4rbartolo 3o 4va 3tingham 2urse 3siainen 2vack 4es 4is 4k 5ova 4ro 3ello 3ick 4kov 3oa
4sel 4ta 5na 6y 2wacki 4k 5owski 3ell 3icki 3lin 2yes 3ola 1uckolls 6s 2gent 3nes 2lty 2nes 4z 3ley 3n 4ally 4e 5ry
2rk 3m 4i 5nen 3əli 2sbaum 3s 4baum 8er 4le 5in 2tt 4all 4er 4ing 2ut 4inen 2yts 2zzo 1yberg 2e 2gaard 4rd 3ren 2han
2kanen 2lander 3en 3und 2man 2quist 2s 3sen 3trom 1əbibəyli 4oglu 4qizi 2rimanov 9a 2sibova 4rli 2zirli 5ova 3ərli
0oakley 3man 2tman 1bando 4ion 4non 2er 4g 4hauser 5ofer 4lander 5e 6itner 5in 4mayr 5uller 4ndorfer 4ry 4weis 2oyle
2radovic 4tov 3egon 3ian 4en 3oinin 3yan 6t 2sut 5ova 2yrne 1callaghan 3mpo 3na 3sio 2chipinti 2eguera 3nas 6ova
2hoa 3s 2onnell 6r 5or 1da 3niel 3y 2do 2ea 3gaard 5rd 3ll 3n 3rwald 3scalchi 2le 2obasic 3m 4s 3nnell 4oghue
2riscoll 2um 1ehler 2mencs 2nnen 2streich 5ovsky 1farrell 2fredi 3utt 2ner 1gan 3ra 3ta 3wa 2burn 2den 2er 2g 2ilvie
2les 5by 4tree 2orman 2rady 3en 1hagan 3lloran 3nlon 3ra 4e 2earn 2l 3er 3son 4son 2man 1ikarinen 2nonen 2spuu 1ja
3la 3nen 3ste 2eda 1kamoto 3ne 2eefe 3lley 5y 2s 3anen 1lague 3h 3nder 3te 3ughlin 4sson 3ve 2daker 3en 5burg 3field
3ham 3s 2ea 4ry 3s 4en 4k 4on 2guin 2iboni 3nger 3phant 3va 5r 6es 7z 6ria 5s 4eira 5ra 7s 6i 7o 6os 5tti 4ieri 4o
2ler 3ikainen 4la 4s 4vier 2meda 5o 3o 4s 3stead 6d 2ney 2ofsson 3ughlin 2sen 3on 3son 3zewski 2thof 2vera 2ykan
1malley 3n 3ra 2eara 2ma 1nate 2dras 6ek 8ova 6ik 8ova 6ova 4ejka 7o 8va 9ic 9icova 4us 6ek 8ova 6ka 7o 8va 6ova
2eal 3il 5l 3y 2g 2io 3sto 2o 3rato 2tiveros 1ommen 3s 2sterhek 7out 4veen 1pazo 2itz 3zzi 2lustil 8ova 2mans 2p
3enheim 9er 4rman 2rea 1quendo 3inn 1ram 3s 3v 2ban 5ic 3ison 2cutt 2daz 3enes 3onez 3una 3way 2ear 3illy 3llana 3m
3ngo 4stein 3skovic 2g 2itz 2landi 6o 3ic 4k 5ova 3ov 5ic 4wski 2man 3e 4no 3iston 3ond 3sby 2ndorff 3elas 5las 4r
2ona 3peza 3sco 4z 3urke 3zco 2r 3ego 4ll 3is 2sini 3olic 4s 3ulic 2ta 3ega 5o 6n 4se 4z 3h 3is 4z 3mann 3ner 3olani
4n 3uno 2ucov 2vis 2zechowski 1sborn 6e 4urn 7e 3urn 3y 2curo 2good 2haughnessy 3ea 3ields 4ro 2karsson 2man 3ond
2orio 2pina 2sandon 5i 3es 3ipov 3ola 2tberg 4y 3een 4r 5berg 5gaard 5houdt 8t 5man 8n 3inelli 3ler 4ing 4und 3man
3rander 4om 5wski 2ullivan 3na 2walt 1tani 2cenas 7ova 2ero 3y 2oole 2s 2t 3e 4n 4r 5son 3inger 5o 3ley 3man 3osson
2well 1ubre 2ellet 7te 2imet 2n 3apuu 2rs 2sley 2ten 3land 3ten 2wel 4rkerk 2zts 1vadia 3lle 2ellette 3rbay 5eck 6y
5y 4cash 4dijk 4eem 4gaard 4holt 4lock 5y 4man 4steeg 6reet 4ton 5urf 2iedo 1wenby 4s 5by 2ings 2nby 2sley 1xendine
2ley 1yama 3rce 4zo 5un 2er 2ler 2ola 1za 2imec 2ment 2una 0paakkonen 3l 3nanen 3p 3s 3vilainen 4ola 2bon 3st 2ccot
3elli 4tti 3heco 5r 4ler 4oud 3illo 3kard 4er 3omio 2dden 4ock 3en 3gett 3illa 6o 3manabhan 3ovano 3ro 5n 3ua 4la
2egle 3z 2fford 4rath 2ganini 5o 3el 3liaro 3notto 2hl 2i 3er 3k 3lle 6t 3ne 3rceir 3sley 3va 3z 2jer 5ova 3u 4la
4nen 4r 2k 3arinen 2l 3a 4cio 7s 4dino 4fox 4n 4u 4zzo 7lo 3en 4rmo 3ic 3ka 4o 5va 6ic 8ova 3la 5dino 7o 5res 4o 5va
3ma 5n 5teer 6ier 4er 6i 4gren 4ieri 5sano 4ore 4quist 5vist 3o 4maki 6r 7es 5bi 6o 5ino 5o 4s 4v 5a 5cik 8ova 5ic
7ova 5ova 3s 4son 3trinieri 3u 4ch 6ova 4mbo 2mic 3mer 2natta 3chal 4oast 3dey 4o 4uric 4ya 3ek 4lla 3gburn 4le
3iagua 4cucci 3key 4ratz 3nell 3os 4v 3tano 4oja 5n 3zera 2oletti 4ini 4ucci 3r 2padopoulos 4fava 4k 4ric 4s 3e
4nfuss 4tti 3ineau 3ke 3p 4alardo 5s 2quay 4et 6te 4in 4ot 2rada 5i 6s 7e 7o 4more 4s 3dee 4o 4ue 3edes 4ja 5o 4kh
4nte 7au 4to 3ham 3ikh 4ni 4s 5e 5i 6en 3ke 5r 6son 5s 5y 4hill 5urst 4in 6s 7on 5son 4kinen 4man 4s 3man 5r 4elee
5nter 7ier 5r 4itano 4ley 3n 4a 4ell 4puu 3o 4di 3pinel 3r 4a 5guez 5more 4ett 4i 5no 5s 6h 4ott 3sa 4hall 4ley 4ons
3tain 5nen 4ee 5l 4ida 5n 6gton 4low 4on 4ridge 4zelt 3uta 3viainen 5n 3zer 2sanen 3carella 4hall 5ke 5oud 4o 5e 4ua
6l 3ek 5ova 3illas 3ka 4o 5va 3ley 3man 3olini 3qua 5ier 3salacqua 5relli 4chiers 4more 3ten 5rnak 4ine 4oors 5re
4rana 3ztor 2taki 4o 3berg 3chell 6n 6tt 3e 4l 4n 5aude 4rson 3hak 3il 5lo 4n 5o 3la 3naude 4ode 3on 3ridge 3t 4en
5rson 4ison 4on 4yn 2u 3er 3gh 3k 4o 5va 3lauskas 4ey 4icek 8ova 5k 6ova 5n 6g 5tsch 4k 4l 4ovic 8ova 4sen 5on 5son
4us 4y 3sini 3tz 3wels 2vanello 4rotti 3elek 7ova 5ic 5ka 6o 7va 5ova 4z 3ic 5ic 4n 3ka 4o 5va 6ic 3lic 6ek 8ova 6ko
5k 6ova 8ska 9ky 5n 4o 5v 6a 6ic 8ova 6ova 3ol 5ova 4n 5e 3uk 5ova 2wlak 4owski 2xson 3ton 2yan 3er 4t 4ur 3lor 3ne
4ter 3son 2z 3os 1eabody 3ch 5ey 3ke 3no 3rce 5y 4lman 4man 4sall 5on 4t 3se 4lee 6y 3vey 4ler 4y 3y 2chel 3kham
3nik 3or 5a 6ro 4tic 3ur 2den 4riva 5sen 6oli 7n 3igo 4sic 3raza 6zini 4ero 4ick 4oni 5sa 5za 2ebles 3d 3le 5r 3ples
3ry 3te 5rs 4s 2gg 3ram 3uero 5s 2ham 4rda 3konen 3rson 2iffer 3nado 3rce 5in 4o 3trequin 3xoto 2kkala 5rinen 2laez
4yo 3chat 3frey 3ham 3ikan 7ova 3key 4onen 3l 4egrin 9i 5rin 5t 6ier 5y 4ham 4i 5cer 6o 4ot 3oquin 3tier 4ola 5n 6en
6iemi 4z 3uso 3zer 2mberton 2na 4flor 4loza 5ver 4s 3ce 3darvis 4elton 5r 6gast 7raft 9ss 9st 4l 5eton 6y 3g 3ic 5k
4x 3land 4ey 3man 3n 4anen 4ebaker 5ll 5r 5tta 5y 4iman 5ng 7ton 4ock 4ypacker 3rod 5se 3son 3t 4ecost 4on 4tila
6nen 3well 3z 2pin 3pers 2ra 4k 4l 5a 5es 6z 5ta 4nda 5o 4za 3cic 4k 3domo 4ue 3ea 4da 4ira 4llo 4ra 4s 4yra 4z
3gande 4olesi 3ham 3i 4c 4llo 4n 5e 5i 5o 4sic 3kins 7on 4o 5na 6s 5v 6ic 3l 4man 3menter 3na 4ell 5r 3on 5ne 4s
4zzo 3ras 5ult 4eault 5ira 5t 4i 5er 5go 5n 4odin 5n 6e 6o 5t 6ta 4yman 3saud 4ico 5jn 5nger 4son 3tile 5ni 4l 3usko
4zzi 3z 2sa 3ce 3endorfer 3ic 4na 3ka 4o 5va 3onen 2tek 4rkin 5lik 5man 5s 6e 7n 6on 6son 3illo 4t 5jean 5t 3ralli
5ssi 5uskas 4ee 5lla 5y 4ic 6evic 6k 5e 5llo 5n 4o 5celli 5ne 5sky 5v 6a 6ic 8h 8ka 9y 4ucci 6elli 5ska 7ova 5zzi 4y
3tai 5way 4engill 5rsen 7on 7son 5y 4i 5e 6s 5ford 5grew 5s 5t 6t 4ry 4us 4way 4yjohn 3way 3z 2ukert 2witt 2yton
2zzali 1faff 3nnenstiel 3rr 2effer 3ifer 5fer 4l 2ister 2leger 1hair 3m 3n 4euf 3res 4r 5is 3yre 2elan 4ps 2ifer
3lban 5in 5rick 6ook 4ib 5ppart 7e 6s 4lippi 7s 8en 4pot 7t 4son 3nney 3pps 2u 3ng 1iacentini 3ne 3tt 3zzi 2ca 4rd
3cand 4inni 5o 5rillo 4olo 3hardo 4e 4ler 4on 3kard 4el 6l 5ns 5rel 6ing 5tt 4lesimer 4ney 4rell 3ou 2dgeon 2eber
3dra 3per 3rard 4cy 4rard 5et 5o 4son 3ters 4ila 4rangeli 5zak 4sch 4te 2fer 2gafetta 3ford 3g 4ott 3natti 3ott
2helgas 3l 4ak 3o 2ir 4ainen 4salu 2ka 3ec 3k 3ova 2land 3cher 3ger 3jek 3kington 3la 5i 5y 4sbury 3on 3z 2menta 7l
6el 2namonte 4rd 3cheira 6rle 4kney 4us 3der 3eau 4da 5o 4gar 4iro 4r 5o 4tte 3gle 3heiro 4o 3illa 4nfarina 4on
3kard 4erton 4ham 4ley 4ney 4ston 3ner 5y 4ix 4ock 3ol 4n 3son 3tar 6ic 4er 4o 5r 3zon 2ogoid 3trowski 3vani 2pkin
6s 3pen 4in 6s 2quer 2randello 4rd 3c 4her 3e 4lli 4s 4t 3inen 3ker 4le 3lot 3nat 3on 4tte 3son 3tle 2sacane 4ni 5o
4roni 3citelli 3on 3toletto 3ut 5ova 2tchford 4ock 3kanen 3man 3re 3t 4ard 4enger 4man 4s 3zer 2xley 2zano 4rro
3zamano 4etti 4iol 4o 1la 3cencia 3isance 5ted 3na 5s 4tak 5e 6k 3scencia 4encia 3ta 4h 4ini 4t 5ner 4z 5er 3ucha
6ova 3vec 6ova 4ucha 7ova 3za 5nin 2ch 4ova 2eas 5ant 8s 3dger 3imeann 5ionn 3kancova 6ec 3mmons 4ons 3se 4ivcova
6ec 4s 3tcher 4schette 2oof 4m 3tkin 4t 3uffe 4rde 3ver 3wman 2umlee 6y 4mer 3nkett 2yler 1oarch 2blete 2ch 4e 5t
3ius 3k 2der 3hradska 9y 3konicka 9y 3niece 6ks 3ra 2e 3lmans 3rio 2ff 4enberger 2gacnik 3ue 2hjola 3l 4man 2il
3ndexter 4ter 5ner 3rier 3sson 3tra 6s 2kas 3orna 6y 4s 2l 3ak 5ova 4nco 5d 5i 5sky 3d 4ma 6a 3en 4sel 4t 3fliet 3i
4ak 6ova 4c 4ng 4s 4to 5te 5z 4zzi 3jak 6ov 3k 3la 5ck 5k 6ova 5nen 5rd 4et 5y 4itt 4man 4ock 4u 3o 4nijo 4vic 3son
4ter 5on 3zer 4in 4l 2mares 3bo 3erleau 5oy 4tta 3pa 4ey 2n 3ce 5let 4i 5n 3grac 3s 3t 4e 5corvo 4i 5ff 5us 4on 2ole
5r 5y 3m 3n 3re 4man 3s 3vey 2pa 3escu 3ham 3lar 3ov 5ic 7h 3p 4e 2rath 3caro 4el 6lato 4he 3opat 3ras 3ta 4erfield
6o 4illo 5s 4mann 4o 4ugal 4wood 3ubjak 8ova 3zio 2sada 3ch 5l 3ey 3ka 3lon 3ner 3pisil 8ova 3s 3tell 4l 4ma 4on
2teat 4et 6e 3hier 3ier 3ocnik 3ters 4ier 4orff 4s 3vin 2u 3gh 3lain 4in 5ot 4os 4sen 5on 3ncy 2vilonis 2we 4ll 3ley
2yner 4ter 3thress 2za 3der 3ega 3o 3uelo 3zecco 1rabhakar 5u 3da 4han 4o 3et 3ga 4er 3hl 3kash 3ll 3nge 4tl 3sad
4had 3t 4er 5si 4her 4i 4s 4t 3xmarer 2eas 3ble 3ciado 3da 4more 4ovan 3ece 3iss 3jean 3lec 3m 4o 3ndergast 4ner
4tice 6ss 3ocanin 3scott 4lar 5er 6y 4nell 4sler 7y 5man 5nell 5on 5wood 4ton 5ridge 5wood 3ttyman 3uss 6er 3vatte
4ost 3wett 4itt 2ial 3banic 3chard 4kett 3ddy 4emore 4gen 4more 3ebe 4de 5ite 7is 4go 4ster 6ley 4to 3ll 3m 4eaux 4m
5er 4o 5zic 4us 3ncipato 4dle 4e 4gle 4s 5en 4tz 4z 3oleau 5o 3sco 4elac 3tchard 6ett 4t 5s 3uli 3vet 6t 7e 2ocacci
4haska 6zka 8ova 4opio 4ter 5or 3di 3ffitt 4itt 3haska 3ietti 4nnsias 3kop 3ll 3m 3ost 3pes 4p 3sperie 4ser 3to 3ulx
4se 4t 5y 3vencal 7her 6zano 4ince 4ost 3well 2pic 2skalo 2tenjaca 2ude 5n 4homme 3ett 3itt 3neda 4ty 3schke 3ul
3vost 2yal 3ce 3or 2zybylski 1ua 2cci 5ni 3her 4ner 3kett 2ente 6s 3rta 2ffer 2ga 3h 3liese 5si 3sley 2hakka 4ric
3ringer 2ig 3rseal 2jadas 3ol 2kk 3lus 6ova 2laski 3ci 3eo 3gar 3ido 3jiz 3k 4kinen 3len 4iam 5n 6s 4man 4um 3s 3ver
2ma 3phrey 2ndel 3g 3tigam 3z 2pak 5ova 2ranen 3cell 3die 4om 4ue 4y 3i 4foy 4na 5gton 5s 3key 3male 6s 3nell 3ohit
3pura 3sel 6l 5r 4ley 3tell 3vis 3year 2scasu 3ey 3ka 5r 6ic 6ova 4ova 2tinja 3man 3nam 4ey 3z 2usepp 4tinen 2vi
1yatt 2burn 2e 2lant 3e 4s 2ne 2ron 1ənahov 0qabiloglu 2farov 3urbəyli 2rabagli 2simov 1oculu 2sali 1uach 4kenbush
3de 3ide 3lls 4ter 3m 3n 4dt 3rles 4terman 5ier 3simodo 4t 3ttlebaum 3yle 2eally 3enane 5er 3rini 4o 5l 3sada
4enberry 4inberry 3vedo 3zada 2igley 4ney 3jada 5no 3les 4len 5inan 4ty 3mby 3n 4lan 5ivan 4n 5ey 5y 4ones 7z 4t 5al
6na 8r 7illa 5ero 8s 5o 5us 3rion 4ke 4oga 5s 5z 3senberry 4pe 4t 2on 2rbanli 6ov 2tqasinli 1ədirzadə 2hrəmanli
2nizadə 0raab 4e 3dik 3g 3mat 3p 3sch 3tikainen 2bago 3b 4itte 3e 4r 3ideau 4n 5owitz 4tsch 3l 3on 3y 2cette 3hal
3ine 3kers 4ham 4ley 3z 2dabaugh 3cliff 8e 3el 5ic 4macher 6ker 4novic 4r 3ford 3hakrishnan 3ic 4n 5ovic 4sch 3ke 3l
4ey 3man 3ocaj 4jkovic 4lovic 4sevic 4vic 3tke 2el 3s 3ymaekers 2ff 4a 4erty 3tery 4is 2gan 3er 3gs 3havan 4na 3in
3land 4in 3sdale 3usa 4z 2hija 4lly 3m 4an 3n 2i 3dma 3ford 4teiri 3ght 3ley 4sback 3mondi 3nbolt 4e 5y 4ville
4water 3sanen 2j 3a 4gopal 9an 4la 4n 3cic 3h 3n 3u 2k 3ela 4r 4s 5traw 3ova 6n 7ova 4wski 3uljic 2leigh 4y 3jevic
3l 4s 3ston 2ma 4chandran 4ekers 4ge 4ker 5rishnan 4n 5athan 4swamy 4zzotti 3bert 4o 3dedovic 3er 5iz 4sh 4y 3inez
4res 6z 4s 3m 3os 3sak 5uer 5y 4dell 4ey 2na 4llo 3ck 4ourt 3d 4all 5zzo 4el 4hawa 4le 6s 4maa 4oja 3ey 3ganathan
4el 5r 3kin 6s 3ney 3sdell 4ome 5n 3ta 5la 5nen 2o 3l 2per 3ier 4n 4sardi 3osa 5o 4za 3p 4aport 5z 3raz 2rick 2sanen
3berry 3ch 4o 5e 5n 3eta 3h 3ic 3k 4in 3mussen 3nick 3por 3t 4elli 4ija 4oder 5gi 2tchford 4liff 8e 3h 4bone 5un 6rn
4jen 3ley 4iff 3ner 3sep 3ta 5n 4i 5gan 3y 3zlaff 2u 3b 3ch 3d 4sepp 3hala 3lston 3rica 3sch 6er 3ter 4iainen 5o
2vaglioli 4l 3el 3i 3n 2wley 4ings 6s 7on 4s 3son 2ya 3bon 5rn 4urn 3el 3field 3goza 3l 3mer 4o 3naud 4er 4or 3o 2zo
4v 1ea 3de 3gan 4le 3le 3m 4er 5s 4onn 4s 3per 3rdon 4ick 3soner 5r 3ves 4is 4y 3y 2bane 3ello 4r 3ic 3olledo 6o
2cer 5s 3h 4berger 3inos 4o 3k 4er 4inger 2dd 4ick 5n 6g 7ton 4y 3er 3fern 4ield 4ord 3i 4can 5k 4ng 6er 6ton 3l
3man 4on 6d 3ondo 3rick 3us 3wine 2ed 4er 4y 3n 3p 3s 4e 5r 3ve 5s 2galado 4n 3e 4r 3ge 3ister 3ner 4ier 3o 3uera
2hberg 3kop 3m 3n 3orst 2iber 3ch 5ard 5el 6nbach 6r 7t 5l 5man 8n 3d 4er 4y 3f 4f 3g 3jers 3ley 4ley 5y 4y 3mann
4ers 5s 3na 4bacher 4dl 4er 6t 4hardt 4ikainen 5sch 4ke 4oso 4precht 4salu 4thaler 3s 4chl 4er 4ing 7er 4man 4ner 4s
3tbauer 4er 6er 4h 5ofer 4inger 4z 2k 2liford 3yea 2macle 4ley 3bert 3er 3ick 4llard 4ngton 3ley 3mel 5rs 3pe 3y
2nard 4ud 5lt 3cher 3da 4ers 4on 4ulic 3eau 4han 3fro 6e 6w 3ick 4er 3ken 3n 4er 4ick 5e 5nger 3o 3shaw 4i 4on 3tas
4eria 4schler 4z 3wick 3y 3z 4i 2pass 3iska 6y 3logle 3o 3p 4ert 2quena 2sanovic 3ch 3endez 6iz 4r 3ler 3nick 5k
3pighi 3sler 3ter 4ivo 4o 4repo 2tamal 7es 4na 3herford 4man 3tenbacher 4ig 3zlaff 2ulet 3ter 2veles 5l 5s 3illa 4s
2w 2xford 3road 2y 3er 4s 3na 5ert 5ud 4ders 4ell 4olds 8on 5sa 6o 2zende 7s 1hames 3tigan 4tigan 2eaume 3e 3in 3m
2ine 5hart 2oades 5s 3de 5n 5s 3ne 3ton 2ymer 3ne 5s 1iba 4ric 4s 3eiro 4ra 3ic 5ic 2card 5t 3ca 5rdi 5ti 4i 5ardi
5o 4o 3hardova 7s 8on 6son 6t 4burg 4e 5r 6son 6t 5son 5y 4ie 5ns 4man 5ond 4tar 7ova 5er 3kard 7s 4el 5r 6t 5tson
6t 7s 4man 4o 4s 3o 4lfi 2ddell 5r 4ick 4les 3enhour 5our 4out 3geway 4ley 4way 3ing 6er 6s 3ley 4on 3out 2ebe 3d
4el 5r 4l 5er 4mann 3gel 5r 4ler 3hl 5e 3ke 4stina 8s 3l 3m 4er 3ndeau 4er 4zo 3pl 3ra 3s 4er 3th 4veld 3ves 2fe 3fe
4o 2gaux 3by 3don 3g 4ins 5o 4le 6man 4s 3hi 3ney 3sby 2ha 3ova 2ihimaki 3konen 2jcken 3etkovic 3ks 3n 4tjes 2ker
2les 4y 2mer 3mer 2naldi 3con 3e 4hart 4r 4s 4y 3ger 4gold 4hofer 4ler 4o 3k 4er 3n 4e 5r 3tala 2o 3jas 3rdan 3s 3u
4x 2poll 3peon 5y 4y 2quelme 2s 3a 3ch 3ek 4r 3h 4el 5r 3inger 3ka 4o 5va 3ley 3ma 4ondo 3ner 3o 4va 3sanen 3t 4au
4eard 5r 2tacca 3ch 5ey 3enour 4r 3osa 3tenberry 6house 3z 4man 2us 2vard 4s 3enbark 6urg 4ra 5ia 5o 6s 4s 3iera 6e
2x 2zer 3o 3zi 4o 5li 4uto 1oa 3ch 5e 3ne 3rk 5e 4ty 2badey 4rds 3b 4ins 4s 3erge 5son 5tson 7son 4son 4y 3ichaud 8x
6eaux 4doux 4e 4llard 4nett 8e 5s 6on 4son 4taille 3ledo 5s 3son 3y 2ca 4mora 3ca 5bonella 3e 3ha 4e 5leau 5r 5ster
4on 3ker 5tt 5y 4well 5ood 2da 4rte 4s 3den 4y 3e 4n 5as 4r 3gers 3iguez 3man 3rigez 6o 6ue 8s 8z 7z 5ques 8z 2e
3buck 3der 3hl 3landt 4s 3mer 3pke 3ro 3sch 4ler 4sink 5ler 2galski 4n 3ers 6on 3ge 3iers 3ner 3osic 4wski 2hac 5ek
7ova 5ik 7ova 5ova 4n 3de 3e 3leder 3n 3r 4bach 6ugh 4danz 4er 4icht 4moser 3t 4la 2ig 2jas 3ek 5ova 3ka 4o 5va 3nic
3o 2ldan 3en 3fe 5s 3ing 3land 4e 4in 6ger 7s 6s 5son 3off 4n 3ph 3ston 2m 3agnoli 4in 4ncik 8ova 5ens 5o 6v 6wski
5s 3baut 4outs 3e 4r 5o 4u 3ig 4jn 4ne 4ti 3mel 3o 4va 3riell 2nan 4yne 3calli 3deau 4on 3e 4y 3k 4ainen 4ko 3ning
3quillo 2od 4esteijn 3k 4er 4s 3ney 3p 3s 4e 5n 6boom 4ileht 2per 5o 3p 2que 5more 2rie 3richt 2s 3ado 4les 6z 4mond
4s 4ti 5o 3borough 3eberry 5oro 4ll 6i 6o 4man 7n 5ond 4n 5balm 7um 6erg 9er 8ry 6latt 7oom 7um 5dahl 5feld 5gren
5ow 5qvist 5stein 5thal 5zweig 4r 3iello 5r 4n 5ova 5ski 3koth 3mini 3ner 3o 4l 4va 3seel 5lat 6et 6lat 7i 8ni 7o 5r
5tti 4i 5gnol 5ni 5ter 4ler 4man 7n 4o 5n 3t 2tella 4n 3h 4e 5nberg 5r 6mel 4man 4rock 4schild 5tein 4well
3tensteiner 5r 5veel 4iers 4man 3z 2udebush 3ghton 3illard 3kes 3leau 3nds 5tree 5y 4tree 3ra 4ke 3sey 4h 4seau 8x
6l 7et 6t 3th 4t 3wenhorst 4horst 3x 2vira 3sənov 2wden 3e 4ll 4n 3land 7s 4es 5tt 5y 3sey 2yall 5s 3bal 3e 4r 3o
3se 4ter 5on 2zar 4s 3e 4k 4ll 3ic 4er 4te 5is 3man 1uairc 3ne 4o 3rk 2balcaba 7va 3ben 4ia 3ene 5is 5stein 4rto 4sa
3ik 5ova 4lar 4n 5ic 5o 5stein 4o 3le 2ch 3ker 4man 2dd 4ell 5n 3er 3isill 3kins 3nick 3olph 3zite 6is 2e 3b 3da 3gg
3l 4as 4le 3ter 2f 3f 4in 6i 4ner 3us 5ova 2gg 4eri 7o 4ieri 4les 2hl 4and 2ijs 3s 4eal 3z 2kavina 2ley 2mbaugh
3felt 3jantsev 3ley 3mel 3ora 3ph 3sey 2ndell 4le 3ge 3ion 3kle 3nels 3yan 4on 2otsalainen 2pe 3nik 3p 4e 5rsberger
6t 2s 3ch 3hin 4ton 3in 3k 4o 5va 3nak 6ova 3ova 3so 3ticucci 5n 2tan 4r 3herford 3kowski 3land 4edge 3t 4en 5r 3z
2ud 3s 4kanen 3tel 2valcaba 2ybal 3le 2z 3icka 6ova 1yals 3n 4s 4t 2bar 5ik 7ova 5ova 3icki 3nicek 8ova 2ckman
2dberg 3en 4r 2e 3rson 2land 3e 4s 2man 3er 2nn 4e 2sa 3ka 4o 5va 3ova 2tkonen 2ynanen 1zaquluzadə 1əhimli 5ov
3manova 2sulzadə 0saad 3r 4e 5la 4i 5nen 3stamoinen 3vedra 2ba 4la 4ter 5ini 3b 4agh 5tini 4e 3ella 3harwal 3ia
3ljak 3o 4l 4tic 2cco 3har 4dev 7a 4s 3kett 4s 3re 4istan 2ddler 3e 3iqov 4xov 7a 3ler 3owski 2e 3chao 3lens 3nz
3phan 3ther 3z 2ffi 4old 5rd 3ronov 2gar 3er 5s 4se 3meister 3nelli 3redo 2ha 3buzlu 3lin 3ni 3ota 3suvarli 2iler 3n
4e 4i 5o 4z 3rseal 3s 3to 3z 2k 3ac 4i 4lauskas 4moto 3s 2la 4am 4din 7o 4j 5ka 6ova 5ova 4manca 5oglu 6ne 4ndra 4s
4ta 4zar 3cedo 4her 4ido 3dana 4ias 5var 6ia 3eh 4m 4rno 4t 3gado 5ri 4uero 3iba 4c 4eri 4nas 4sbury 3lee 5y 4inen
4s 3mela 5ron 4i 5nen 3o 4m 5aa 5onsson 4nen 4pek 3sbury 3ter 6s 4sman 4z 5man 3u 4mae 5ets 3va 5dor 5ggio 5to
4emini 4i 5ni 3yer 6s 3z 4er 4man 7n 2ma 4niego 4yoa 3el 5e 5ova 3ford 3i 4loglu 6v 3mer 4on 6s 3ons 4ra 3paio 5th
4er 4ley 4son 3ra 3s 4el 4on 6ova 3uelova 6s 7on 7son 3yn 2nabria 3born 3ches 6z 5o 3dberg 4e 5fur 5ll 5r 6lin 6s
7on 4ford 4gren 4hu 4i 5dge 5fer 6ord 5n 4ler 5in 4oval 5z 4ridge 4strom 4usky 4vik 3er 3filippo 4ord 3ger 4ha 5vi
4ster 4uineti 3hueza 3i 4tra 6ova 3juan 3kar 6an 4ey 3martin 4iguel 3ner 3o 4n 4r 3roman 3s 4bury 4om 5n 6e 6i 6nens
3t 4acruz 5maria 5na 6der 6gelo 4ee 4ibanez 5c 5llan 9es 7o 5ni 5stevan 4ner 4ora 6io 6o 5s 5yo 4ucci 3udo 3z 2o 3rs
2pien 6za 3p 4ington 2rabia 4ceno 5ino 4f 4gat 5osa 4n 4p 5uu 4via 3delic 4ina 3gac 4eant 5nt 3ic 4n 3kan 6ova 5r
4ozi 3lija 3ma 4iento 3na 4eel 4o 3raf 5tt 4is 3sfield 3tain 4in 4or 6i 3v 4er 4is 2s 3aki 3s 4e 5r 4o 3tre 5y
2tchell 3erfiel 3he 5r 6ley 3o 3riani 3ta 4er 6field 6lee 6white 4ler 2uber 6lich 3ceda 6o 4ier 3dan 3er 5s 3li 5te
6is 4s 5berry 6ury 4ter 7s 3m 3nders 3ra 4o 3ter 3vage 4e 2vala 4nt 4rd 5ese 3eljev 5l 3ille 4no 3oie 4lainen 4rgnan
4y 2whney 3icki 4n 3yer 6s 2x 3ena 3o 4n 3ton 2yer 5s 3ler 5s 4or 6s 3re 1barbaro 1caduto 3ggs 3ife 3la 4era 4f 5aro
4ia 5se 4lan 5on 5y 4zo 3marcio 3ndone 4lan 5on 4nell 5lain 3ramucci 4berry 5orough 5rough 4dino 4foglio 4latti 4pa
5etta 5oni 3tes 2haack 5f 5l 4cher 6inger 6ner 6t 4de 4efer 6fer 4fer 5f 6er 6ner 4gen 4ible 4kelaar 4lk 5l 6er 4ndl
5k 5tl 6z 5z 4per 4r 5er 5f 6f 5inger 5roo 5tner 6z 4tteleijn 5z 6l 4ub 5er 5s 3echter 4el 6e 5r 6er 5tz 4ffel 7r 8s
6ler 4ibe 7r 5d 6egger 6l 6t 4ll 6ekens 7r 5vis 4nck 5del 5k 6el 4pens 6rs 4r 5er 5merhorn 6s 5r 6er 5z 6er 4ucher
5erman 9nn 4xnayder 3iaparelli 5vo 7ne 4cchi 5k 4efelbein 7r 5stl 4ff 6er 6man 4lcher 5d 5l 6er 6ing 9er 5t 6z 4mke
5mel 5pl 4nagl 5dler 5ke 5nerl 5tgen 4pper 8s 4rmer 5o 4sler 3lager 5ter 6ter 4egel 5ich 8er 5mmer 5nker 5singer
6ser 5y 4ichting 4ogl 5ss 7er 4ueter 3maltz 6z 4eling 6tzer 4id 6inger 6l 6t 7ke 5ed 7ecke 7t 5t 6t 6z 4olzer 4uck
7er 3nabel 6l 4eck 5eberger 5ider 5ll 4ieders 4yder 3ober 7l 4ch 5k 4en 6berg 9ger 6feld 6rock 4ffmann 5ield 4kman
4ll 6er 5ten 7s 6z 5z 4mber 4n 5auer 5berger 5land 4ofs 5lcraft 6er 7y 5nbroodt 6maker 6over 4pf 4rr 4tt 6e 6in 4u
5ten 3rack 5der 5m 6m 7el 5nt 7z 6z 4ecengost 6k 5ffler 5iber 6er 6ner 5mpf 5nk 4ik 5msher 5ttwieser 5ver 4ock 5der
5eder 6ff 6r 6ter 5m 5th 5yer 4um 5pp 3ubert 4chhardt 5k 4eler 6ke 6ler 5tte 6z 4h 4ldt 5er 5l 6er 5man 5te 7n 6heis
6z 5z 6e 4macher 6ker 6n 7n 5mer 4pp 4rch 5man 4ster 4tt 6e 5z 4urmans 4ylenborch 7r 3wab 5ger 5iger 7hofer 5n 6dt
6ke 5rtsbach 7z 6z 7inger 7l 5ss 4eiger 9t 7hofer 6tzer 6zer 5ndinger 6k 4indt 6g 5tal 3yns 2ialpi 3ortino 3pio
2lafani 2ofield 3ggin 7s 3les 4lan 3tti 5o 3ville 2ranton 3iber 5hin 5ner 4ven 5ner 3oggins 6s 3uggs 2udder 4eri 3ll
5ion 5y 3rlock 3ylenborchs 1eaberg 4olt 5rn 4rook 8s 3ger 4le 4raves 3le 5s 5y 4ly 4s 4y 3mans 4on 6s 3rcy 4foss 4le
6s 5og 4raigh 4s 3se 3ton 3ver 5y 3well 4right 3y 2bo 4va 3ring 2christ 3o 4r 4va 3rest 4ist 2da 4no 3dio 4on 3er
3gwick 3illo 3lacek 6kova 5k 6ova 5r 4iak 7ova 2ebacher 4er 3feldt 3ger 3ley 4y 5e 3man 3ry 3se 3vers 2gal 4rra 5s
3ebahn 4r 5s 6on 6un 6zoen 3hers 3ni 3ovia 6c 3re 5st 3uel 4i 5n 4ra 2hgal 2ibel 5r 6t 4old 3del 4l 4man 3fert 3gler
3l 4er 3m 3p 3ser 3ter 4ric 4z 3wald 2kera 5ova 3hon 2lby 3den 5rs 4on 3ecka 6y 4ndic 3fridge 3ig 4n 3lars 4eck 5rs
4man 4ner 4s 3man 3ph 3s 3tzer 3vage 4idge 3zer 2m 3an 3enov 3ialjac 4tecolo 3mes 3on 3ple 2n 3ecal 3g 4er 4upta
3icic 3ko 5va 3n 3sabaugh 3ter 6s 2o 3ighe 2parovic 3e 3pa 5la 5nen 3ulveda 2queira 2rao 3gejev 3io 3lupi 3monti 3na
3pa 3ra 5glio 5no 5to 3sic 3vais 5ntes 4in 2sco 3hadri 3soms 4ums 3tak 5n 4ig 2th 4i 3liff 3o 3rick 3ser 3tles 4y
3zer 2vcik 6ova 3erance 5ns 5s 6on 5t 3ier 4gny 4lla 7no 4n 3rin 3tsenko 2ward 3ell 2xton 2ybert 3idbəyli 5zadə 3ler
3more 5ur 3xzadə 1forza 1galambro 3rbi 1ha 3bazz 3ckelford 5leford 3ddix 4le 4rick 4wick 3effer 3fer 4fer 5rey 3h
4an 3iler 4n 3mblin 3n 4ahan 4d 4er 4k 5ar 5er 5le 6in 5s 4ley 4non 5y 3piro 3raf 4ber 4key 4ma 4pe 6r 5less 5ton
4row 5y 3tley 4tuck 4zer 3ughnessy 4l 3ver 6s 3w 4ver 2ea 4d 4ffer 4han 4ley 5y 4ne 4rd 5er 5in 4ts 3ckler 3dd 3edy
4han 5y 4ley 5y 4n 4ran 5in 4tz 3ffer 5ield 3han 3il 5ds 3ley 4lenbarger 8erger 6r 5man 4or 4ton 3n 4k 4oy 3pard
7son 4erd 4hard 4ler 6y 4pard 3r 4burne 4e 5r 4idan 4lock 4man 4rard 5ell 6r 5ick 6ll 5od 4win 5ood 3th 4ler 4ty
3vlin 3w 4maker 2ibata 3ck 3el 5ds 5s 4r 3ffer 5lett 4let 7t 3h 3lling 8s 3mer 4izu 4p 3nault 4er 4gleton 4kle 4n
3pe 4ley 4man 4p 5ee 5y 4ton 3re 5s 5y 3sler 3ve 5ly 5rs 5s 2oaf 3ckey 5ley 3emake 8r 3ffner 4ner 3lar 4es 3ok 4p
3pe 3r 4ey 4ter 5ridge 5t 3twell 3ults 4p 4se 3ver 3walter 4man 4s 2rader 3effler 4ve 4wsbury 3iner 4ver 3off
4pshire 4ut 4yer 3um 3yock 2ubert 3ck 3e 4y 3felt 4f 5ler 4ord 3gart 3kla 3ler 4l 4man 4tis 5s 5z 3make 7r 5n 5te
4pert 4way 3nk 3pe 3rtleff 5z 3ster 3te 4t 5leworth 5s 1ias 2bal 5ic 3ert 3ilia 3ley 3ul 2ca 4rd 3iliano 3kels 4ler
6s 2ddiqui 3ers 4s 3hu 3ler 4o 5va 3or 5ov 7a 3well 2eben 6aler 5r 6er 6t 3fert 3g 4el 4l 5e 4rist 3mens 4s 3ring
4ra 3vers 6t 3wert 2fford 4redi 3uentes 2gala 3el 4rson 3gers 3l 4er 3man 4on 3norelli 3rist 2hvonen 2kes 3iric 3k
3ora 5ski 2lber 6man 3cox 3d 3er 3ina 5s 3ke 3lanpaa 5ots 5ste 4er 3m 3va 5s 4eira 5nnoinen 5ra 6berg 6man 6nail 6s
7tein 5stri 5y 4is 2m 3a 4ra 5d 3cox 3ek 5ova 4ntal 4one 6i 3ic 5ic 4k 5ova 3ka 4ins 4o 5va 3merman 6s 4on 6ds 6s 4s
3oens 5s 4la 4ncic 8ova 5ds 5eau 8x 6n 6tti 5ic 6s 5ova 7ic 9ova 5s 6en 6on 6son 5ton 4va 3pkins 4son 3s 4on 3unic
5ovic 2nan 3clair 3delar 3egal 3gh 5al 4letary 7on 6y 3ha 3iard 4si 3kler 4ovec 6ic 3n 4ott 3ozic 3quefield 2onainn
2pe 4k 4s 3ic 4la 3le 3os 3p 4el 4le 2queira 2rel 4n 3ianni 3mans 3ois 4tic 3vanzadə 4io 2sask 3co 3emore 3k 3ler
3mondi 3neros 3on 3son 3to 4runk 2tar 3es 3ters 4on 3u 4m 3z 2u 2vertsen 2xli 3tus 2zemore 4r 1joberg 4lom 3din
3gren 3holm 3lander 4in 4und 3stedt 5rand 6om 1kaggs 3lly 4ski 3ntar 7ova 3ra 3tes 2eahan 3en 5s 4te 3ffington 3han
3lley 5y 4ton 3nderovic 2iba 3dmore 3les 4lern 5ings 5man 3nner 3pworth 3vington 2lar 5ova 3enar 7ik 9ova 7ova 5ica
7ka 8ova 7ova 5ka 6ova 2oda 3g 4lund 3k 4an 6ova 3ld 3og 3v 4iera 7ova 3w 2rijelj 4niar 8ova 3lin 3nicki 3tic 2ugor
3ja 4ina 6s 3ltety 8ova 3nca 3pnjak 3tecka 7y 1lade 4onja 3etsdochter 3gle 4molen 3hor 6ova 3ma 4on 3ne 3pe 3stan
7ova 3ter 4on 4tery 3ugh 6ter 3ven 6s 4ica 5k 6ova 5n 3wson 3y 4den 4ton 2edge 3gers 3mp 3tten 3vin 3zak 2ifer 3ger
4h 3ngerland 4kard 3va 4ka 5o 6va 2oan 5e 4t 3boda 6nik 9ova 6ova 3cum 6b 3ne 3ss 3ta 4ova 3vak 6ova 4er 4inec 8ova
3wey 4ik 2uder 3sher 4s 5er 2ye 3ne 1mail 3jda 5ova 3lley 5ing 5s 5wood 3rtt 3thers 2ead 3dley 3ets 3lley 4ser 4tzer
3t 4s 2id 4ova 4t 3ley 3rnoff 6v 3t 4h 5er 7man 7s 6y 5son 5wick 4s 2oak 3ck 3kovic 3lders 4en 4ic 3ot 3therman 7s
2rek 5ova 2tih 2ullen 2yth 5e 1napp 3uwaert 3vely 2ead 3deker 3ed 3ll 5er 5ing 4son 2ider 3vely 2oddy 4grass 3ok
3wden 2yder 1oares 2barzo 3el 4rs 3olev 4ta 3rero 4ino 2cha 2derberg 5gren 5holm 5ini 5lund 5man 5quist 6vist 5strom
3hi 3ing 2ffici 2hn 2ileau 3ni 5nen 2k 3ac 3cevic 3ic 3k 3ol 5ov 7a 6wski 2la 4na 5ki 5o 4res 5i 3berg 3do 3ej 5ova
4m 4r 5a 4s 3heim 3imena 4s 4z 3lars 4ey 4ima 3oman 5un 4rio 5zano 4vjov 3sona 3t 4ero 5s 6ova 4is 4ys 6ova 3um 4ri
3zer 2m 3an 3ers 5ville 3maruga 4er 6field 6s 6ville 3ogyi 4za 2ndergaard 3ger 3i 3nenberg 4ier 5no 4leitner 4tag 3s
3tag 2o 3d 3lachan 5ghan 3s 4aar 5lu 3t 4s 2per 2ranzo 3di 3ensen 6on 3g 4atz 4er 3ia 5no 4c 3okin 3rell 7s 6s
5ntino 2sa 3ebee 3ic 3taric 2telo 3o 4mayor 3tile 2ucie 4y 3der 6s 3kup 6ova 3le 5s 4iere 3rs 3sa 3thall 6rd 5ee 6r
7land 7n 5well 6ick 6ood 7rth 3za 2va 2wa 4rds 3der 6s 3ell 4rs 3man 2za 1paan 3da 5fora 5ro 4y 3eth 3fford 3hn 4r
3in 3lding 4lanzani 3nevello 4gler 4haak 4n 4o 3racino 4kman 4ling 3taro 4es 3ulding 2eakman 5s 4rman 5s 3cht 4iale
4tor 3ece 4gle 4r 5s 3icher 4del 4er 4ght 7s 4jer 4rs 3ller 5man 4man 3nce 6r 4gler 4ser 3rber 4i 4l 5ing 4o 4ry 3th
2icer 4her 3egel 5l 4ker 4lman 4r 5s 4s 5s 3gner 3ka 4er 3lar 6ova 4lane 5er 7s 5man 3na 4dler 4ella 7i 4k 5s 4ner
6y 4o 5la 3ro 3sic 3tler 4z 5er 3va 4ey 2lawn 2ohn 3ljaric 3oner 3rri 3tts 2radley 6in 8g 4ggins 5ue 4lja 4nkle 4tt
4yberry 3eeuw 4itzer 4nger 3iggs 4nger 6field 5kle 3oge 5is 4les 4ng 4ul 5se 3uell 4ill 5t 4yt 3y 2urgeon 4lin 7g
5ock 4r 5ier 1quarcione 3ier 4res 1raffa 2idhar 3nivas 8an 3vastava 2oka 2sen 1taab 4ts 3bile 4ler 3c 4e 4khouse
5pole 5s 3delmann 4lbauer 5er 3elens 3fford 3gg 5ers 5s 4lieno 4ner 3hl 5man 4r 3inbrook 3lcup 4der 4ey 4ker 4lard
5cup 5ing 8s 5man 5worth 4naker 4ter 4vey 3m 4ant 4baugh 4ey 4m 4per 5ley 5s 4rood 3nback 5erry 4cil 6n 5u 4daert
6rd 5ifer 6sh 5ley 5ridge 5un 4ek 5scu 4field 6ll 5ord 4g 5e 6r 5l 4hope 4ic 6ic 4kevicius 5iewicz 5ova 4nard
4sberry 6ury 5el 7l 5field 4ton 3pler 6ton 4p 3quet 3rbuck 4cevic 5her 4ke 6s 6y 5s 5weather 4ling 4ner 6s 5s 4osta
7ova 4r 5ett 3ssin 4tna 6y 3ten 5s 4ler 4on 3ub 4dacher 5e 5inger 5t 4ffer 4nton 3yton 2clair 3yr 2eadham 5man 4rn
6s 3bbins 3c 4her 4k 5el 6r 3dman 3ele 5man 5y 4n 5bakkers 6eek 4re 4ves 3fanec 7k 8ova 7lli 6ik 8ova 6ka 7o 8va
6ova 8ic 9cova 6ski 4fan 5en 7s 8en 6s 6y 4ovic 4unko 8va 3gall 4er 4man 4ner 3hle 3ib 4chen 4dl 4ger 7wald 4l
4nacher 5bach 9er 7uer 6eck 7rg 9er 6ock 5dl 5er 5feldt 5hauer 6off 5inger 5ke 7llner 5lechner 5man 8n 6eiern 7tz
5wender 3jskal 8ova 3ller 5y 4zer 5l 3mbridge 4ple 3nberg 4der 4gel 6r 4lund 4nett 5is 4son 5trom 3panek 6kova 6ov
4hens 8on 4ney 4p 4toe 3rckx 4kman 4nberg 5er 5s 4rett 3tler 4son 4tler 5yn 3uer 4rer 3vens 7on 5r 6son 5s 6on 3y
4aert 2george 4rmain 2hilaire 2ice 4h 5ter 4kel 5land 6er 7s 7y 5ney 3dham 3ebitz 4fel 4gler 4r 3fanic 4fel 5ler
4ter 3gall 4er 3les 4ler 5ings 5man 5s 5well 4son 4tner 4well 3mac 4pson 4son 3nchcomb 4er 5s 4gley 4is 4nett 4son
3panovic 4e 5rski 3rling 3tes 4h 4t 3ver 6s 2jean 3ohn 2laurent 3ouis 2martin 2ockard 5dale 5er 5hammer 5inger 5l 6i
5man 5still 5ton 5well 3ddard 4ola 6ova 3ehr 3ffel 7sz 3ger 4ner 3iber 4ca 5es 3janov 4cevic 4nic 3kely 5s 4ley 3ll
5e 6r 5ings 4nik 4p 4te 6nberg 5z 6fus 4z 5e 3ndun 4ebraker 6urner 5cipher 5king 5man 5r 5y 4ge 3ok 5ey 4ps 3par
4pani 4s 3rch 4er 5y 4ie 4k 4ladi 4mer 4rs 3sic 3tler 4t 5s 3udt 4ffer 4gh 6ton 3vall 4er 3we 5ll 5rs 2peter 3ierre
2rachan 5k 4der 5ford 5ivari 5ley 4han 4ight 4ka 5er 5ova 4ley 4ndberg 5g 6io 4sser 4tford 5ton 4ub 5ch 5ghter 5s
6baugh 6er 6s 4wbridge 5n 5ser 4yer 5horn 4zdina 8s 5icic 3ba 5c 4ova 3eater 4cker 4eter 6man 4icher 5t 3ibling
4cker 6land 7er 7in 4d 4ebitz 5gel 4jker 4k 4navic 5e 5ger 6fellow 7ield 6ham 4plin 8g 3ljic 3nad 6ova 4isko 8va
3obel 5l 6e 4ck 4de 4h 5l 5m 6aier 7yer 6eier 4m 5ain 6n 5berg 4obants 4pe 4ther 8s 4ud 5p 6e 5se 5t 6h 4zier 3ub
5le 4ck 4kelj 4nk 4thers 3ycek 7ova 4ker 2serbakov 2thomas 2ubblefield 5s 4er 3cchi 4k 5er 6y 5i 5ler 5y 3ddard
4ebaker 5r 4ley 3ivenberg 3kes 3ll 4ts 5z 3mbaugh 4mer 4pf 3ndun 3palo 3rdevant 5ivant 4geon 6s 5ill 6s 4lan 4m
4tevant 5z 3tes 4ler 4ts 4z 5man 2yer 5s 3ron 1uarez 3zo 2ber 3lett 3ramaniam 9an 2ciu 2da 3duth 2gg 4s 3rue 2h
3onen 3r 2ijker 3peal 3ter 4t 2kurlu 5ov 2lc 4ova 3e 4ymanli 8ov 3g 3lins 5van 3tanli 6ov 3zer 2mler 4in 3merall
6field 6lin 6ville 5y 4y 3ner 3pter 3rall 3ter 2navcova 5ec 3d 4aram 5y 4berg 4ell 5rland 6man 4in 4quist 5vist
4strom 3g 3iga 3jic 3seri 2omalainen 4inen 2ppan 4le 3raha 2r 3a 4c 4n 3bek 5r 3eda 4sh 4tte 3i 4an 4na 3ka 4ova
3les 3ratt 4ett 2si 3nik 3sebier 4man 3taita 5r 2tcliffe 3er 5a 3herland 3inen 3liff 3phin 3t 4er 6field 4le 6s 4on
2ur 2vi 3orov 2zuki 1vab 4ova 4y 3hn 3nberg 4tesson 3rd 2ec 4ova 3dberg 3hla 5ova 3ndsen 4sson 3rko 3tlicic 2oboda
6ova 2rbik 6ova 1wader 3fford 3im 4n 3minathan 4y 3ney 4ger 4igan 4k 4n 5er 4son 3rey 4thout 5s 5wood 5z 3sey 3tzell
3yne 4ze 2earengin 5ingen 4tman 5t 3eney 5y 4ten 5ing 5man 3itzer 3nnen 4sen 5on 3tt 2ick 3der 6ski 3gart 4er 6t
3hart 3lley 3ms 3ndell 5ler 4ehart 5y 4ford 4gle 4k 4nen 6y 4son 4t 5on 3sher 3tzer 2oboda 3fford 3ope 3pe 5s 1ydnor
3ow 2kes 3ora 5ova 2lvestre 2monds 5s 2nder 3nott 2rjala 2verson 1zabo 3lai 2ekely 5res 3to 2ilagyi 2oke 2ucs
2ymanski 1ədali 4qətoglu 2fərli 2limova 2mədoglu 2rifova 0taal 2bacu 4res 6z 3b 3er 3oada 4r 3ron 2cchini 4ola 3ker
5tt 4itt 2dlock 2ferner 3f 3olla 4ya 3t 3uri 2ggart 3izadə 3liafierro 3ue 2hirzadə 3t 4inen 2i 3lliuir 3ng 3pale 3t
2k 3acs 4hashi 4la 3kelenburg 2lamantes 9z 4rico 4vera 3bert 4ot 6t 3i 4aferro 5ni 4bli 5ov 4ercio 3kington 3lant
4ent 5y 4man 3madge 5ge 3pas 6ova 3ton 4s 4y 3war 2marit 4yo 3berg 4orini 4urello 6i 7ni 3ez 3m 4aro 4e 5rijn 4ik
5nen 3plin 3sma 3ura 2naka 3don 4y 3eja 3gen 4he 4ney 4uay 5y 3kersley 4sley 3n 4ehill 5nbaum 5r 3ouye 3sey 4kanen
3t 3zer 4ini 2o 3rmina 2pak 5ova 3diqli 6oglu 3ia 3ley 4in 3p 4er 3scott 2ra 4ngo 5tini 8o 6o 4ssov 3bell 4ox
3chetti 3dif 6f 4y 3in 3kington 3leton 3nowski 3pey 4ley 3r 4ance 6t 3taglia 4er 4ini 4t 3vainen 4er 4in 3water 2sca
4he 3h 3ker 4inen 3so 5ne 6i 2ta 4r 5ka 6ova 5ova 3e 3ham 3man 3om 3ro 3um 2ub 4e 5r 3cher 3l 4bee 3nton 2vares 6z
3car 3era 6s 2wney 2y 3lor 2zka 4y 1eachout 3gue 3han 3l 3sley 2baldi 3o 2cher 2dder 3er 4schi 6o 3ford 3row 2earu
3d 3garden 3l 3ms 3ple 3r 3salu 3ters 4s 2fft 2han 2itelbaum 3xeira 2jada 3eda 5or 4ra 5o 2lesio 3ford 3la 4er 5s 5z
4ier 5s 4o 2mme 5rman 3pleman 6ton 5in 2na 3calla 3eyck 3gan 3nant 4ey 4ison 4yson 3orio 2pes 3per 2ran 4s 3hune
3levic 3nan 3pstra 3ragni 5nova 5zas 4ell 4ill 5o 4on 6es 3uel 3vo 3williger 3zic 2sar 3ch 3ija 3ke 3sier 3ta 4er
6man 4on 2ter 3rault 4eault 2ufl 3nissen 2vis 2w 3ksbury 3s 2xeira 3ier 3tor 1hach 4ker 3i 3ker 4kar 4ur 3ler
4hammer 4ler 3man 4es 3nel 3o 3rp 5e 3tcher 3xton 3yer 2eberge 3dford 3in 4s 5en 5s 3len 3raulaz 4iault 5ot 4oux
4rien 3tford 3unis 4s 3ys 2ibaut 4eault 4odaux 6eau 9x 3ede 4l 5e 6n 4rry 4s 5sen 3gpen 3js 3lmany 3nnes 3rion 4y
2ole 3m 4a 5n 5son 6sen 7on 4e 4ka 4men 4pkins 5son 4s 5en 5on 3non 3ren 6s 5son 4nberry 6urg 5e 6ll 5hill 5ley
5sberry 5ton 4p 5e 4sen 5on 4ton 3ut 2railkill 4ll 4sher 3eadgill 5tt 4et 4lkeld 4sher 3ift 3ockmorton 4op 4wer 3ush
2ulin 3rber 4low 4mond 4ner 4ston 2ygesen 3s 1iainen 3no 2bbetts 4its 6ts 4s 2ce 3ha 4enor 4y 3kle 2dd 3well 2edeman
8n 3fenbacher 3lemans 3man 6n 3polo 3rnan 5ey 3tjen 2ggs 3he 3ner 4or 2hhomirov 2ihonen 3k 3ts 2jerina 2kka 5nen
2lford 3ghman 3k 3l 4er 6y 5tt 5y 4is 6on 4man 7no 5on 4otson 4son 3son 3ton 2mberlake 3ek 5ova 3ka 4o 5va 3lin 3mer
6man 9s 4ins 4ons 4s 3ofejev 4nen 6y 5y 3pson 3s 2nch 5er 3dal 6l 4ell 4le 3eo 4r 3gley 4uely 3kham 3ney 4in 3oco
3sley 3tzmann 2pler 3pett 4s 3ton 2rabassi 4do 3ie 3kkonen 3pak 6ova 3rell 2saj 3chler 3dale 2tcomb 3ov 3sworth 3tle
2wari 1lustek 1oal 2bar 3er 4y 3in 3ler 2cco 2daro 3d 2ft 2gher 3liatti 3nazzi 2hall 2ibin 3c 3vanen 4onen 2karz
2lan 5d 4r 3bert 3do 3edo 4ntino 4r 4s 3in 4ver 3j 3le 5fson 5r 5son 5tt 5y 4ison 5ver 3man 3onen 4sa 4za 3son
3vanen 2ma 4n 5a 5ek 7ova 5ik 7ova 5ova 4sek 7ova 6lli 6tti 5ik 7ova 6ni 5ka 6o 7va 5ova 5zewski 4zic 3berlin 4lin
3czak 3e 4cek 7ova 5ka 6o 7va 4i 4k 5ova 4s 5cu 3ic 5ic 4ngas 4ta 3ka 4o 5va 3lin 6son 4janovic 3maseo 3pkins 4son
3s 4ic 4on 2nc 3dreau 3er 4y 3g 3inelli 4sson 5to 3kin 3n 2ohey 3kes 3lan 4e 5y 4in 5s 3m 4an 4bs 4e 5r 5y 4ing
4salu 3ne 3r 3thaker 5man 4s 2pe 4te 3lak 3olska 7y 3p 4er 4ing 4s 2rain 3bert 5tt 3es 3fs 3gerson 3ian 3kelson
3lonia 3may 4ey 4o 3natore 4qvist 3o 4k 3pey 3ralba 5nce 4e 5cilla 5nce 6s 5s 5y 5z 4icelli 5jos 3stensson 2scani
7ni 6o 3elli 3h 3i 3o 3tado 4o 2th 3ic 4no 3ten 3willer 2ubeau 3chet 7te 3pin 4s 3rnay 4ville 3signant 4saint 2var
2we 4ll 4ry 3le 5r 5s 3ne 5r 5s 4ley 4s 5el 6nd 5ley 5on 3ry 2zier 3zi 4o 1racey 3etta 3fton 3han 3iner 5or 3mel
4mel 7l 3n 4tham 3oin 4re 3panese 6i 4p 3sk 3tnik 4tner 3ub 4ner 4sch 4tman 3vaglia 8o 4er 6s 7a 7o 4ia 5s 3wick
3xler 3ylor 4nor 2bovic 2eacy 4daway 5way 6ell 4nor 3bbi 4oux 3ccani 3ece 3go 4re 3i 4al 4ber 4er 4nfhear 3jo 3maine
4blay 6ey 4onti 4per 3nor 4tin 7i 3o 4igh 3panier 3soldi 4sler 3ves 4ino 5san 8i 5zo 3w 3xler 3zzini 2govcic 2iall
4na 3bble 3ce 4he 3erweiler 3gg 5s 3llini 5o 3mble 4m 5el 6r 3ncavelli 4h 4kl 6e 3pathi 4lat 5ett 4p 3sler 3tt 3vedi
5tt 7e 2lik 5ova 2nski 2obbiani 3ch 5e 3fimov 3gdon 3ia 5no 4si 3jan 6owski 3llinger 3mbetta 5ley 6y 4mler 3n 4coso
3pea 3sclair 4per 4t 3tman 4t 5a 5er 5ier 3up 4t 5man 5t 3wbridge 4er 3xel 6l 4ler 3y 4er 2uax 3b 4en 6ova 4in 4y
3deau 5l 6l 3eblood 4love 4man 4sdale 6ell 4tt 4x 3itt 3jillo 3ll 4uck 3mbauer 5le 5o 5ull 4mer 4p 3ong 3piano 4p
3ss 5ardi 5ell 4ty 3tanic 3u 2yon 1sai 3n 4g 3o 2chentscher 4ida 2e 3ng 2o 3sie 2vetkov 1ubbs 3ridy 2cci 3ker 2da
3ela 3ic 3or 2el 2ggle 2isk 3thof 2ksar 2ll 4er 5y 4is 4os 4y 2ma 3lin 3ova 2ng 3nell 5y 3stall 2ohey 4y 3mi 5nen
3vinen 2pa 3per 3y 2r 3alli 4ti 3berville 5ville 3chetta 5i 4i 5nov 5os 4o 5k 6ova 5tte 3ek 4sson 3geon 3ina 5s 3k
3ley 3man 4es 3nage 4bow 5ull 4er 5y 4ipseed 3peinen 5n 4in 3raoin 4ini 3udic 4nen 2sek 3ing 3kan 3sey 2ten 3hill
3ino 3t 4le 4y 2ul 4ik 2zzolino 1veit 1wedt 2idle 3gg 5s 3lley 3tchell 4ty 2ohey 4ig 3mbly 4ey 2yman 1ye 3r 2ler 3or
2nan 3dall 3er 4s 2re 3rell 2us 1əhmasibli 0uaithne 1baldi 1chida 1dinese 6i 1ecker 1galde 3rte 2hi 2rinic 2urlu 1hl
3ig 1ibo 2ttenbosch 1kic 1ldry 2ibarri 2lery 3man 6n 3oa 3rich 2m 3er 2rey 1mana 2berger 2stead 1nderhill 5wood 2g
3ar 5etti 3er 2iacke 4que 2know 2rein 3uh 2t 3erberger 5weger 2zueta 1otila 1padhyay 2church 2degraff 3ike 2ham 4us
3uis 4s 2pal 2shaw 3on 2ton 1ram 4ova 2b 3ain 4nek 5iak 5ova 5ski 5y 3ina 3lik 6ova 3onas 2en 4a 4o 3sti 2ia 4rte 4s
3be 3ch 4k 2lic 2quhart 2ra 3utia 2so 2zua 1selton 2ic 2rey 3y 2sery 1techt 2ley 2sey 2t 3erback 1us 3italo 3talu
0vaananen 2ca 3ca 5ro 3ek 3hon 3i 3kova 2den 3nais 2es 4sen 2her 3i 3t 4er 4ra 2idya 3l 4lancourt 7t 3nio 3sanen
2jcik 6ova 3da 4ova 2la 4ch 6ova 8ic 9cova 4dez 4squez 4zquez 3buena 3carcel 3debenito 5rrama 5s 5z 4ivia 4ovinos 3e
4ncia 8no 5t 6a 6e 6i 7c 7ne 8o 9va 6ova 5za 6uela 4ra 5o 4tte 4z 3ge 4uarnera 3i 4cek 7ova 4er 4maki 3jetic 3k 4ama
4onen 3l 4adares 4e 5cillo 5e 5jo 7s 5lian 5nduuk 5ry 5s 5t 6ta 4iere 5n 4o 5ne 4s 3marana 3tierra 4onen 3usek 7ova
5ka 6ova 3verde 4o 2n 3aga 5s 4llen 5styne 4rsdale 4tta 4uken 3brabant 5unt 4uren 5skirk 3camp 4leave 3daele 5mme
4ecasteele 5grift 5kerckhove 5mark 5nberg 9gh 9ghe 7osch 7roucke 7ussche 6driessche 5putte 5rbilt 7urg 6ford 6griff
6heyden 7off 8of 6linden 6mark 6pool 6straeten 6vort 5usen 5velde 7nter 5walle 4iver 4oren 6n 4usen 4yke 5ne 3egas
4k 5ova 4tten 3fleet 3g 4ilder 4order 4uilder 5ndy 3hee 4ook 6se 5rn 7e 5uten 7te 5ve 5y 3kirk 4ova 3landingham 4eer
5uven 3matre 4eter 3n 4atta 7er 4ess 6t 7e 4orman 5te 5y 3over 3pelt 3sant 4coy 5yoc 4ickle 4lyke 4teenkiste 3tassel
3valkenburg 4itelli 3wagenen 6oner 4ingerden 6kle 4ormer 4yk 3zandt 6t 2ra 4di 4no 4s 3ela 4s 3ga 5s 4hese 4o 3ik 4s
3key 3ley 3ma 3nado 4ell 5r 5y 4um 3tiainen 4y 3ughese 2sa 4ri 3binder 3concelos 3ekova 3iliev 3ka 4o 5va 3ques 6z
3s 4allo 5r 4er 5ur 3tenhouw 2th 3timo 2ugh 5an 5n 5t 2vra 4inec 8ova 4ova 2yrynen 2z 3quez 1each 3l 4e 3s 4ey 4ley
3tch 3zey 2cchio 3ellio 3oli 2dder 2enendaal 4stra 2ga 4s 3t 2ic 3lleux 3t 4ch 4h 2jar 2la 4rde 4sco 5quez 4zco
5quez 3dak 6ova 4erman 3ez 3iz 3la 3oso 4z 3tman 4ri 5oni 2nable 4lainen 3detti 4itti 4rell 3egas 4y 4zia 7no 3ier
3kataraman 6esh 3ne 3ters 4imiglia 4o 4ura 6i 3uti 2ras 3beeck 6k 5ke 4iest 5st 4oom 5ven 4ruggen 8he 3cammen
5uteren 4elloni 4her 4oe 4ruysse 3da 4e 5jo 4i 5er 5n 4onck 6e 4u 5go 5zco 3eecke 8n 5n 4lst 4s 3faillie 3ga 5ra
5ssola 5uwen 4eer 5rio 3haar 5egen 7he 5gen 5ren 4eij 5lst 5uvel 5yden 6en 4oeven 4ulst 3kade 3linden 3ma 4eersch
5il 6r 7e 8n 5ulen 5ylen 4illion 3ret 6t 4i 5ll 3sace 4chuere 9en 7t 4luijs 4tappen 5raete 9en 3toor 7en 3vaeke 6t
4ille 4oort 3wimp 4oert 2sel 5a 5ova 5y 4y 3ki 3pa 4ucci 3s 3tal 4er 6gaard 6inen 6lund 4in 2ternik 8ova 3ter
2ysəlli 2zina 3zali 1ia 3ene 3l 3na 4ello 3tor 2bbert 3erg 2cen 5a 5cio 5ova 5s 5te 3ini 3k 4ers 6y 4nair 4rey
2dakovic 4l 5es 4s 4urri 3ela 4s 3ic 3mar 3oni 4v 5ic 3rine 5o 2eira 3nne 4s 3ra 4dag 4ra 4s 2g 3il 3liotti 3na
4eron 4on 3orelli 3ue 2ik 3ra 3tala 5nen 2k 3lund 3s 4na 4trom 2la 4in 4lta 4nova 4plana 4r 4yətoglu 3ches 4ina 6s
3es 3helmsson 3janen 4evac 3ks 3l 4a 5blanca 5corta 5dicani 5fane 5gomez 6ra 8n 5lba 6obos 7n 8ga 6pando 6ta 6vazo
5ni 6ueva 6veva 5r 6eal 6osa 6real 7oel 5senor 5toro 5verde 4eda 5gas 5la 5mson 5na 6euve 4icana 5nes 2na 4s 3cetic
4i 4k 4ze 3ing 3k 3ogradov 3son 3ton 3yard 2rag 4montes 3gen 4ilio 3k 3ta 5nen 2sconti 3intini 3mara 3napuu 4ovska
8y 3ser 6s 3wanathan 2tagliano 4le 4sovic 3ek 4la 3iello 3kova 3ola 5ina 7s 5s 3tadello 4uri 2valdi 4nco 3eiros
4rette 5os 4s 3iani 6o 4er 2zcaino 5rra 7ondo 3intin 1lach 5ova 7ic 9ova 3dislavic 3eminck 3sic 4sov 2cek 3kova
2eugels 2k 3ova 2na 3ka 4ova 3ova 1odopivec 2egele 3lker 3t 2gan 3el 5sang 3l 4er 3t 2hra 2ight 4t 3nea 3sin 2jkovic
3tek 6ova 4ka 5o 6va 2larevic 5ic 3cke 3k 4ert 4man 4ov 3l 4brecht 4mer 3pe 3ta 4erra 3z 2ng 3lanthen 2orhees 5ies
4tman 2ra 3is 3kapic 3objov 4nin 4s 2s 3burg 7h 3e 3s 3u 2taw 2utilainen 2well 2yles 2zar 5ova 3ila 1rabcova 4ec 5l
6j 4lec 7ova 3ncken 6x 4ic 4ken 2ban 2eeland 3tenar 2hovec 2oman 3oman 1siliauskas 1ucetic 3in 3kovic 2e 2gdelija
3ec 2ille 2k 3man 3obratovic 4vic 3usic 2ljak 2ong 3rela 4i 5nen 1yas 2darena 7y 1əfali 2lioglu 4xanov 4yeva 4zadə
2ziroglu 6v 0waardeloo 2ble 2chtel 6r 3ker 2da 3dell 4ington 4le 4y 3hwa 3kins 3ley 4ington 3sworth 2fford 2gaman 4r
3ener 5knecht 5voort 3gener 4oner 3horn 3le 3ner 4on 3oner 3staff 3uespack 2hl 4berg 4gren 4strom 3ner 2id 3nscott
4wright 3te 5rs 5s 4s 2kefield 4land 4man 2lborn 4urn 3ch 5er 4k 4ott 4zak 3d 4en 5r 4man 4ner 4on 4rep 5on 6p 6up
5up 4schmidt 3es 3i 4a 3ker 4o 5wiak 4up 3la 5ch 4en 5r 5y 4gren 4ick 5n 6g 5s 4ner 3msley 3raven 3ser 4h 5e 4teijn
5on 3ters 4hall 4l 4man 4on 4rip 4z 3z 2mpach 4ler 3sley 2namaker 3dl 3g 3n 4amaker 4er 3sley 3tz 2rburton 3dell 5n
4law 5e 5ow 3e 4ham 3f 4el 4ield 4ord 3go 3ing 3k 4entin 3lick 3man 4er 3ne 5r 4ick 5er 4ke 4ock 3r 4ick 5ner 6gton
3then 2sham 4burn 4er 4ington 3ilewski 4nger 3on 3s 4er 6man 4on 2tanabe 3erbury 5field 5house 5man 3ford 3helet 5n
3kin 6s 3ley 4ington 3son 3ters 7on 4iez 2ugh 3ters 4hier 2xman 2yland 3man 4ire 3t 1eakley 3therall 7by 7ford 7holt
7ly 7sby 8poon 7wax 3ver 2bb 4er 4y 3er 3re 3ster 2chselberger 5ler 2ddington 4le 3el 3geworth 2eden 4man 3kley
3ldenburg 3ms 3rdenburg 3se 4ner 3ver 2gener 3man 6n 3ner 3scheider 2hmeyer 3ner 3r 4le 5i 2i 3bel 3dinger 4ler 4man
4ner 3gand 4el 4l 5e 3hmann 3jland 4ters 3kel 3l 4and 4er 3mer 3n 4berg 8er 4er 4garten 8ner 4hage 5old 4man 7n
4stein 6ock 4traub 3s 4berg 4e 5r 4gerber 4haar 4inger 4man 4ner 4s 5enbock 6r 5inger 5man 4t 4z 3tz 5el 5man 2lborn
3ch 5er 3don 4y 3f 3k 4e 5r 3lborn 4ens 5r 4ing 7ton 5ver 4man 4s 3sch 4h 3ton 4y 2n 3de 5l 4land 5er 5ing 4t 3ger
3inger 3nberg 4er 3sen 3tworth 4z 5el 3z 4l 2rdes 3necke 3t 4h 4s 4z 3y 2sack 3cott 3ner 3olowski 3sels 4on 3tberg
7ry 5rook 9s 5ury 4cott 4endorf 5r 6beek 8rg 7urg 6field 6lund 6man 9n 6velt 4fall 5ield 4gate 4hoff 4in 4lake 5ey
5ing 5und 4man 5oreland 4on 5ver 4phal 4ra 5ick 2therbee 7y 6ell 6ington 4ington 3more 3ter 4stein 3zel 4ler 2ver
2xler 2yand 5t 3dert 3er 3land 6t 3mouth 3rich 1halen 5y 3ng 3rton 3tley 2eatley 5on 3eler 5ock 3lan 4chel 4ehan 5ss
3rry 3tsel 5tone 4zel 2icker 3dden 5on 3gham 3pkey 4ple 3senant 6hunt 4ler 4man 4nant 4tler 3tacre 5ker 4beck 5y
4cher 6urch 5omb 4eaker 5d 5field 5hair 6ead 6ill 6orn 7use 6urst 5ley 6y 5man 5ner 5sel 8l 6ide 9s 4field 5ord 4ham
4ing 5s 4latch 5ey 5ock 6w 4man 6rsh 5er 5ire 5ore 4ner 6y 4sett 5on 4t 5aker 5ed 6more 6n 7burg 5ier 6ngham 8ton
5le 5on 5y 4worth 2obrey 3rton 2yte 1iberg 3le 2cht 3k 4ersham 4ham 4line 5und 4man 4s 5trom 2deman 4ner 3ger 3halm
3man 6n 4er 3ner 2ebe 3chmann 4zorek 3deman 4man 4ner 3gand 3k 3land 4och 3ner 4s 3r 4sma 3sbauer 4e 5r 4inger 4ner
4t 2gfall 3gin 6s 6ton 4s 3ht 5man 3ington 3ley 3man 2jland 2ke 3lund 3strom 2lbanks 4orn 5urn 3cher 4ken 4ox 6en
6on 6son 3de 5r 6muth 5s 4man 4s 5chut 3ey 3finger 4ong 3ham 4elmsson 4ite 4oit 7e 3iams 3k 4e 5n 6s 5r 6son 5s 5y
4ie 5n 6s 7on 4s 3laert 5ims 5me 6s 4banks 4cox 4eford 5kens 5ms 7en 5r 5tt 7e 5y 4hite 4iams 8on 5ford 5lams 5ngham
5s 6on 5ts 4man 5on 4oughby 4sey 5on 3mart 4es 5t 4ont 5re 5t 6h 6te 4s 5en 3ner 3sey 4on 3ton 4se 5hire 4z 5ius
2mberly 4ish 4ley 4ush 3er 3mer 2nandy 5s 3berg 4orne 4urn 5sh 3chell 6ster 3der 6s 4hager 6m 4isch 4le 6y 4om 4sor
3ebarger 5renner 4gar 4r 3field 4ree 6y 3gard 5te 4er 6t 5t 4field 4ler 4o 3inger 3kel 6man 4field 4le 6man 6r 6s
3land 3n 4ett 4ingham 4rich 3sett 4hip 4low 4or 4tead 3t 4her 4on 2pstrik 2reman 3t 4h 4z 3z 2seman 4r 3hart 3ner
5ski 4iewski 2tcher 3ham 4erell 6ington 6s 7poon 4row 3kowski 3man 4er 3t 4e 5n 5r 4ig 4man 7n 5er 4rock 3zel 2x 3om
1offord 2gerbauer 2hlgemut 4muth 3rer 2jciechowski 5k 3towicz 2lak 3bert 3cott 3d 3fe 5nbarger 4f 5el 4gram 4ord
4sdr 5on 5winkel 3k 4en 3l 3ter 6s 3verton 3zak 2mac 5k 3ble 3mack 2n 3g 2odall 5rd 4berry 5urn 7y 5y 4cock 4ell
4fin 5ord 4ham 5ouse 4ie 5ng 4land 5ey 4man 7see 4ring 5uff 6m 4side 5on 4ward 5orth 4y 5ard 3lard 4bright 4dridge
4ery 5y 4f 5olk 6rd 4ley 4ridge 4sey 4um 4verton 3ning 3sley 4ter 3ten 4on 4ton 2rcester 3den 3ley 3mley 3rall 4ell
3sham 4ley 3tham 5en 6y 5ington 5ley 4man 2tring 2udenberg 3lfe 3ters 7z 2zniak 1ratt 3y 2enn 2ight 4ley 2obel
4lewski 3ten 2ynn 1uest 2lf 4f 2nder 6ink 6lich 3sch 2rm 3st 5er 3th 3zer 4inger 2thrich 3ke 2yts 1yant 3tt 2ble
2che 3koff 3off 2dra 2gant 2lie 3lie 2man 3er 3ore 2nants 3koop 3n 3ter 2rick 2se 3ocki 4ng 3s 0xakimov 1ie 2ong
1əlilov 0yadav 2eger 2ger 3i 2le 2mada 4guchi 4moto 4saki 5hita 2ncey 4y 3dell 3es 4z 3g 2o 2qubov 2rber 4orough 4ro
6ugh 3dley 3ger 3nell 2tes 2zzie 1banez 3rra 1eager 3rby 4wood 4y 3tes 2dinak 2e 2h 2ldell 3le 3ton 3verton 2oman 6s
2pez 2rby 3ger 3kes 2tter 2ung 1ildirim 3maz 2m 2n 3gling 4st 2p 1linen 3talo 2onen 1oakum 2ckey 3om 3um 2der 2gi
2hannan 3e 3o 2kley 3ota 4yama 3um 2n 3g 3ker 2o 3n 2pp 2rk 4e 2shida 5oka 3t 2ther 2u 3mans 3nce 4gberg 6lood 5man
5quist 5s 4ker 5in 4t 5s 2w 3ell 1uan 2en 2has 2n 3g 3ker 2sifoglu 5qizi 5zadə 3te 2tzy 0zaal 2bala 5eta 4rella 3el
3jacan 3orska 7y 2ccagnini 5rdo 4hia 4o 3h 4ar 6a 6ia 8s 9ova 6ova 3kery 2gar 3er 3uri 2hharov 3n 2itsev 2jac 5ova
3c 3icek 2k 3e 3inja 4s 3ova 3rajsek 4zewski 2leski 4wski 3ite 5is 3okar 2marripa 3brana 7o 3engo 3ora 6ni 7o 3pa
3udio 2nazzo 3der 6s 3g 4erl 3ichelli 3k 4er 3oski 3zi 2pata 3ien 2ragoza 4te 3ina 5s 3lino 2strow 2uner 2vala
2wacki 2yas 2zueta 1binden 1eba 3ec 3rowski 2cchini 3hmeister 4ner 2dillo 2emans 2ffirelli 2hetner 3nder 4er 3r
2iger 4ler 3ler 4inger 3mes 5t 3ner 3tler 4z 2laya 3denrust 3edon 4znik 8ova 3ic 3l 4er 6s 4mer 4ner 3tina 6s 2man
5ova 3ljic 2ndejas 3ner 3teno 3z 2peda 2rangue 3be 3ingue 3jav 3meno 2tterberg 4icci 4l 2venboom 2zelic 1gorelec
1hang 3o 2eng 2ou 2u 1iani 2bert 2c 3hichi 3k 2ebarth 3gert 4ler 3linski 4ke 3mba 4ele 6is 5r 2gler 3mund 7ova 3o
4va 2jlemans 4mans 2kovic 2ma 3ka 4ova 3mer 6man 9n 3ova 2ngg 3k 4e 3n 2olkowski 2rkle 3me 3ne 4is 2to 2vic 3kovic
2zek 1maic 1nidarsic 1obel 2chling 2eller 2hrer 2la 3l 4er 4inger 2ok 2ppetti 7o 2rbach 3ko 3man 3n 3rilla 2tter
1rilic 3nski 1ubcic 3ek 5ova 4r 3ia 3ka 4o 5va 3rik 6ova 2cker 6man 2ehlke 2fika 2gec 2idweg 3jdveld 2jev 2kauskas
3ov 4wski 2llo 2mwalt 2nec 3iga 2pan 5c 6ic 5ic 2ravljov 3cher 3ita 2vela 2zic 1vaigzne 2er 2irbule 7is 1wart 2ick
3jsen 3lling 1ylstra 0əbdulrəhmanli 1diloglu 1fəndiyeva 6zadə 1hmədli 5ov 5zadə 1kbərova 5zadə 1libəyli 6ov 3oglu
3xanli 3yeva 3zadə 2ləzoglu 2əkbərli 7zadə 1mirli 4ov 6a 1sgərli 5oglu 6v 7a 1ylisli 1zimzadə 0αβαγιανοσ 2ραμιδησ
7ου 6ωτησ 5πεκη 1γαλιωτησ 2γελακη 7οσ 5ησ 5ιδησ 7ου 6κασ 5οπουλοσ 6υσοπουλου 2κυροπουλοσ 2ραφιωτη 1δαμοπουλοσ 9ου
1ετοπουλοσ 1θανασακησ 6ιαδη 9ου 6οπουλοσ 1καλιδησ 2ριτιδησ 4ωτησ 1λατζακησ 3φακησ 2εξανδρακη 8ιδου 8οπουλοσ 4οπουλοσ
9ου 2υσανδρατου 1μπατζιανησ 3λιανιτησ 2υγδαλακησ 1νανιαδου 3στασακη 9ησ 7ιου 7οπουλοσ 5οπουλοσ 2δρεανιδησ 4ιανοσ
5κοπουλοσ 5οπουλοσ 5ωτησ 4ουλακησ 7ιδακησ 2εζακη 2τωνακη 7οσ 5εασ 5ιαδησ 6ου 5οπουλοσ 1ξαοπουλοσ 2ιωτησ
1ποστολακακησ 9η 9ησ 7ιδησ 9ου 7οπουλοσ 1ραμπατζησ 3πακη 4ιδου 2γυρακη 5ησ 5ιου 5οπουλοσ 9λου 2ματα 3ενησ 2σενακη
2χακη 4υλησ 1σαριδησ 2ημακοπουλοσ 4οπουλοσ 2λανιδου 2ουχιδου 2σαργιωτακη 1τσαλακη 1υγουστησ 1φρουδακησ 0βαβαση
3ουλιδησ 5ρακησ 2γενα 2ζουρα 2ιου 3ραμιδου 3τσοπουλοσ 2καλακησ 5ησ 3ουφτση 2λαβανησ 4σιδησ 3εντη 3ιακα 3κανου
3σαμιδου 3τασ 2μβακασ 4ουκακη 2νδωροσ 2ρακλησ 3δακησ 3ελιδου 3θαλιτη 3ουτιδου 3σαμησ 6ου 4οσ 2σιλακη 8σ 5ειαδη 7ου
5ογιαννησ 6πουλου 3σησ 2φειαδου 2χουθιανακησ 1ελεντζασ 2ρβεριδου 4ιτη 1ιδαλακησ 2λδοσ 2ολατοσ 2τσαξησ 1λασση
3χοδημου 5νικολεασ 5σ 5υ 2ησαρουλησ 1ολικακησ 2ρλοκασ 2σινακη 2υκασ 3λγαρησ 7ιδου 4κοσ 4τσιδου 3ρασ 3τσασ 5ελασ 5ινα
1ραδη 3κα 3σκου 1υζιηνου 1ωσσοσ 0γαβριδακησ 5ηλ 7ιδη 2λανακη 5η 5οπουλου 4τουλασ 2ρουφαλησ 3υφαλιδησ 2τοσ 1ενετζακησ
3νηματασ 3τιμησ 2ραρδησ 3οδημοσ 4κωστα 4πουλοσ 4υκη 2ωργακοπουλοσ 9ουλου 6λασ 7ησ 6ρα 5η 5ιαδου 6τση 5ουδησ 7λα 9κη
9σ 1ιακαμοζη 3ννακεασ 7ησ 7ιτσασ 7οπουλοσ 8υδακη 9δακησ 6ρα 5ελοσ 6σ 5οπουλοσ 9λου 6υκοσ 3πατζησ 3σημακησ 3τρακου
5ομανωλακησ 2ωτακησ 4ησ 1καβρου 3γκα 6ουδακησ 6σ 3λιου 3νατσιοσ 3τζογιαννησ 2ικασ 4οπουλοσ 3νησ 3ολδελησ 3ριτζιωνη
3τσακησ 2οβα 3νη 3τσησ 3υβα 5ελοσ 4νη 4σκοσ 4τζαμανησ 1ουλα 3πα 3ργουλησ 3σιοσ 1ραμματικοπουλοσ 9οσ 5ενου 3τσιασ
2εβεναρησ 3τοσ 2ηγοριαδησ 9ου 7ου 6οπουλοσ 9υλου 2ιβα 5σ 0δαγλη 2ικου 2καναλησ 2μαλα 4τοπουλου 3ηλου 2νδανιδου 3εζησ
4λησ 3ιηλιδησ 2ρασ 3διωτη 3σακλη 2υιδ 2φνη 1εδουκου 2λη 3ιοσ 2ρλωπα 3μιτζακησ 2συλλασ 1ημακογιαννη 3ησκησ 4τρελου
6ιαδου 7ου 6οπουλοσ 3οβελησ 4πουλοσ 9υ 4υ 3τσουδη 1ιακακησ 4ουμη 3μαντησ 7οπουλου 2γκασ 2νεζακησ 2οπουλου 1οβασ 2σησ
2υβαλη 4ικασ 4ροπουλοσ 3κασ 5τζησ 4ιδου 3λαμη 7σ 4γερακη 9ησ 4ουφακη 3μασ 3νησ 3ρανησ 1ραζιωτησ 3κακη 7σ 4οπουλοσ
5υλη 3μουντανη 2ιβα 2οσου 3υλιασ 2υμαλιτου 1ωρη 0ελευθεριου 1μμανουηλ 9ιδου 2ποροπουλοσ 1νωτιαδη 1σπεριδησ
1υαγγελακη 8τοσ 7ιδη 8νοσ 2καρπιδησ 2στρατοπουλοσ 2ταξιασ 1ψιμοσ 0ζαβιτσανου 2ννικου 2ραφετασ 3ειφοπουλου 3ζανη
2φειρη 7σ 2χαριου 8δακη 1εγλινα 2νεμπισησ 2ρβα 2υγιτησ 1ηδιανακησ 2ματικασ 2ροσ 1ιακασ 3ρα 2ωγοσ 1ολωτασ 2ρμπασ
2υκησ 3λουμησ 3νησ 1τουκοσ 1υγουρη 7σ 1ωη 2νιοσ 3τανου 2τοσ 0θασιτου 1εοδοσιαδου 7ου 4ωρικακοσ 6οπουλοσ 9υλου 3λογοσ
3χαρησ 1ηβαιοσ 1ωμακου 4σ 3οπουλοσ 0ιακωβακησ 2τροπουλοσ 1ντζεσ 1σαρησ 2ερησ 1ωακειμ 7ιδου 2σηφιδησ 7ου 0καβουρησ
2ζανοπουλοσ 5τζη 2καβοσ 4τσοσ 3κα 3οσαιοσ 4τριχη 2λαθα 4ιτζακησ 7οπουλου 4μαρα 8κησ 8σ 5παλικησ 4ποδησ 4ργυροσ 3δη
3εμη 3ιαμποσ 4τσουνακησ 3λιανταση 3ογιαννακη 9η 4μοιρη 4υδη 2μιναρη 3πακασ 4εριδησ 4οσακησ 5υρη 2ναβοσ 3ελη 5λη
6οπουλοσ 9υλου 3ταρελη 2πανταιδακη 4τσωρησ 3ετανιοσ 3νια 3ουνησ 5ρνιωτη 2ραγιαννη 9ησ 6οβαννη 5ρηγοριου 4δημοσ
4θαναση 4ισκοσ 4καξησ 6στανιασ 5υριου 5ωνσταντινου 6στα 4λησ 4μανη 7λη 7οσ 5πασ 6η 6ινα 5σαλησ 4νανου 6σιου 5ησ
5ικασ 7ολασ 5τανα 6ζοπουλοσ 4ογλανη 4τασου 5ζαφερησ 6ικοσ 3βελη 3γακου 3καλετση 5νακη 3ολιδου 4υντζοσ 5σοσ 3τασ 3υδα
4πιδησ 2σκαουτη 3μιρλη 3ουτσασ 3σωτακη 3τανησ 2τακησ 4ραχιασ 3εβατησ 3ιρτζησ 3σαβοσ 5μανησ 5νικου 6τωνη 9ησ 5ροσ
5φαδου 4ιγιαννη 9νησ 5λησ 6λη 5μαλη 7νη 5πησ 5φοσ 4ογιαννησ 5υλα 2φανταρη 9σ 3ιρησ 3φε 2χριμανιδη 2ψαλησ 3η
1ελαιδωνησ 3λαρησ 2ρασοβιτησ 2σαλιδησ 3εμιδησ 3ιση 3κινη 2τεσιδου 2φαλη 2χαγιασ 1ιοριδου 3σεσ 3υπλιωτησ 4σησ 2σσασ
2τινοσ 3σου 1λεινακη 2ημησ 1οκκινιδου 6ου 3ορδελησ 2λαιτου 3κασ 3λια 3οβοσ 4καθησ 3τσακη 3χουρησ 2μκουδησ 3πολιασ
2νδυλιδησ 3ιαρη 4δαρησ 3σουλα 3τακοσ 4ογεωργακη 6ιαννη 9νησ 5κωστασ 5σ 5υ 2ρδατζησ 3μποπουλοσ 3ομηλασ 5ποκη 3ωνιδου
2τρωτσου 3σαρησ 4ινα 3τικασ 2υβασ 3ζουλα 3θουρη 3κλατζησ 4ουβα 7ινοσ 6θακη 6λιαντασ 3λαουσαρη 4ιδησ 5ζοσ 4ουμπου
6ριωτησ 5χερη 3μαρα 4ιωτησ 3ρακοσ 4ελησ 4ησ 4κουτασ 4λου 4σαρησ 5ουμιδησ 4τησ 3ταλιοσ 4ελιερησ 5ντακησ 4κια 4ουζιδου
4ρησ 4σικοπουλοσ 8σ 8υρη 6ουμαρη 5οβιδου 6γιαννησ 9ννοπουλοσ 6νικα 6υλησ 7μπεη 9η 7νακη 7ρασ 8ελη 9λησ 4χιασ 3φακη
2φινακη 1ραββαριτησ 2εμμυδασ 2ιαλησ 3τσελησ 1τενιδησ 1υμπαρησ 2πραιοσ 4ιωτησ 2ργια 6κησ 3ιαζησ 5κακησ 6ιδησ 6οπουλου
7υ 8λη 5ννακη 5τσουλησ 4τση 7σ 3κουδη 3ουδη 1ωνσταντακοπουλοσ 9σ 8ινιδησ 9νιδου 8οπουλοσ 9πουλου 2στακησ 5λησ 4ιδησ
4οπουλοσ 9ου 5υλασ 2τουλα 7σ 3σιδησ 5κορησ 5ονοπουλου 4ου 3τασ 0λαγγουσησ 3ογιαννησ 4πατησ 2ζαριδησ 2κκασ 2λαουνη 4σ
2μπρινοσ 2ουρδεκησ 2ππασ 2τσκοσ 2φατζησ 1εβεντησ 2κκα 2λεδακησ 4κασ 2μονησ 2ντζιου 2πιδα 1ιακου 3νακησ 4ου 2βανοσ
2θοξοιδησ 2ναρδακη 2ολιοπουλου 6σ 3ντη 3υκα 4τασ 2τινασ 3σιου 1ογκακη 3οθετη 2υλακησ 3μπουτσκου 3πασακησ 3ραντοσ
1υγκουρασ 2μαξη 3περησ 2ρη 2τρα 1ωλοσ 0μαγκαναρη 5φοπουλου 4ουφησ 3ουλα 2ζαρακησ 2καριαδησ 3ρη 5σ 4οπουλου 4υγιαννησ
5κωστασ 2λαμα 3ιμη 3λη 2μαλα 3μησ 2νδαλοσ 4ροσ 3ελιδησ 4τα 3ιατη 4κασ 4ταρου 4ωτησ 3οπουλου 4σ 4υκασ 5σελησ 6ιαδησ
6οπουλου 3τα 5ρησ 5σ 4ζουρανησ 5ωροσ 4ου 3ωλακησ 5εασ 2ρα 4γκοσ 4κασ 5η 3γαρησ 6ιτακη 8η 6ωνησ 4ια 3καντωνακη
4οπουλοσ 3ουγιαννη 3ρασ 3τζουκου 4ιαδου 2σαουτη 3γαλασ 3ιαλα 4κα 3οπουλοσ 3τορασ 4ραγγελη 5ογιαννησ 9ννιδου 8ωργησ
2τεντσιδου 3σουκασ 6ρη 2υραειδη 4ιδη 6ου 5κακησ 4ογονατοσ 5ειδακοσ 8η 5μανωλακησ 6ματησ 5πουλου 5υδησ 6τσοσ 1ειμαρησ
2λανι 3ιτσοπουλοσ 2νγκ 2ξη 2ταξασ 1ηλιαδου 5κη 4ωρησ 2να 2τριδησ 4οπουλοσ 9ου 3σοπουλοσ 9ου 5υ 1ιλεα 2σιδου 3χοσ
2χαηλιδησ 8ου 4λακησ 6ρου 5ελλησ 3ελακακη 5η 3οσ 4υ 1οκασ 2ναχασ 2σχοβακη 5πουλοσ 2υσελιμησ 3τζουρη 4ουσιδησ
1παγανασ 3κλαβασ 4οστεργιου 5υλη 3λαμπανη 5νικα 5ση 6κασ 4η 4λη 4ουκιδησ 4ταγιαννησ 6τζη 5ζησ 3ντεσ 5ησ 3ρκουτα
3τζανη 4σακη 3φερα 4ιτη 2εκακου 4οσ 3λεκου 3νετου 3ρεδημασ 4μπατιωτησ 3συρη 2ικα 3λλασ 3μπικα 6ρη 2λανασ 3ιατσιου
2οζικη 7σ 3νελη 3τζα 5ιωρη 4ησ 4σωλησ 4ωνησ 3υζα 4κοσ 4λουκοσ 4ρλησ 4σιοσ 3φοσ 2ραεσα 4ζιωτησ 3ουζου 2υρου 1υλωνασ
5ιδου 2σιρλησ 2ταρη 3ελετσησ 1ωραιτη 7σ 3οσ 2υσιδου 0νανουρησ 3τσου 2ουμ 2σικασ 4οπουλοσ 3σου 3τατοσ 4οσ 2τσουλη
1ελοσ 1ικα 3ητοπουλοσ 3ολαιδησ 6ου 6του 5οπουλοσ 9λου 6υδακη 4υλησ 2τσοτολησ 1ουσησ 1ταβασ 3γκαλη 3νου 4ωλα 2ζιαβιδα
2οβα 5σ 3κοσ 3τησ 4ση 3υλιασ 2ριβαλα 1ωε 0ξανθακησ 4οπουλου 1ενακη 3ιδη 3ου 1ηριδου 3ογιαννησ 4δημα 4σ 4τυρη
1υγκακου 0οικονομοπουλου 8υ 1ρφανακησ 5ιδου 6ωτησ 1τσοσ 0παγκαλοσ 2λαιολογοπουλου 9οσ 4μπουγιουκη 3ηοσ 3ιερακη 4ουρα
3λασ 2ναγιωτακοπουλοσ 9κοπουλου 8ου 3δησ 3κιδου 3οπουλου 4σ 4υ 5σησ 3ταζη 7σ 4ζαρτζιδησ 5εκοσ 5ιου 4ισκα 4οσ 5υ
2παγεωργιου 5ιαννακοπουλοσ 9ησ 9οπουλοσ 4δακησ 5ημα 7ητρακησ 9ριαδησ 9ροπουλου 5οπουλοσ 9λου 4ευαγγελιου 9ελου
4θανασιου 5εοδοσιου 5ωμα 4κωνσταντινου 6στα 4νανου 5δρεου 7ικοπουλου 5ικολαου 5ωτα 4πανοσ 4ροιδαμησ 4σπηλιωτοπουλου
5ταυρου 6εργιου 4τζηκα 5ρεχασ 4φωτησ 4χρηστου 3ουδησ 5λησ 5τσοπουλου 3πα 5σ 2ρανου 4σκευα 8οπουλοσ 3γανασ 3ουσησ
2σσαλιδησ 2τελησ 5λη 3ινιωτακη 3μανιδησ 3σουρασ 7εα 2υλακη 4η 4ιδου 1εμουση 2ππασ 2ρακησ 3δικακησ 6ησ 3ιστεροπουλοσ
3ουλακη 3πινιασ 3ρακησ 4ωτησ 2τρακη 7σ 4ιδησ 6ου 5τακησ 4ογιαννησ 5πουλοσ 5σιαν 5υ 3σασ 4η 4ια 3τα 2υκιανακησ
1ιαγκοσ 2κουνησ 3ροσ 2περακησ 5ιγκοσ 6δη 3πασ 2σκοπανη 3πα 3σιοσ 3χινασ 2τεροσ 3σακησ 4ησ 4ολησ 1λακωταρησ 3τακη
2ιατσικασ 1ολατιδου 3εμη 3ιτου 3υζωακησ 4χρονησ 8ιδησ 8οπουλοσ 2ριχησ 3φυριαδου 2σαντζη 2ταμιανου 2υλη 5μενοσ 4ιαση
5δα 5εζοσ 4ογιαννοπουλοσ 3ρναρα 3φτσησ 1ρεκα 2οβησ 3υβα 1υλαρινοσ 2ροβολου 0ραγκουσησ 2διοπουλου 3οβαλησ 2λλησ 2πτησ
2υτοπουλου 2φιοσ 2χμανιδησ 3ωβιτσασ 1εγκασ 2ντασ 4ζοσ 2ππα 4οσ 1ηγασ 2νοσ 1ιγκοσ 2ζοσ 4υλησ 2σβασ 1ογαρησ 3γα 2δησ
3ιτου 2ιδουλησ 2κασ 3κα 2υπακασ 3σιανοσ 4σου 1ωμαιου 0σαββακη 2κελλαριου 3κη 2λεμη 3ιχοσ 3ταουρασ 2μακιδησ 4νιδησ
4ρασ 3πανη 3τανιδου 2ουερ 4λιδησ 2πρικη 2ραντινοσ 4φιδησ 3ιδακη 4κασ 3ρη 4οσ 2τλασ 1γουρενα 5οσ 1δουκου 2ραλλησ
1εβαστου 3δασ 2λινοπουλου 2μπεπου 2φεκοσ 1ηκωτιδου 1ιββα 2γανοσ 2δερησ 3ηροπουλοσ 9λου 2καλιδησ 2μητοπουλου 3ιτζη
2ολου 3υτα 2τοπουλοσ 2ωμοσ 3ρησ 1καβεντζου 3ρλατοσ 4πετασ 3σιλα 3φτουρου 2ορδακησ 5οσ 3ταδη 3υλαριδησ 4μπρου 2ρεκασ
4μμυδα 3ιμπασ 2υλογιαννη 1μαρδασ 2ιτ 2πονιασ 3ρινησ 2υρνιωτησ 1οκολακη 2λακουδησ 3ωμιδου 2υλιντζησ 3ρμπησ 2φιανοσ
3ρα 1παθαρη 4οπουλοσ 3λασ 3νδωνιδησ 4ιδου 4οσ 5υδακησ 5χριστοδουλου 3σεγκου 4οπουλοσ 2ηλιαδου 5ωτησ 2ορδιλησ
2υριδακη 9σ 4οπουλοσ 1ταθα 5τοσ 4οπουλοσ 3ματησ 6ιαδησ 6ουκου 4ελοσ 7υ 4οπουλοσ 5υλη 8σ 3υριανοσ 6δου 5οπουλοσ 6υ
2εργιαλησ 6ουδησ 3φανου 2ογιοσ 3υμπου 3φοριαδησ 2ραβοσνιχησ 4τογιαννη 3ουμπα 2υλιανιδου 1υβιλια 2κασ 2λλιγαρδοσ
2μεωνιδου 2νοδινου 2ργησ 3μου 3ρησ 2ψα 1φακιανακη 2ουνησ 2υρλασ 1ωτηραλησ 5οπουλου 0ταβερναρακησ 2καντζασ 2μιωλακησ
3πορρινο 2ντου 2ξιδου 2ρναρησ 2σιοσ 5υλασ 3ση 2τση 2υλαριδου 2φραλη 2χασ 3μαζιδησ 3τσιδησ 1εμουρτζιδησ 2ρζησ 4ιδησ
1ζαβελλασ 3γκα 3λλασ 3ναβαρα 4ουδακησ 2εβελεκοσ 3κοσ 2ηκασ 2ιαβασ 4ρασ 3γκουρα 3νιερησ 3οβα 4ρτζιοσ 3ρατουδη 3ωρτζη
4τζησ 2ουβελησ 4μακησ 1ογια 2δωρησ 2λη 3ουδησ 2μπουλιδου 4ρη 2παλη 2ρομιδησ 2σουνη 2υλακη 4ουπη 3ρνα 6βιτησ
1ραγουστη 3χιλησ 2εντσιου 2ιαντακωνσταντησ 7φυλλου 3βελλασ 3κα 3φτανιδου 2ομπουκη 1σαγκρασουλησ 4λιωτησ 3καλακου
5νικασ 4η 4ιρη 4μακησ 3λαμανδρησ 3μαδοσ 5σλιδησ 4οπουλου 4παλη 5ουρη 4τσουρη 3νακα 4δηλασ 4τιδου 3πραλησ 3ραμιαδησ
4κοσ 3τη 4σανησ 3χακη 2εασ 3γασ 3λιοσ 4λοσ 3μπερλιδησ 3ντουροσ 3του 4σερη 2ιακοσ 4μιτασ 5ουρασ 4ντασ 4ρασ 4τησ
3γαριδασ 3κνη 5ιασ 4ρικα 3μη 3ομπανη 4υπρα 3πλικωφ 3ρωνησ 3τουρασ 3ωλξ 2ολκασ 3μωκοσ 3πανιδησ 3τρασ 3υκια 5νιδασ
4μοσ 4νακου 4πρασ 4ρα 6κη 2ωνη 5σ 3τσησ 1υμβιου 2ραλησ 0υφαντη 0φαββατα 2λιεροσ 2νουργακησ 2ρμακη 2σατακη 3ουλη
6ιδου 1ειδεροπουλοσ 3ζατιδου 2ρεντινοσ 1ιδανη 2λιαγκου 4ππακησ 7τοσ 6οπουλοσ 7υ 3κα 1λασκη 1ουντζουλασ 3ρκιωτη
3σιεκησ 4κασ 3τσιτζησ 1ραγκιαδακη 5οπουλοσ 6υδακη 3ντζησ 2ογακησ 3νιμακη 1υδανησ 2τιλη 1ωκαδελησ 4σ 2λια 2τακοπουλου
3ιαδου 3ογλιδησ 4πουλοσ 0χαβρεδακησ 2λαντζουκα 4τσησ 3βατζη 3κιδου 2μαλιδου 2νταμπη 4ζη 2ραλαμπιδησ 9δου 8ουσ
3ισιαδησ 3μπιλασ 3παντιδησ 3τεροσ 2σαπη 2τζαντωνησ 4ελλησ 4η 5βλασιου 5γεωργιου 6ρηγορακησ 5δακη 5κυρκοσ 5μιχαηλ
5σαββασ 9ιδησ 6ταυρακησ 5φωτη 5χαριστου 4ιαρασ 4οπουλοσ 2χουδησ 1ελιοσ 1ητοσ 1ιτοσ 2ωτιδου 1ολεβα 2νδρολιδησ 6υδη
3τζια 2ροζη 3τατου 2υδαλακησ 3λιαρασ 3ντησ 3ρζαμανη 3χουλησ 1ρηστου 2ιστακησ 7οπουλοσ 6ρασ 5ογιαννη 6δουλακησ 9λου
6πουλοσ 9λου 6φορη 2ονοπουλοσ 9ου 2υσανθακοπουλου 5φη 4ιδησ 5κακη 6οσ 4οβεργησ 5υλησ 1ωριανοπουλου 4νου 0ψαλτησ
1υλλακησ 2ρρη 2χαρη 3ιασ 0абрагамовська 9ськии 4менко 5ов 7а 5чук 1вдеев 6а 3єєнко 2ерченко 2раменко 5чук 1гафонов
8а 1даменко 4чук 1жажа 1кименко 2сенов 7а 2уленко 1лександренко 9ов 9ова 5еев 8а 6єнко 5юк 5іичук 1ндонов 3реев 7а
5ико 4ощук 4усенко 4іиович 6чук 5євич 6нко 5ішин 9а 2исимов 8а 2тонов 7а 1ронець 2сенич 2теменко 5ьев 8а 3им 5ишин
9а 5ович 3юх 4шенко 2химович 4пенко 5ов 7а 1саула 1таманчук 6юк 2рощенко 1фанасьев 9а 0бабʼюк 4як 3ак 4риченко 3енко
3ич 5енко 3ко 3іи 5чук 2завлученко 3илевич 7ська 9кии 2ида 5к 3рак 2клан 3уменко 2лабан 4хуров 3канска 2ндера 4ура
6ка 2рабаш 4н 5ець 5ик 5ник 5ов 7а 2туринець 3юк 3іг 2шполченко 3тан 1гиденко 1ебешко 2вз 4енко 2дринов 2збородько
3дітко 2лежкова 3ов 5а 4зеров 9а 4усов 8а 3яев 6а 4ков 7а 2спалов 8а 1ирюков 7а 1линов 6а 2охин 6а 1обев 3ров 6а
3ылев 7а 2гданов 8а 2дуров 2льшаков 9а 2рисов 7а 1рагин 6а 3нков 3тухчев 1умов 2ров 5а 3ханларски 1ърборков 1ыков 5а
0вакарчук 3рилов 3уленко 2ленко 2мпирска 2нченко 2силашко 5евич 6нко 6чко 5ьев 8а 2таманюк 2хніи 2щенко 3ук 1довенко
4иченко 1еличко 2нгринович 2ргун 3ес 3менич 3нигора 5дуб 3типорох 3ховинець 5ла 2селов 7а 1иноградов 9ва 2сочан
2шивана 7ии 3няк 6ов 8а 1ладимиров 9ва 3сенко 4ов 6а 4юк 2ох 1обла 4ии 2вк 2лков 6а 2робьев 8а 4нов 7а 5цов 8а
1ражалски 1ъзвъзов 2ртунински 1івчаренко 2тер 3рук 0габелко 3ровлиева 2вриленко 7ць 6ишин 9на 6ов 8а 6юк 6ів 5ш
6кевич 4юшенко 2иворонська 9ькии 3да 5бура 5и 5мака 4енко 2лкин 6а 2євська 7ии 1ерасимов 9а 1оголь 2дунок 2лик
3обородько 3убев 7а 2рбачев 8а 4унов 8а 3деев 7а 3шков 7а 1радинарова 2есь 3чаник 4ко 2игорьев 9а 3ценко 3шин 6а
2омов 6а 1узенко 3ь 3іи 2к 2ляев 6а 2нько 2пало 2рьев 6а 2сев 5а 2цуляк 2щин 5а 1ьоков 0давиденко 4мука 3ыдов 7а
2нданов 3иленко 5ов 7а 5ьчук 5юк 3ченко 4ук 3ькевич 5о 5ів 2раган 2хно 2ценко 3юк 2чев 2шенко 3кевич 1евдюк 2инека
6о 3сун 2мʼяненко 6чук 6юк 3ентьев 9а 3иденко 2нисов 7а 2ргач 3евʼянко 4гус 3кач 3яжна 6ии 1жогов 2унь 3с 1зезов
2индра 2юба 1митриев 8а 1окова 2ронин 7а 4феев 8а 2ценко 1ришльов 2обʼязко 4аха 3зд 5енко 5ов 7а 1убас 3енко 3ина
2пліи 2рдинець 2тка 1ьячков 7а 0евдокимов 9а 2роповкирилов 2сеев 6а 1горов 6а 1ибоженко 1лисеев 7а 1мельянов 9а
1рмаков 7а 2шов 5а 1фимов 6а 2ремов 7а 0жадан 2иворон 2ліло 2рко 1данов 6а 2раков 1ук 3ов 5а 2равель 5лев 8а 3ба
2ченко 0забара 5на 6ии 4шта 3іла 2ицев 6а 3ченко 2кусило 2нов 2порожець 2руба 4дна 6ии 2сенко 3уха 3ядько 2товканюк
3ула 2харенко 5ов 7а 5ченко 2єць 2іка 1енгинов 1имин 5а 2новьев 8а 1латков 1убко 2ев 4а 1ыков 5а 1інкевич 3ченко 4ук
0иванов 6а 1гнатов 7а 5ьев 8а 1лиева 3кьов 2ьин 5а 1орданов 2ткова 1саев 5а 3ков 6а 0кабалюк 4ненко 5ов 7а 2денюк
2заков 7а 2лашников 9ва 3ениченко 3инин 7а 3ьченко 2нчин 3івець 2пустин 8а 2ракашев 4сь 3малюк 3па 4енко 4ов 6а
2търов 7а 2щенко 1елешев 2сьов 1ибкало 2лимник 2риленко 5лов 8а 2селев 7а 2тов 1латикрушев 4уров 1нязев 6а 1обиларов
2валев 7а 6нко 5юк 3пак 2дуков 2зак 4ченко 3лов 6а 2кошкова 2лев 4сников 9ва 7ченко 3ипатков 4чков 3обов 7а 4дуб
3чев 3існиченко 2мар 5ов 7а 3иссаров 9ва 2ндратьев 9ва 3овалов 9а 4нов 7а 4пленко 6я 3стантинов 9нова 2питко 3ылов
7а 2рбут 3ж 3нилов 8а 3олев 7а 6нко 3панюк 3сун 2стин 6а 4ов 2тов 5а 2шелев 7а 1расильников 9кова 2ивошапкова
2ушовска 2ылов 6а 2юков 6а 1удрявцев 9а 5шов 8а 2знецов 8а 3ьмин 7а 2лагин 7а 4ков 7а 3иков 7а 2ртажова 5кова 2чев
3куделова 1ърков 1ьоров 0лаба 2вренко 6тьев 9ва 2года 2зарев 7а 6нко 2пин 5а 2рионов 8а 1ебедев 7а 2вченко 2мешко
2сик 1имонадов 2сенко 2твин 6енко 2хачев 7а 1обанов 7а 2гинов 7а 1убенець 2каш 3ин 5а 2ланков 2піи 2ценко 1ыткин 6а
1яшко 0мазепа 3ур 2каренко 5ов 7а 6нски 3огон 3симов 8а 2лик 4шко 2монтов 8а 3чур 2навски 3гъров 5фова 2рков 6а
3тынов 8а 2слов 6а 4як 3оха 2твеев 7а 4ієнко 3яш 1едведев 8а 7нко 2льников 9а 2раков 3кушев 8а 1икитюк 2лачков
3енков 2ронов 7а 2хаиличенко 6ов 8а 6юк 4люк 3еев 6а 2шин 5а 1ладенов 8а 1ногознаева 1оисеев 7а 2лчанов 8а 2нтянов
2розов 7а 2скаль 2чев 1уев 2равьев 8а 2стакова 2хин 5а 1ясников 8а 1ірошниченко 2щенко 0назаренко 5ов 7а 2ливаико
2умов 6а 1егода 2дялков 2красов 8а 2порожніи 2стаико 4еренко 6ов 8а 1икитин 7а 4форов 9а 3олаев 8а 5ов 4нов 7а
1овиков 7а 2саченко 3енко 3ков 6а 3ов 5а 1іколюк 0оберемко 1внарски 2сієнко 2чаренко 3инников 9ва 1динцов 7а 1ліиник
3фіренко 1нищенко 2уфрієнко 2іщук 1панасенко 1рехов 6а 2лик 3ов 5а 2обець 1сипов 6а 2тапчук 1хримович 3іменко
0пʼятаченко 1авленко 4иченко 4ов 6а 2ліи 2нов 5а 3филов 8а 3чук 2расюк 4шкевов 2тков 2хомов 7а 2чаръзка 1евецова
2далов 2ева 2лех 2нджакова 2ребииніс 4пелиця 2стов 6а 2тлюра 3ренко 4ик 4ов 6а 3ухов 7а 1икянски 2липенко 2щовколева
1лощаков 2юнкова 3цова 1оаков 2лтавець 3яков 7а 2ндьов 3омарев 9а 2пов 5а 2тапов 7а 1риимак 3маченко 3нов 3тула
3ходько 2оикова 3копович 3хоров 8а 3ценко 3шков 2ъндачка 1улев 2стовіт 2шкар 1ъков 2рванова 2течкова 1іддубна 7ии
0радченко 2к 2нгелов 1ебрик 2ва 2дько 1импопов 1огов 5а 2дионов 8а 2жков 6а 2маненко 6ць 5ов 7а 5чук 2шльов 1убан
3ець 2дик 3ько 2саков 7а 1ыбаков 7а 1ябець 3ов 5а 5іл 4шапка 3ченко 0савельев 8а 4нко 3ин 5а 2галь 2зонов 7а 2ліи
2моиленко 6ов 8а 4ходов 3сонов 8а 2пунджиева 2фонов 7а 2цюк 2ченко 2єнко 1вириденко 3стун 1елезнев 8а 3иверстов 9ова
2менов 7а 5ченко 2ргеев 7а 1идоров 7а 2лин 5а 2меонов 3оненко 5ов 7а 2ротенко 2тников 8а 2ч 1киба 3рда 2опенко 3рик
4обогатько 2ринска 1ланинкова 2юсар 1мик 3рнов 7а 2ърдански 1оболев 7а 2колов 7а 2ловьев 8а 2мко 2паджиева 2рокин 7а
1танишев 2ельмах 3панов 8а 3ць 2оиков 2релков 8а 2ус 1убботин 8а 2воров 7а 2пруненко 2ханов 7а 1ысоев 6а 1імашкевич
2рко 3обаба 3ченко 0талан 2ралингова 4н 4сенко 5ов 7а 2тьозов 1вердохліб 1еличенко 3іженко 2рентьев 9а 4щенко 5ук
2сленко 4я 2терин 7а 1имофеев 8а 3ченко 4ук 2таренко 3ов 5а 2ха 3ии 3онов 7а 2чина 1кач 4енко 1овстоліс 5уха 2доров
7а 2кар 3ов 2пков 3чииски 2шев 1ретьяков 9а 2игуб 2офимов 8а 1умангелов 2ркало 3ов 5а 2турилов 2хчиев 1ъпчилещов
1ягнибок 0уваров 6а 1довенко 4иченко 1манець 1сик 2тенко 3инов 7а 0фадеев 6а 2ренюк 3тушняк 2стенко 1едоров 7а 4сеев
8а 4тов 7а 2неров 2сенко 1илатов 7а 3иппов 8а 1окин 5а 2менко 3ин 5а 4чев 7а 1ранко 4чук 2олов 6а 1урс 1іліпенко
0харитонов 9а 3ченко 1върчилков 1мара 1оменко 3ик 2рішко 2хлов 6а 1ристенко 5ич 1удобʼяк 3як 0царенко 1ветков 7а
1ибуленко 2мбал 6юк 2цков 1оцов 1ушко 1юпа 2цюра 1ісик 0чабан 2ика 2ла 3енко 3ии 2нлиева 2рниш 1екалюк 2рвоненко
3едник 3ненко 4ов 6а 3інько 2трафилски 1міль 1орновіл 1убаи 2ико 2ков 3чуков 2мак 4ченко 2петловска 3рина 2турков
0шабліи 2мраи 2повал 2рапов 7а 3ов 5а 2храи 2шков 6а 1ваика 3чка 5о 2едченко 1евченко 2лест 2ремет 7а 2стаков 8а
1ило 4в 5а 2нкаренко 2ряев 6а 2ян 1кембова 1моргун 1овкопляс 1тепа 2окало 1убин 5а 2тько 2хевич 0щербак 6ов 8а 5нь
1ириця 1орс 1укин 5а 1ърбов 0юдин 4а 1рганчев 2ченко 3ишин 7а 3ук 1хименко 1щенко 0якименко 4чук 2овенко 4лев 7а
2ушев 6а 1назов 1рема 4енко 4ко 5ів 4чук 2кова 2ош 1ценко 4юк 1щенко 2ук 0євдокименко 2тушенко 5ок 1мельяненко 3ць
1ременко 3сько 2моленко 2ошенко 2ченко 2ьоменко 1сипенко 1фименко 1щенко 0іваненко 4ичук 4ченко 3сюк 3щенко 1жак
4евич 1льченко 3єнко 1рванець 1саєвич 4нко 1щак 2енко 0ґалаґан 1ерета 4ґа 3ус 1жицька 6ии 1оляш 0աբազյան 3ղյան 7ց
3մելիքյան 3շյան 3ջանյան 4յան 3սյան 2գարյան 2դալյան 3ոյան 2եթնակյան 3լանց 4յան 3ղյան 3շյան 3սալոմյանց 2թեքյան
2իսալոմյան 4ողոմոնյան 2ոյան 3վյան 3ւջանյան 4սեֆյան 2րահամյան 3ոյան 1գիլյան 3շյան 2լինցյան 2շեհիրյան 2ոզյան 3ւլյան
4ջյան 2րալյան 4կլյան 4մազյան 4պյան 3իպասյան 3յան 1դաբաշյան 3թուրյան 3լյան 3մյան 7ց 3նալյան 4ելյան 4յան 3ջյան 2ելյան
3յան 2իբեկյան 3գյոզալյան 4ոզյան 3լխանյան 4յան 3խանյան 3մզալյան 3յան 3շյան 2լխանյան 2յան 2ոյան 3նց 3ւլյան 4նց 2րունի
1զաբյան 3նյան 3տիկյան 4խանյան 4յան 7ց 3րամյան 4բեկյան 4իկյան 4յան 4ումյան 2բեկյան 2գալդյան 6րյան 3ելդյան 3ուլյան
2դարյան 2իզբեկյան 4խանյան 4յան 3լազյան 3կյան 3րյան 2յան 2նավուրյան 2ոյան 3ւլյան 2րյան 3ոյան 1թաբահյան 4եկյան 9ց
3գյուլյան 3լարյան 4յան 7ց 3խանյան 3մանյան 4յան 3յան 3նագինյան 5սյան 4եսյան 4ոսյան 3շյան 3ջյան 3սյան 4ունց 3րբեկյան
4յան 3քյան 2բաշյան 2եճյան 3շյան 3րզյան 2ինիզյան 4յան 2լոյան 2մաճյան 4ջյան 2յան 2ոյան 3ռակալյան 3ւմյան 2չյան 2քյան
1ժանջյան 2դահարյան 4րյան 3երհանյան 2տեհանյան 4րխանյան 3իկյան 1լաբաշյան 4եկյան 5րկյան 6ճյան 3գյոզյան 3ջաջյան 3վերդյան
2եքսանյան 2ոյան 1ղաբաբյան 4եկյան 3ջանյան 3սյան 1մարյան 2իրբեկյան 4խանյան 1յվազյան 1նանյան 2դրեասյան 2ղալադյան 2ոփյան
2տոնյան 1ռաքելյան 2ուստամյան 1սատրյան 2լանյան 2տվածատրյան 1վագյան 2դալյան 2ետիսյան 2ոյան 2չյան 1տրյան 1րեգյան 3շյան
2զումանյան 2ծրունի 0բաբալյան 4յան 4ջանյան 3ուջյան 2գրատյան 6ունի 2դալյան 5ով 4սյան 3եյան 3իկյան 2զեյան 3ունց 2կունց
2ղդասարյան 2րսեղյան 1եկզադյան 6ով 3յան 3նազարյան 2ջանյան 2րբերյան 1ոյաջյան 2ստանջյան 2ւնիաթյան 3ռնազյան 0գաբոյան
4ւզյան 3րիելյան 2լաչյան 3դունց 3ոյան 3ստյան 3ֆայան 2սպարյան 6ով 2վալջյան 2րասեֆերյան 1երավետյան 2ւորգյան 1զիրյան
1իլոյան 2միշյան 1լեչյան 1յանջեցյան 2ուլնազարյան 4մուշյան 1նունի 1ուլաքսյան 4ումյան 1րիգորյան 0դաբաղյան 2դալյան 4սյան
2լլաքյան 2նիելյան 2րբինյան 3չինյան 1եմուրյան 2ւրիկյան 1իմաքսյան 1ոդոխյան 2լուխանյան 8ով 2խոլյան 4յան 7ց 2վլաթբեկյան
6յան 2ւդուկչյան 3զճակատչյան 3վալյան 0եգանյան 2որյան 1ղիազարյան 2նուկյան 1նգիբարյան 7ով 3ոյան 2իգոմեշյան 2ոքյան
1սայան 1րեմյան 2իբեկյան 2կանյան 1փրեմյան 0զադոյան 2զյան 2նազանյան 2վարյան 3րիյան 2տիկյան 2րգարյան 3յան 3ուբյան
2քարյան 3յան 3ոյան 1ելվեյան 2յթունցյան 3նալյան 1ոլյան 2հրաբյան 2ւռնաչյան 3րաբյան 0էլբակյան 2ոյան 2չիբեկյան 1նֆիաջյան
1սկիբաշյան 0ըրղաթբաշյան 0թադեւոսյան 2թուլյան 5նց 2մազյան 2շչյան 2ռայան 2րաքաջյան 1երզյան 2ւոսյան 2քեյան 1ովմասյան
3ուլջյան 2րգոմյան 3ոսյան 2ւմանյան 0ժամագործյան 3կոչյան 0իբրահիմբեկյան 1գիթբաշյան 4խանյան 4յան 1զմիրյան 1մաստունյան
2եքչյան 1շլեմեճյան 2խանյան 2տոյան 1սաբեկյան 9ց 3հակյան 2կանդարյան 2րայելյան 0լազարյան 8ց 2լայան 7ց 2մբարյան
1եմենցյան 1իպարիտյան 1ուսպարոնյան 1պուտյան 1ցկարյան 0խազաբաշյան 3խազյան 2լաֆյան 3իկյան 2նբաբյան 3զադյան 2շմանյան
2չատրյան 9ց 3ենց 3իկօղլյան 2ռատյան 1եչանյան 1զմալյան 1լղաթյան 1նկոյան 1ոդիկյան 2ւդոյան 0ծաղիկյան 2ռուկյան 2տուրյան
1երունյան 1որմոտյան 2ւռվիզյան 1պնեցյան 0կաբակուլակյան 4ղյան 4սկալյան 2դարջյան 2լդրիկյան 3ենց 3պակչյան 2մսարյան 9ց
2յֆեջյան 2շեգործյան 2րագյան 4խանյան 4մանուկյան 4պետյան 3ճիկյան 1ետիկյան 1ոթողյան 2նդախչյան 2շկակարյան 2ստանյան
2ւյումջանյան 1րպեյան 0հալաբյան 2խվերդյան 2կոբյան 2մբարձումյան 2յրապետյան 4բաբամյան 4իկյան 2ջինյան 2տիկյան
2րությունյան 1ովասափյան 3իվյան 3հաննիսյան 3սեփյան 6ով 2ւրդաջյան 0ձավարյան 1իթողցյան 2լֆուղարյան 1կնորսյան 1վակերյան
0ղաբզիմալյան 2զախեթյան 4նչյան 4րյան 5ով 3ինյան 2լդունց 3թախչյան 2հրամանյան 2մբարյան 2յլունջյան 3ֆեճյան 2նդիլյան
2սաբյան 5օղլյան 2փլանյան 1ոլթաղչյան 0ճալտիկյան 2ղարյան 2նճապանյան 3սուզյան 2պաղջուրյան 1գնավորյան 1ենեպերեքյան
1իվասզյան 1ոճկանյան 2ւղուրյան 0մադաթյան 2զմանյան 2նանդյան 3ուկյան 3վելյան 2րաշյան 3գարյան 1եհրաբյան 1իկոյան
2նասբեկյան 5յան 2սակյան 2րզոյան 8ց 2քայելյան 1խիթարյան 1նացականյան 1շեցյան 1ոսինյան 2վսիսյան 2ւշեղյան 4կամբարյան
3սայելյան 3րադյան 1սագործյան 2րյան 0յաբլուկյան 2գուբյան 2զիչյան 2ղլիճյան 1ոգուրթչյան 2ւզբաշյան 3թյուճյան 0նաբաթյան
2զարյան 2լբանդյան 3չադյան 2խշքարյան 2հապետյան 1երկարարյան 3սեսյան 4իսյան 1իկողոսյան 1շանյան 0շաբոյան 4ւնց 2գոյան
2լավասյան 2հազիզյան 3բազյան 3ինյան 8ց 3նազարյան 2րաբխանյան 2քարյան 3րամանյան 1ելունց 1ուքուրյան 0ոսկանյան 3երչյան
1ւզանկիչյան 3ունյան 2թմազյան 2լիխանյան 3ուբաբյան 2ստաբաշյան 2րֆալյան 0չալիկյան 3խիֆալակյան 3ոյան 2խմախչյան
1եմեդիկյան 2պչյան 2քիջյան 1իբուխչյան 2լինգարյան 2վչյան 1ոբանյան 0պալյան 2պայան 3իկյան 3ոյան 2ռավյան 2րոնիկյան 5յան
8ց 3սամյան 1ետրոսյան 9ց 2րեճիկլյան 1ոզապալյան 2ղոսյան 3պատյան 1ռոշյան 1ստիկյան 0ջալալբեկյան 2նավարյան 3գիրյան
3իբեկյան 3ունց 3ջուղազյան 3փոլադյան 1երեջյան 1իգարխանյան 1ուլֆիղարյան 0ռաշիդյան 2սիմոսյան 1եւազյան 1շտունի 1ոստոմյան
2ւբինյան 3ստամյան 9նց 0սադոյան 2թյան 2լբաշյան 2հակյան 2նթրոսյան 3ոյան 2րգսյան 3խոյան 3ոյան 2ֆարյան 1եմերջյան
1իմոնյան 2սոյան 2րունյան 1ոլախյան 2ղոմոնյան 2ւրմելյան 3փրիկյան 3քիասյան 1տեփանյան 1րմաքեշյան 0վազիգեղցյան 2հանյան
3ունի 2նեցյան 3յան 2րդապետյան 4երեսյան 3ոսյան 3պետյան 1երանյան 1րացյան 0տաճատյան 2սնապետյան 2րոնցյան 1ոնոյան
2պաջիկյան 2ւղրեմաճյան 0ցախկլորյան 1իպլեցյան 1ոլակյան 1րտատարյան 0փալանդուզյան 2խչանյան 2հլեւանյան 2մբուխչյան 6կչյան
2յլաբազյան 2նոսյան 2շայան 3ինյան 2րաջանյան 4քեսիկյան 3սադանյան 2փազյան 1իլիփոսյան 1ոքրիկյան 0քաթանասյան 2լանթարյան
4շյան 2ղցրիկյան 2րտաշյան 2փանակցյան 1եշիշյան 2չօղլյան 1իլարջյան 1յոսայան 1ոչարյան 3ինյան 2ւշքյան 1րմոյան 2քորյան
0օդյան 1զանյան 2նեցյան 1հանյան 1րբելյան 0ֆալյան 2հրադյան 1ոլյան 1ռանգյան 1րանգուլյան 0אבוטבול 2יב 3טבול 4ל 4ן 2ני
2ראהים 3גל 3הם 4מי 3מוב 6יץ 1גבאריה 1דלר 2רי 1הרון 4ני 3ן 1וזן 2חיון 3נה 2פיר 2ר 3ן 1זברגה 2ולאי 1חמד 1טיאס 2רש
1יבגי 2וב 2לוז 2סקוב 2פרגן 1לבז 2ון 3ני 3ש 2טורי 2יאס 3הו 3מלך 2מוג 3לח 2נבארי 2סייד 2פסי 2קובי 3יים 3רינאוי 1מארה
2יר 2סלם 2ר 1נגל 1סדי 2ולין 2עד 2רף 1פשטיין 1רביב 2ז 2ליך 1שכנזי 2ר 0בדארנה 2יר 2ר 3אן 1וזגלו 2חבוט 2סקילה 1יטון 1כר
1לום 1נימין 1סול 1צלאל 1קר 1ראון 2גר 2דה 2וך 2זילי 2כה 2מן 2נס 3שטיין 2ק 3וביץ 1שארה 2יר 0גאבר 2נם 1באי 3רה 2ע 1דיר
1ואטה 2טליב 3מן 2לאני 3דברג 4מן 4נברג 4שטיין 3ן 2ר 3דון 3ן 1יל 1ליק 2עד 1מליאל 1נאים 1רבאן 2וס 4מן 2ין 3נברג 0דאוד
1ביר 2ש 1גן 1דון 1האן 2ן 2רי 1וד 2ידוב 3טש 2רון 1יאב 2ין 1מרי 1ניאל 3נו 1קל 1ראושה 2ור 4י 2עי 0הדר 1ופמן 2רביץ 3וביץ
1ייב 2רש 1לוי 2ל 1ראל 2וש 2רי 2שקוביץ 0וולף 2קנין 1ייס 2נברג 3ר 2ס 3מן 2צמן 1קנין 1תד 0זגורי 1הבי 2ר 1והר 2עבי 1ידאן
2ו 2לברמן 2נגר 1כריה 1מיר 0חאג 1ביב 4אללה 1דאד 2ד 1וסין 2רי 1זן 1טיב 1יון 2ים 3מוב 1לבי 2פון 1מדאן 2ו 3ד 1סון 2ן
0טאהא 1וויל 2יטו 2לדנו 1ייב 0יאסין 1הודה 1ונה 3ס 2סופוב 3ף 1חזקאל 2יא 1מין 1עקב 4י 3ובוב 7יץ 5י 1פה 2רח 2ת 1צחק 4י
1רושלמי 1שראל 5י 0כהן 2נא 1חלון 1ספי 1רמי 0לביא 1הב 1וגסי 2י 3ן 1יבוביץ 3רמן 2פשיץ 1נדאו 1רנר 0מאור 2יר 1דר 1וזס
2יאל 2סא 3קוביץ 2עלם 2ר 3אד 2שקוביץ 1זור 2רחי 1חאמיד 2מוד 1טר 1יכאלי 2לר 2מון 1כלוף 1לול 2כה 2מד 1מן 1נדל 2חם 2סור
2צור 2שה 1סארוה 5וה 2יקה 2רי 1רגלית 2דכי 2ום 2עי 2ציאנו 2קוביץ 1שה 2ולם 2יח 0נאור 2סר 1בון 1גר 1וימן 1חום 2מיאס 3ני
1יסן 2ר 1סאר 2ים 1עים 1תן 2שה 0סאלח 3ם 1באג 2ג 2ח 2ן 1גל 1ואעד 2יסה 2לומון 2פר 1יני 1לאמה 2ומון 2ימאן 2מאן 2ע 1עד 3ה
3י 2יד 1פיר 1רוסי 3ר 2חאן 2סור 0עאזם 2מר 2סלה 1באס 4י 2דאללה 2וד 1דוי 1ואד 3ודה 2בד 4יה 2דה 2וד 2ז 3רי 2מר 1זאם 2ר
3א 3ן 1טיה 1יסא 1לי 3אן 1מאש 2ירה 3ת 2ר 3ם 1תאמנה 0פאר 1דידה 1וגל 2לק 2קס 2רמן 3ת 1חימה 1ינטו 3קלשטיין 2שמן 3ר 1לג
2ד 3מן 1נחס 1רי 3ד 4מן 2נקל 2ץ 2קש 0צברי 1דוק 1ור 1מח 1רפתי 0קאופמן 2סם 1דוש 1וגן 2רן 1ינן 1ליין 1מחי 1פלן 1רמר 2ן
0ראובן 1ביבו 3נוביץ 1גב 1ובין 4נשטיין 2זן 3נברג 4טל 4פלד 2ט 3מן 3נברג 2ן 2נן 1זניק 1חמים 1יאן 1פאל 0שאהין 2ול 1ביט
2תאי 1גב 2יא 1דה 1וויקי 3רץ 2למן 2קרון 2ר 3ץ 2שן 1חאדה 2ר 1טיין 4נברג 2רית 3ן 1יבלי 2טרית 1כטר 1לבי 2ו 3ם 2מה 1מואל
5י 2יר 2עון 4ני 2ש 1ני 3ידר 1פירא 2ר 1קד 1רביט 2ון 2יקי 2עבי 2ף 1שון 0תורגמן 1מיר 0ابراهيمي 2وطالبی 1حمدی 1خلف
1رناووط 1زحيمان 1سطمبولي 2ماعيل 1شتری 2جع 2رفی 1عراب 1فغاني 1كلب 1لازد 3شراف 3لجاوي 3مام 3نصاري 3وس 3يوبي 2بامية
3خاري 3ديري 3شيتي 3غدادي 3قوم 3يطار 2ترهي 3وتنجي 2جاعوني 3بشة 3عليين 2حداء 3سيني 3لاق 4واني 3واش 4يطات 2خالدي 3زرج
3لفاوي 2داودي 3جاني 3سوقي 3قاق 3ليم 3واسر 3يسي 2رباب 5طاب 2زرقان 3ماميري 2ساحلي 4دة 3روري 3مان 3هول 3يفي 2شامي 4ويش
4يقية 3حوح 3رفاء 3عباني 3هابي 2طحان 2ظفير 2عارف 3جمان 3سلي 3فيفي 3قيدات 3لمي 3وازم 5لق 2غوانمة 2فتياني 2قاعي 3باني
3رجولي 3زاز 3ضماني 3طب 3لموني 3واسم 2كالوتي 3بابيش 3ثيري 3لغاصي 3واهلة 2ماني 3تولي 3رازيق 3ظفر 3ع 3غربي 3فتي 3ملوك
3نتفق 3هرة 3وركة 4سوس 4قت 2نجار 3شاشيبي 3قيب 3مر 5ي 2هدمي 2وعري 3ندی 2يوزباشي 1ميوني 1نمار 1هرام 1ياد 1یروانی 0بارق
2شا 2هلة 2ي 1تروني 1جيلة 1حري 2مدوني 1ختي 2وش 1درية 2يرية 1ركان 5ي 1علبكي 1غدادي 1كيل 1لبشير 2حاج 2خير 5ي 2عربي 3يد
5ي 2غازي 2قادي 4سم 6ي 3رن 2ي 1هرامی 2منی 1وبكر 2تالب 2جمعة 2خاتم 4ري 3لفة 2دراع 2زيان 4د 5ي 2سعيد 2شارب 4مة 2عزيز
3لام 4ي 2مدين 3عزة 2ناب 1يرقدار 3وتي 0تابت 1حسینی 1رابين 2کاشوند 1ميم 1نزیلی 2وخ 1هرانی 1واتي 2مي 0ثقيف 0جبار 2يلي
1ديس 1ذام 1رهم 1زار 2يني 1عفر 1لال 4ی 2ولي 2یلی 1نتی 1هانی 2ينة 1ودة 3ي 0حاشد 1جازي 1رب 2یریان 1سنی 1مير 3ضة 2یدی
1والة 0خثعم 1زاعة 1سروجردی 1ندف 1ولان 0دادفر 2ود 3ودي 2یی 1حمان 5ي 1راجـي 2بال 2كاوي 2ويش 1وبلال 1ياف 2ب 2ف 0رابحي
2جح 1بانی 2يعة 1حال 2ماني 3ون 5ي 1زيق 1ستمی 3ه 2ولی 1شدي 1صاص 1فیعی 1مضاني 1وحانی 2دگر 0زارع 4ی 2وي 2يدي 1بيد 1حلاوي
2يكة 1روال 3قي 1لاطيمو 1مانی 1نجانی 1هران 1واوي 1يان 4ي 2توني 2دان 0ساسي 2لم 4ي 1بيع 1رخوشیان 2ندح 1عد 3ي 2ودي 2يد
4اني 4ي 2یدی 1غیری 1لامي 2طاني 5ی 2يم 4اني 1ماوات 2سار 2وم 1هلي 1وداني 2ميرة 1ياح 0شادروان 2وي 2يب 2کری 1بیری 1تية
1رف 2قي 2يف 4ي 1عبان 2يباني 1مر 3ان 2شیری 1هران 1ويفاتي 1يخ 0صارمی 2لح 4ي 1حراوي 1ديقي 1نایعی 1يام 2داني 4وي 1یادی
0ضابطی 1بيعة 1رغامی 0طالب 4ي 2يبي 1حراوي 1رابلسي 1زيز 1سم 1قش 1لوعی 1هري 1وطح 2يل 1يء 0ظفری 0عاملة 1باسی 2دالعلی
5مالکی 3ه 2يد 1تيبة 1ثماني 1دوان 1ذرة 1رموني 1زیزی 1سير 1ضل 1قیلی 1كاوي 1ليان 2یجانی 1نزة 2س 1ويضة 0غامد 1طفان 1نيم
1وشة 0فارس 1راهيد 2جی 2حات 1لاح 1هم 1يلالي 0قاسم 4ي 3ي 2ضی 1بايلي 1حطان 1دور 4ي 1رش 2في 2يش 4ي 1ضاعة 1طينة 1ليبو
1ندوز 1ويدري 0كمال 1نانة 2دة 1هلان 0لاهوتی 2چینی 1حمر 1خضر 2م 1عربي 3يبي 2مري 1وسيف 2نيس 0ماحي 2عوش 2لك 4ي 1باركي
1تني 1جتبوی 3هدی 1حجوب 2مدي 4ی 3ودي 1ختاري 2لوف 5ي 1داح 3ني 3هد 1ذحج 1رابط 3ح 3د 2زوق 5ي 2سلي 1زرعاني 2يان 5ي 3نة
1سعودي 1شري 2عشع 1صباح 2طفاوي 1ضر 1طير 1عتوق 2روف 2زوز 5ي 2ین 1فتاح 1قدم 2ران 5ي 1لکیان 1نصوری 1هدیان 1وحد 2ساوي 3وی
3ى 2لاي 1يرفاب 2لودي 2موني 2هوبي 1یردامادی 0ناصر 2مور 2يلي 1جار 2م 2يب 1سيبة 1صري 1عمتی 1هد 1وار 2بختی 2روزی 3ي 3ی
2ي 1یلوفری 0هاشمي 4ی 1دایت 1ذيل 1مدان 5ی 1ندية 2ری 2ي 1واري 3زن 2شیار 2من 0وثاق 1لاشجردی 1هبة 0يافع 1حبوي 2يى 1شكر
1وسفي 0پارسا 1ویان 0چنگیزی 0کابلی 1رمانی 2یمی 1مالی 0گلپایگانی 0یزدی 0აბაშიძე 2დულაევი 2ესაძე 2რამიშვილი 2ულაძე
1დამია 2ეიშვილი 2უაშვილი 1ვალიანი 1ლადაშვილი 3ნია 2იევა 5ი 1ნდღულაძე 2თაძე 1რაბიძე 4ული 2ველაძე 2ჩვაძე 1სათიანი
3ნიძე 1ფციაური 1ხალაია 5ძე 2ვლედიანი 2ობაძე 0ბაკურაძე 2ლიაშვილი 2რამიძე 3ბაქაძე 2სილაშვილი 6ძე 2ქრაძე 2ხტაძე
1ეგიაშვილი 2ნდელიანი 3იძე 2ჟანიშვილი 6ძე 2რაია 4ძე 3იანიძე 5შვილი 4შვილი 4ძე 3უაშვილი 4ლავა 3ძენიშვილი 2ქაური
1იბილაშვილი 2გვავა 2წაძე 1ლიაძე 1ოკუჩავა 2ლქვაძე 2ჭორიშვილი 1რეგაძე 4ვაძე 1უკია 2რდული 3ჯანაძე 2ჩუკური 2ცხრიკიძე
0გაბაიძე 3ედავა 4ლია 3რიჭიძე 3უნია 2გნიძე 3უა 2ფრინდაშვილი 2ჩეჩილაძე 2ჯიევა 6ი 1ეგეშიძე 2ლაშვილი 4ძე 1ვაზავა 3სალია
2ელესიანი 3ნეტაძე 1იგაური 2ორგაძე 5ობიანი 1ობეჯიშვილი 2გალაძე 3ია 5შვილი 4ნაშვილი 4ტიძე 4შვილი 4ჩაიშვილი 6შვილი 4ძე
3ოლაძე 4ხია 3საძე 3უა 5ძე 2რგაძე 4ილაძე 4ოძე 2ცირიძე 1რიგალაშვილი 4ორიანი 2ძელიშვილი 1ულიაშვილი 3უა 2მბერიძე
2რგენიძე 3ეშიძე 3ული 2ჯაბიძე 0დავითაშვილი 6ძე 2ლაქიშვილი 2ნელია 2რბაიძე 1ევაძე 3იძე 2მეტრაშვილი 1ვალი 5შვილი
1იასამიძე 1ოლიძე 1უმბაძე 0ელბაქიძე 2იზბარაშვილი 1ნუქიძე 0ვალიევა 6ი 2რდოსანიძე 3შანიძე 2საძე 2შაკიძე 4ყმაძე 1ეკუა
0ზარანდია 3იძე 3ქუა 1ედგინიძე 1ოიძე 1ურაბაშვილი 0თაბაგარი 2ვართქილაძე 4ძე 1ედორაძე 2ვზაძე 1ოდუა 2ლორდავა 2ფურია
1ურმანიძე 0იაშვილი 1ლურიძე 1მერლიშვილი 2ნაძე 1ნასარიძე 1ობიძე 1რემაშვილი 5ძე 1საევი 0კაზარიანი 2კაბაძე 4ურიძე 3ულია
2ლანდაძე 6ია 2ნდელაკი 2პანაძე 2რაპეტიანი 2ცაძე 3იტაძე 2ჭარავა 2ხაძე 3იძე 1ევლიშვილი 2კელიძე 2რესელიძე 1ვანტალიანი
3რაცხელია 3ჭაძე 2ერნაძე 2ინიკაძე 3რიკაშვილი 4კველია 1იკვაძე 3ნაძე 2ლასონია 4ძე 2ნწურაშვილი 2რვალიძე 3თაძე 3კიტაძე
1ობაიძე 4ხიძე 3ერიძე 3იაშვილი 2ნცელიძე 2პალიანი 4ძე 2ხრეიძე 1უბლაშვილი 2პატაძე 3რაშვილი 4ეიშვილი 2რტანიძე 2ჭავა
3უხიძე 2ხიანიძე 0ლაბაძე 2გვილავა 2ტარია 2ცაბიძე 1ეჟავა 1იპარტელიანი 1ობჟანიძე 3ჯანიძე 2ლაძე 2მაძე 3თაძე 3იძე 3საძე
2რთქიფანიძე 1ურსმანაშვილი 0მაზმიშვილი 2თიაშვილი 2ისურაძე 2მალაძე 3ულაშვილი 6ძე 2ნაგაძე 2რგველაშვილი 2ღლაკელიძე 3რაძე
2ჩიტიძე 2ჭავარიანი 4რაშვილი 2ხათაძე 4რაშვილი 6ძე 1გალობლიშვილი 2ელაძე 1ეგრელიშვილი 2ლაძე 3იქიშვილი 6ძე 3ქაძე
2რაბიშვილი 3ებაშვილი 2სხი 2ტრეველი 2ფარიშვილი 1იმინოშვილი 2ნდიაშვილი 2ქაბერიძე 4ვა 4ძე 3ელაძე 1ოდებაძე 2სიაშვილი
1ჟავანაძე 1უმლაძე 2საევა 6ი 3ტაფაევა 9ი 2შკუდიანი 1ღებრიშვილი 1ჭედლიშვილი 6ძე 0ნაბიევი 2დირაშვილი 6ძე 2კაშიძე
2რიმანიძე 2სყიდაშვილი 2ტროშვილი 2ცვლიშვილი 2ჭყებია 1ებიერიძე 2მსაძე 2ფარიძე 1იკოლაიშვილი 5ეიშვილი 2ჟარაძე 2ქაბაძე
1ოზაძე 1უცუბიძე 0ოთარაშვილი 1ნიანი 1ქროპირიძე 3უაშვილი 0პავლიაშვილი 2პავა 4შვილი 3იაშვილი 4ძე 3უაშვილი 2ტარაია
1ეტრიაშვილი 4ოსიანი 0ჟვანია 1ორჟოლიანი 1ღენტი 0რაზმაძე 2მიშვილი 1ევაზიშვილი 2ხვიაშვილი 1ობაქიძე 2გავა 2სტიაშვილი
1უხაძე 0სალუქვაძე 2მუშია 3ხარაძე 2ნიკიძე 2რალიძე 3ქისიანი 2ჯაია 1ეხნიაშვილი 1ვანიძე 1ილაგაძე 2მონიშვილი 2რაძე
3ბილაძე 2ჭინავა 2ხარულიძე 1ოფრომაძე 1ულაბერიძე 2რმანიძე 1ხირტლაძე 0ტაბატაძე 2კიძე 2ლახაძე 1ურაშვილი 2ღუში 1ყებუჩავა
3მალაძე 3შელაშვილი 0უგრეხელიძე 1რუშაძე 0ფანცულაია 2რტენაძე 3ცვანია 1ეიქრიშვილი 2რაძე 1ირცხალავა 2ფია 2ცხელაური
1ოფხაძე 1უტკარაძე 1ხაკაძე 3ლაძე 0ქავთარაძე 2თამაძე 2მადაძე 2ნთარია 2რდავა 3თველიშვილი 3ჩავა 3ცივაძე 2ჯაია 1ევხიშვილი
1ირია 1ობალია 3ულაძე 2რიძე 1უთათელაძე 2რდაძე 0ღამბაშიძე 2რიბაშვილი 1ვინიაშვილი 4ჯილია 1ლონტი 1ონღაძე 1ურწკაია
0ყაველაშვილი 1იფიანი 3შიძე 1ოლბაია 1ურაშვილი 0შავაძე 2თირიშვილი 2ინიძე 2ლამბერიძე 2მათავა 3უგია 2ნიძე 2რაშიძე 3იქაძე
1ელია 2ნგელია 2ყილაძე 1ველიძე 1ონია 1უბითიძე 2კაკიძე 0ჩადუნელი 2კვეტაძე 2ფიძე 2ჩანიძე 3უა 1ინჩალაძე 2ქოვანი 2ხლაძე
1ოხელი 1უბინიძე 1ხაიძე 3რტიშვილი 2ეიძე 2იკვაძე 0ცაავა 2ნავა 2რციძე 1ერცვაძე 2ცხლაძე 1ინცაძე 2რეკიძე 1ომაია 1უცქირიძე
1ხადაძე 0ძიძიგური 1ნელაძე 0წერეთელი 1იკლაური 2ქარიშვილი 1ულაია 3უკიძე 2რწუმია 0ჭანტურია 7ძე 2ღალიძე 1ეიშვილი 2ლიძე
1ითანავა 2ნჭარაული 2ღლაძე 2ჭინაძე 1კადუა 1უმბურიძე 0ხალვაში 2რაბაძე 4ზიშვილი 4იშვილი 4ტიშვილი 3ებავა 3შილაძე 3ჩილავა
2ტიაშვილი 2ჩატურიანი 3იძე 2ჭაპურიძე 1ელაძე 2ცურიანი 1ვედელიძე 2იჩია 1იზანიშვილი 2მშიაშვილი 1მალაძე 1ოზრევანიძე 2რავა
1ურცილავა 5ძე 2ციშვილი 0ჯავახიშვილი 2იანი 2ლაღონია 2ნაშია 3ელიძე 3იაშვილი 3ჯღავა 2ფარიძე 1იბლაძე 2ნჭარაძე 2ქია
2შკარიანი 1ოხაძე 2ჯუა 1ღარკავა
"""
"""Family names that are no English words; each without what it shares with the one before."""

GIVEN_TOO = """
0abbas 2di 3ullah 1daline 3ms 3n 2ena 2olfs 4ph 6e 2riene 1faq 2il 3q 1gahadi 3mali 4usa 3xan 2ca 2nus 2ustin 1ilene
2mable 2ne 1kif 3ko 3lah 1laine 3ne 3yna 2ba 3erts 3recht 2ease 3en 3ida 3shia 3thia 3xandre 2fons 3redia 2i 3a 3s
4hia 4ia 3ta 3za 2la 4hverdi 3een 4n 5a 3ine 4son 3yn 2maz 3eta 2ona 4so 4zo 3yse 2tha 2varo 3e 4ra 5ta 2y 3sa 4e
4ha 1mador 3ya 2berly 2ee 2i 3co 3e 4e 2mie 2or 1nalisa 3r 2dera 5son 3ra 2es 2gelena 5yn 3ila 3la 2h 2icet 3sha
2janette 3elica 2nalee 4mae 3elle 3ice 4s 2tal 3onello 6tta 5ius 5s 1pryl 1qil 1ra 3celis 2cher 2dath 3elia 5l 6a 6e
2gelia 4ntina 2ica 2la 3ean 4na 4tha 5ta 3yne 2manda 6e 6ina 4s 3elle 3inda 2naud 3etta 6e 3is 4ta 3olds 2villa 2ya
1shanti 3lea 5y 4i 4yn 3ton 2if 3man 2lan 3ey 1tabala 3moglan 2te 1udie 3rea 4ia 5e 2ndrea 2rora 2stin 1velina 3ry
1yako 3n 4a 4na 2dan 3in 2gul 4n 2su 1zalee 2zie 0baba 4ra 2hadir 2iley 2laxanim 4zs 3int 2o 2rabara 3bar 4era 4ora
4u 3i 3na 3rett 4ie 3t 4ley 4olome 5n 2s 3ilia 3tien 2utista 1eatris 3ulah 2be 2cki 5e 2hbud 2lia 3kis 2nito 3nett
3oit 3ton 2rends 3na 5rdina 9e 4eice 5tta 3trand 2thanie 6n 4el 3sey 3tyann 2ula 2v 3an 3erlee 1ibi 2lli 4ye 1lair
3ke 3nca 4dine 3zej 2ondell 2ythe 1oban 3ette 2e 2k 2ng 2rja 2yce 3d 1radford 4ley 4y 3nda 5e 5on 2eana 5n 3e 3nna
3tt 2ien 3lyant 3tany 4ni 4taney 7ie 5eny 5ni 6y 2ock 3derick 3gan 3r 2una 2yan 5na 5t 3nn 1uena 2ffy 2la 4h 2nny
2rma 3t 4on 0cabbar 2han 5gir 3ir 2l 3andra 3lan 2mellia 4ron 3ie 3mie 4y 3pbell 2ndelaria 4ie 4ra 4yce 2price 2rey
3ie 4sa 3lee 5na 5tta 5y 4i 5e 5ne 5ta 4os 3melia 7na 4on 3oll 5yne 4n 4yln 3roll 3son 3ter 3y 4lon 2sey 3ie 4mira
3par 3saundra 4ey 4i 5dy 4ondra 4y 2therin 6n 6yn 5y 3rice 2vad 3id 2yla 1eara 2cila 5le 2lena 4sta 3sa 2ola 2yhun
3la 3ran 1had 4wick 3e 3n 4a 4da 5ra 7n 4ell 7e 4g 4tay 5e 6ll 3ra 4ise 4lena 6setta 5sie 5yn 4main 3sidy 4sidy 3u
3ya 2er 4e 5e 5lle 4ilyn 4lyn 4ry 6l 4y 5ll 2i 3a 3eko 3ng 2ong 2risteen 7n 8a 6ia 7e 7nia 2u 3n 4g 1icely 2era
2mnaz 2nderella 4ie 3giz 2ra 3ino 1laes 3ir 3re 5tha 6ta 4inda 6e 5s 5ta 4k 3ssie 3udie 4s 3yton 2emencia 6te 4mie
3ora 4tilde 3veland 2ifford 3nton 2ora 3thilde 1odi 3y 2hen 2le 4man 4ne 4tta 3len 6e 5tte 4in 3man 3um 5bus 2nnell
3stant 2oper 2ralee 3dia 5e 3een 4tta 3ie 3liss 3mack 3neille 3rin 6ne 3tez 2squn 2urtney 1reola 2is 4elda 4sy 4ta
5ea 6n 5ie 2uz 2ysta 5le 1uc 2msud 2rtis 1vetko 1yndy 2rstal 3us 0dacia 2das 2hlia 2ine 3sey 2lene 3las 3ton 2mienne
2ne 3i 4ell 6s 4ka 4lle 3n 4ette 3yel 6l 2phine 2ra 3by 3cel 5y 4y 3ius 3lena 2vin 4s 3or 2wne 2yle 3si 1eadra 3ndra
6ea 4e 2bbi 3era 3roah 2de 2e 3ann 6a 3dee 4ra 3tta 2ja 2l 3aine 4na 3cie 3ena 3icia 4la 4nda 4sa 3l 4a 3my 3oise
4ras 5se 3pha 3sie 2metrice 2nae 3ese 3isha 4ta 3nise 4y 3ver 3yse 2onna 2rmott 2tra 2vin 3ona 4ra 6h 2witt 1iedra
5e 3go 3rdre 3trich 2llon 3sad 2mple 2norah 3u 2on 4e 4na 5e 2vina 1oloris 2mingo 5ica 5que 3onique 2nella 4tta 6e
3g 3na 4ell 5tta 7e 3ovan 3ya 2rathy 3eatha 4thea 5ta 3ia 4e 3la 3sey 3they 2tty 2uglass 2yle 1reama 3ma 2ies
2ucilla 1uane 3rte 2dley 2lcie 2nya 5mali 2rante 3na 3o 2sti 1wana 1yan 0earle 5an 5en 4ie 1berhard 8t 2onie
1ckhardt 1den 3r 2in 2ra 2vins 2yth 1ftimie 1htel 1ilene 2mer 1ladia 3ne 4or 3riz 3yne 2cin 2dridge 2ease 3ne 4ora
2freda 4ieda 2gun 2icia 3dia 3ette 3nore 3s 3z 4abet 4beth 2lamae 4n 3ena 3iot 6t 4s 3sworth 3yn 2man 4rs 3idar 4r
2nur 2oi 4s 3y 2sad 2turan 2vie 4na 4re 4s 2wanda 3ood 2xan 1ma 2elda 2iko 3lee 4s 2maline 1ne 3ida 1pifania 1riks
3nn 2lene 3ine 2melinda 3inia 2ny 2vin 1smira 2ta 3eban 4fana 4ll 1tha 3elene 3yl 2ibar 3qad 2suko 1ugena 2lah 2n 3a
2ra 2stolia 1valds 2elynn 3rett 2ia 1xie 1yyub 0fabian 2e 2iq 2lk 3lon 2mil 2rah 3iz 2ustina 2viola 2zil 1ederico
2liciano 6e 7n 3ton 2m 2rmina 3ny 1idan 3elia 2lip 2mar 2rdovsi 3udin 1leta 4cher 2or 4ance 4ea 5tta 4ia 3yd 2ynn
1orrest 1rancene 5ina 5k 5oise 4ka 4s 5isca 3ser 2edda 4erica 8ka 4ia 4ricka 3eda 2iedl 1uad 2miko 2zuli 0gala 3e 3o
2rnett 3ret 6t 4y 2spar 6d 2uthier 2ynelle 1earldine 2nevie 6ve 3na 4ie 4y 2organn 5eann 9a 6ne 6s 5iann 9e 2raud
3main 3tha 4ude 3y 1hislain 1idget 2lles 4is 3ma 2sbert 1lady 3yds 2endora 4n 5ie 6s 2inda 2ynda 4is 1oda 2nzalo
2pal 2tthard 3z 1racia 3dy 3yce 2eco 3goire 5rio 2isel 2over 1ulaga 3bala 3cin 3mira 3nar 5z 4ur 3sum 3tac 3us 5tan
3xar 3zar 2nay 3duz 3n 1wenael 4da 4n 2yn 0habil 2e 2gen 2i 2kim 2ley 3ley 2n 3h 2rley 3per 3ris 6on 3vey 2san 3san
4ie 2yden 3wood 1eath 2e 2laine 2nk 3riks 2rmila 3nando 3rmann 3ve 2ster 1icran 2edi 3n 2lal 3degarde 4red 3ton
2roko 2sako 1oa 2lley 4is 3m 2ng 2uston 2yt 1siu 1udson 2i 2ng 2ong 2seyn 6qulu 1wa 1ye 2man 2o 3n 2un 0ibis 1dell
1esha 1gnac 2ors 1lana 2da 2een 2ham 2kin 2la 2qar 2uminada 1mrich 1nell 2ocencia 2qilab 2tiqam 4zar 1raida 2ish
2ving 1se 2idra 2lam 2mail 4yil 2rafil 2sac 1vars 2elisse 3y 1xtiyar 1zetta 2ola 0jaanus 2celyn 3inda 3kelyn 4i
4queline 4son 3qualine 5elyne 9n 6tta 5i 6e 6line 5lyn 2e 2ime 5e 2kobs 2leesa 3isa 2ma 4r 3ee 3ika 4son 2nay 3ean
4e 4lla 4ssa 4th 3i 4ece 4k 4se 4ta 3ko 3net 3o 3uary 4s 3yce 2quelyn 2ra 3rett 3vis 2ye 3mie 3na 2zmine 1eanelle
5ne 5tt 4ice 4marie 4netta 5y 2fferson 4ie 2nae 3e 4e 4ll 4tte 4va 3i 4ce 4ne 4se 3nefer 5ll 4i 5ne 3te 2remias
3lene 3man 3rica 2senia 3senia 4i 5a 3tine 3usita 2tta 1in 3a 1oane 4nie 2dee 2eann 3lla 3tte 2hans 3na 4ette 4sie
5on 2ie 2lyn 2ne 4ll 6e 3g 3ie 2s 3lyn 3phine 3t 3y 2ya 3e 1ulee 4ne 3ieann 5n 2ng 3ie 4ta 3ko 2sta 0kacy 2ila 2la
3eigh 4y 3lie 3man 3yn 2m 3al 3ilah 3ran 2ndi 5s 4ra 4y 3e 4sha 3isha 2ra 4n 3een 4na 4y 3isa 3leen 4y 5n 3ma 3ole
3ren 4y 3y 4l 2sha 3i 4e 3pars 4er 3sie 2telin 5ynn 3haleen 5ryn 4eleen 5rn 5y 4line 3lyn 3rice 3tie 2yce 5e 3leen
5ne 2zuko 1eegan 3lan 4ey 4y 3na 5n 3sha 2ila 3tha 2lle 5e 5y 4y 5e 3si 2mberly 2na 3da 5l 6l 4ra 3ia 4sha 3na
3yetta 2ra 3en 2va 1halilah 1iana 2ernan 4sten 3sha 2ley 2m 3ber 6li 8e 6y 4ra 3i 4ko 2na 3dra 3gston 2rby 3k 2ttie
2yoko 2zzie 1lemens 6t 1onul 2rnelius 3tney 2urtney 1rish 5na 4sy 4teen 6rs 5le 5of 2ysta 5en 5in 7a 1umar 1ym
3berly 2oko 2ung 0lacey 3helle 3in 3resha 2dawn 2el 2ge 2homa 2i 2juana 2keesha 4ndra 5ya 3ia 4esha 4ta 2mbert
3onica 5t 2n 3ell 6e 3g 3ie 3nie 3ora 2quanda 2rae 4ine 3ee 3honda 3ita 3onda 3raine 3ue 2sandra 3handra 5un 7da
5wna 7da 5y 4ell 4on 4unda 3onya 2tarsha 4shia 3esha 3ia 4cia 4na 3oria 4yia 3rina 5sha 2una 3ralee 5n 4eano 5na 6t
4ice 5nda 4yn 2velle 4nia 4ra 5na 4ta 5te 3ona 5e 5ia 5na 2wana 5na 2yne 2zar 3im 1eandre 4ora 2cia 2eanna 6e 3n
2igha 6nn 3sha 2kisha 2lah 4nd 2nita 3na 2oma 3narda 4e 4ia 5da 5la 4s 3s 2ra 3oy 2s 3ha 3ter 2tisha 2vin 2xie 2yli
2zlie 1ianne 2bbie 3rada 2en 3pa 3s 2lja 3lia 6m 6na 2n 3coln 3de 4sey 5y 3g 3h 2sabeth 3ha 2zeth 3zette 1ogan 2ise
2ke 2ma 2nda 3na 2ralee 3ean 4e 4nz 4tte 3ia 5nn 4lee 4na 4ta 3riane 5ne 3y 2uanne 3etta 3ra 4enco 4ie 3venia 2vella
4tta 2we 4ll 2yce 3ola 1uanna 2ba 2ci 4lla 4na 4o 2die 4vina 2etta 2is 2na 2rlene 4ine 2venia 2z 1ydiane 6ne 2ndia
3ell 6e 4tta 3n 4a 2siane 0mabelle 2c 3auley 3ie 3k 4enzie 3y 2dalene 5ine 5yn 4ra 3elaine 3ie 3lyn 2galie 4n 4ret
3dalen 3en 2hir 3mud 2ia 3le 3rtin 3sha 4y 2keda 2lina 4sa 3ka 3lie 3orie 2mmie 2na 4f 3da 4ie 3ie 3ole 3s 3uelle 2o
2qsud 2ra 4garet 5ret 3celene 6ine 5ne 4helle 4o 5s 3dell 3g 4arett 9a 6ite 6t 4ene 5ret 6t 5t 4orie 4rett 4uerita
5rite 5y 4y 3hta 3ian 4el 4lu 4n 5da 5o 4s 5e 5ha 4vel 3kita 4o 3lana 4ine 3na 4i 3os 3quetta 5itta 3shall 3te 4h 4i
4on 4yn 3vella 4is 3x 3yalice 5nna 4belle 4etta 4land 5n 5ouise 5ynn 4rose 4vonne 2sa 4ko 3on 2tas 3eo 3ha 4ias 5eu
5s 3ias 4c 3thijs 4ias 3us 2urita 2ximina 3well 2ya 3bell 3e 3nard 3ola 2za 1ckenzie 3inley 1eaghan 2dina 2e 3s
2ggan 3hann 2hdiqulu 3in 3man 2laine 4ni 3da 3ia 4char 4da 4ssia 3lie 3odee 5i 3ynda 2ndy 2rcedez 3edith 3ideth 5ith
4lyn 4ssa 3lene 4yn 3na 3ri 5e 5lee 6l 3tie 2yransa 1ica 3helina 4iko 3ki 2esha 2gnon 3uelina 2kayil 3ki 2lagro 3la
5rd 3ota 2my 2nda 3g 3h 3ta 2o 2randa 3o 2sha 3tie 2tchell 3sue 5ko 3zie 2yoko 1ohammad 2net 3nie 3roe 3serrate 3te
4serrat 2ra 3eno 3iah 4c 3timer 4on 2ya 2zella 1ubariz 2i 2layim 2mtaz 2oi 2rad 2skunaz 3lum 2xtar 1yesha 2lene 2rl
4e 3tie 2ung 0nadene 2gi 2ida 3r 2kesha 3if 4ta 2m 3iq 2na 3cee 5y 4ie 3na 2oma 2rcisse 3ingul 2ser 2tashia 3ella 3h
3iq 4sha 3osha 2zario 3im 4r 3li 1ea 3l 2cole 2da 2ely 2ida 3ll 2lia 3la 3son 2nita 2oma 4i 2rissa 3y 2stor 2ta
2vada 3ille 4n 1ga 3n 2oc 2uyet 1icat 3holle 3kie 4ole 3ol 5le 2da 2esha 2gar 2had 2kia 3olas 5e 2ta 2xon 2yaz 5i
1obuko 2hemi 2lan 2ma 2riko 3mand 3ris 2vruz 1ubar 3ia 2rlan 6a 3u 4lla 1yla 0oda 2elia 4l 3ssa 2ilia 1feliya 1lene
3via 2inda 3va 1ma 2ega 1neida 2ie 3ta 1qtay 1ralee 2duxan 2etha 2lando 2xan 1skars 2man 2valds 1telia 1zell 5a 2ie
0pal 3ma 4er 2melia 5la 3ila 3ula 2ndora 2ris 3ker 3thenia 4icia 2sa 3cual 2tria 5na 2ulene 5tta 4ita 2vol 2z 1earce
4le 6ne 2i 2layo 2nney 4i 2yton 1hebe 2ilippe 2ung 3ong 2ylicia 1ierette 2ret 1ok 2l 3ad 2rsche 4ha 1recious 3ston
2okop 3videncia 1unhan 2ra 0qadir 2lib 2ratel 1iana 2yas 1osqar 1uiana 3nn 2lam 3u 2mru 2yen 0rachal 4ele 6l 2da
2eann 3l 4ene 2fiq 2ina 2leigh 2mid 4l 3onita 2na 4e 3dall 4ee 3ee 2phaelle 2sheeda 3im 2vi 2ye 3lene 3na 2zi 1ea
3gan 3nna 3tha 2bbeca 6ca 2dmond 2ed 3na 2fugia 2gan 3ena 5ia 3inia 2id 3ko 3na 4er 4hardt 3ta 2jane 2ma 3ona 3y
2naud 4y 3da 3etta 3na 2ssie 2tta 2y 3es 3han 3na 5lda 1heba 1ichie 3kard 4i 3o 2kki 2ley 2ma 2sa 2va 3ka 2yad 2zvan
1obbi 4yn 3ena 3inson 2chel 6l 2drigo 6ue 2han 2ldan 3land 7e 2main 4no 3elia 2nan 3i 2os 2que 2samaria 5ond 4na 5n
3elee 5le 4na 3ia 4o 3sie 2xy 2ya 2zanne 3ella 1ubeyda 3i 4e 4n 2dolph 2fus 2slan 2tha 5nne 4e 1yan 4n 2der 1za
0saar 2bir 2chiko 2de 3iq 3ye 2hlar 3mar 3naz 2kir 2leh 4na 3ley 3man 3vador 4i 2mara 3ella 3i 4l 3xal 2na 3cho 3dee
5r 4i 5e 3ford 3g 3ora 3tana 4ina 4os 2ran 3van 2u 2vanna 2yali 1ebrina 2ema 2lcan 3ene 3in 2m 2naida 3n 2ptember
2rina 4ta 2th 3suko 2vil 4nc 2yda 3fulla 3mour 4ur 3ran 1ha 3e 3kia 5ta 3la 5nda 4on 3n 4ae 4di 4eka 5l 6le 4iqua
4non 4tae 6y 5elle 5i 3quana 5ita 3ran 4da 4ell 4ice 5e 5ka 5lyn 5ta 4leen 4maine 4olyn 4ri 4yl 3unda 5na 5ta 6e
3von 6da 6ne 3wana 6na 4nda 5ee 5na 5ta 2ea 3ba 3ilah 3la 4ba 4la 4ton 3meka 4ika 3nika 5ta 4na 3ra 4ell 4ice 5dan
5ka 5ll 5se 4lene 6y 5y 6n 4man 4rell 5il 7l 4wood 4y 5ll 2ila 4oh 3ra 4ely 4l 5een 3zue 5ko 2ondra 4na 4ta 3shana
2u 2yla 1ierra 2lke 3va 2ma 2nan 3dy 2rac 3ena 3in 3zad 2sko 2u 2xi 3ta 1lavica 2yvia 1oila 2lmaz 2mer 3mer 2o 3k
1pencer 1tacee 3ncu 4ford 4ton 3rr 2een 3fany 4fanie 5en 3panie 4hania 5nie 1uanne 2bhan 2die 2eann 3llen 2gra 2k
3ur 2lema 2miko 2nday 3g 3ni 2si 3y 2vi 2zann 3i 1ylvaine 4ere 2nthia 2reeta 0tabetha 2i 3sha 2juana 2kako 3isha
2lib 4sha 4tha 2ma 4la 4sa 3bra 3eika 4kia 4sha 3ica 4lla 4sha 3mara 4era 2na 3dra 4y 3eka 3guy 3na 4er 2ra 4h 3en
3i 4yel 3ra 2shia 5na 3ia 2tum 3yana 2unya 2wna 2ylor 3na 1eisha 2lman 2meka 3ika 3pie 2na 3esha 3nie 5lle 2quila
2reasa 3ica 4sa 3rell 5sa 4ilyn 2sha 2ymur 6az 6cin 1hanh 3o 2eola 3ressa 2ibaut 3erry 4s 3js 2om 4asena 6ine 2resa
2u 1ia 3nna 2en 3ra 4nan 3sha 2fany 3faney 2juana 2l 3l 2mika 2nisha 2sa 1obi 4e 2ccara 2dd 2fiq 2grul 2ma 3e 3ika
5o 3mye 3oko 3ris 3s 2na 3ette 4y 3ie 4sha 4ta 2rie 3ri 5e 2shia 5ko 2vuz 2wanda 1racey 3n 4g 3vis 2eacy 3ena 2inh
2oy 2udel 4ie 3la 1udor 2la 2nar 2ral 4n 3xan 2tu 2yet 1wana 4da 4na 1yesha 2isha 2ler 2nisha 0ugur 1la 2duz 2lrich
2vi 1ma 2id 1rbain 2fan 1sha 1zeyir 0vahid 2leh 4ncia 5e 5tine 8o 4ro 5y 3lie 3rie 2n 3etta 3ita 3nesa 6sa 2qif
2shti 3if 4liki 2ughan 5n 2vrinec 2zeh 1ega 2it 2li 3la 2netta 3ice 3nie 2ola 2rda 4ell 4ie 3lene 4ie 5ne 3netta 4ia
3ona 3sie 3tie 1icente 3torina 2dadi 4l 2era 2ktors 2na 3ita 3nie 2rag 3gen 4ilio 2van 1on 3cile 1uqar 2rgun 2sal
0wai 2lker 3ton 2neta 5ta 2rner 2shington 2va 1ei 2ldon 2n 3die 4olyn 3ona 2ston 1hitley 4ney 1ieland 2ley 3hemina
3lena 5tta 7e 4ia 6ms 5emae 5s 4odean 3son 3ton 1onda 1ulf 1yatt 2nell 0xalid 4q 2mis 2nim 3kisi 3lar 1iao 1ochitl
2srov 1uan 2daverdi 4yar 3u 2mar 0yadigar 2eko 2haira 2jaira 2lcin 2ng 2qub 2sar 3uko 2zgul 1ee 2lena 2r 2vette
1ilmaz 2ng 1olando 2n 3g 2shie 2ulanda 1uette 2k 3i 4ko 3o 2landa 2n 3g 3is 2onne 2riko 2sif 1vone 0zach 4arias 2da
2hid 4r 2k 3ir 2man 3in 4q 4r 2na 2ur 1emfira 2na 2tta 2ynal 4ulla 1iba 2gmund 2ya 1ola 2na 3ia 1uleyxa 2mrud
"""
"""Given names that may be family names or places too, or are seldom."""

PLACES = """
0a_coruna 1achen 2lborg 3en 3st 2rgau 2s_poo 1ba 3co 3dan 4eh 3etetuba 3i_region 3kaliki 5n 3ncay 2bey 5_wood 5feale
5leix 3ots_bromley 7langley 6bury 6ford 6kerswell 5tabad 6s_ann 2d_virjin_adalari 2eche 3ngourou 3okuta 3pura
3raeron 4canaid 6rn 5hirder 5rombie 5ynon 4dare 5een 8_city 8shire 5our 4fan 5eldie 8y 5ord 6yle_park 4gavenny 5ele
5lasslyn 4kenfig 4lady 4main 4nethy 4porth 4tillery 5ridwr 4ystwyth 2ha 4r 2ia_state 3djan 7_autonomous_district 3ko
3lene 3ngdon 5ton 2khazia 2nub 2o 3a 3bo 3har 3mey 6_calavi 3yne 2ram 3eu_e_lima 3idge 3uzzo 2seron 2u_dhabi
4ghurayb 4kabir 4qurqas 4road 4tij 3ja 2yan_governorate 3ek 1cacia_bay 7gardens 7ridge 3mbaro 3pulco_de_juarez
3rigua 3yucan 2cra 4ington 2eh 3rra 2halpur 4rnes 3eng 3im 4nsk 2klins 2le 2ocks_green 3mb 3ua 2quaviva 2re 2ton
5_park 6vale 1d_dakhiliyah 5li 5mazin 5wadimi 4hahirah 4iwaniyah 4ouiem 2a 3m 4aoua 5wa 4stown 9_heights 3na 3pazari
3re 3zi 2derbury 3iebrownhill 4ngham 4s_ababa 5on 3lestone 2el 4aide 8_city_centre 9hills 3n 2igrat 3labad 4cevaz
3werna 3yaman 8_province 2jara 3untas 2ler 3ington 2miralteisky 2o_ekiti 3ni 2rar 3ia 5n 2stock 2wick_le_street
2ygeya_republic 2zope 1eaes_poo 2gean 2kvatorialguinea 1far 2eganistao 2ganistan 9na 9nas 7ztan 3ooye 2ikpo 2lao 3ou
2ragola 3ica_de_sud 8o_sul 4que_du_sud 2yonkarahisar 9hisar_province 1ga 3dez 4ir 3lega_islands 3na_heights 3rtala
3ssiz 3t 2bor 4ville 2cabǝdi 2dam 4s 3er 2eoshimo 2hada 2ia_paraskevi 3ncourt_north 3os_dimitrios 2nes_water 2ra 3i
2stafa 3u_district 2ua_prieta 4chica 4da 5illa 4s_buenas 5calientes 3eda 3lu 3stin_codazzi 2ypten 1hafo 3l 3r 2ipara
3tereiria 2lat 3en 2madnagar 5pur_east 3edabad 2oghill 2u 3achapan 2vaz 3enamaa 6nmaa 2watukee_foothills 1i_er_wa
3si_bo 2bonito 2chi 2danfield 2galeo 2leu 3inginae_atoll 6laplap_atoll 3uk_atoll 2mak 3eliik 2n_beida 4defla
4fakroun 4oussera 4sefra 4temouchent 5outa 3aro 3slie 2rai 4ni 3drie 4s 3ija 3lie_beach 3oli 3port_west 3th
2tkenvale 3utaki 2wo_district 2x_en_provence 2zawl 3kraukle_municipality 1ja 3ccio 3x 2dabiya 2loun 3un 2man 5_city
3er 2odhya 1kademgorodok 6icheskoe 3shi 2barabad 3ou 2ershus 3tina 2hisar 3mim 2i 3m_oda 3ta 2kar 2ola 3t 2ron
2saray 3ehir 3u 2tobe 2u 3re 2wa_ibom_state 1l_ahmadi 4in_city 4jaylat 4marah 4simah 3bab 5hah 8_region 5tinah_north
9h_south 5yda 4uraimi 7ymi 5tnan 3daayen 3fahahil 5llujah 5rwaniyah 5shn 5w 5yyum 4ujairah_city 3hamdaniya 5rithah
5sakah 5wamidiyah 5yy 4illah 5ndiyah 4oceima 4udaydah 5fuf 3jadid 5farah 5hra_governorate 5mmaliyah 5wf 7_region
5zirah 4ubayl 5frah 5mayl 3khaburah 6fji 6nkah 6rj 8ah 5or 5ums 6sus 4ufrah 5t 3mahrah_governorate 6wit_governorate
5naqil 6surah 6zalah 5rj 6qab 6sa 5tariyah 5yadin 4inshah 6ya 5qdadiyah 5thnab 4ubarraz 5harraq 3qadarif 6isiyah
5ssim_region 5tif 4urayn 5siyah 3shahaniya 6mkhah_city 3ubur 3wahat 5krah 4usta_governorate 2abama 3faya 3ghsas 4oas
5inhas 3juela_province 3mar 4eda 3nd 5_adalari 6szigetek 5inseln 5s_landsbygd 7skargard 6ki_otoci 9otoki 5u_salos 6r
5y 4komaat 4ya 3otra_mangoro 3ppuzha 3ska 3wa 2ba_county 5iulia 4ania 4cete 4nel 5ie 7n 6ja 5sko 5vale 5y
6_city_centre 8reek 7park 3ert 6_park 6a 6ina 6on 3i 4no 4on 6_park 9rk_rail 3orz_province 3righton 3u_kamal
4querque 4ry 3y 2cala_de_guadaira 9_henares 3ester 3hevsk 3obendas 4nbury 4rcon 4y 2davilla 3bourne 4rough 3eburgh
4rbury 5grove 9e_east 5holt 5ley 8_edge 5ney 5shot 5wood 3gate 3inga_beach 3ridge 2egrete 3ksandrov 5eyevka 5in
3manha 6ia 3ppo 3s 4sandria 4und 3xander_heights 7ra 9_headland 9_hills 8ia 8oupoli 2fenas 3onso 4rd 6s_point
3red_cove 6ton 5ton 2geciras 4rie 7n 7t 6je 4ster 3ieria 6s 3orta 3ueirao 2hambra 2i_sabieh 3bori 3cante 4e 5_river
6springs 5town 4ia 3ef 3garh 4udarz 3pur_duar 3so_viejo 3wal_north 2kimos 3maar 2lahabad 4mbie_heights 4nridge
5sford 5ton 4pattah 4wah 3emagne 4n 5by_gardens 5stown 5town 3hallows 3igator_creek 4ston 3oa 4ra 2ma 4nya 4ty
6_region 3elo 4re_stad 5ia 3irante_tamandare 3ondbank 6sbury 2ness 3wick 2o 3r_setar 2pharetta 4ington 2resford 4was
2sager 3ton 6ville 2t_hohenschonhausen 3a 4_verapaz 4gracia_de_orituco 4i 5_krai 4mira 5ura 4y 3horne 3o_barinas
5hospicio 5paraguay 9na_department 4n 5_downs 5a 6_meadows 7north 3rincham 2uksne_municipality 2va 4nd 4ro_obregon
3echurch 4ley 4ston 3in 3orada 2wa_astwny 4r 2yangula 3th 4us 2zeeria 3ir 5a 5ija 5sko 3yras 1mabere 3deo 4ora
3gasaki 3igbo 3kusa 3l 4apuram 4ia 4ner 3mbay_department 3nat_alasimah 4cio 3pa 3ra 5vati 4illo 4nath 4oo 3sya
3titlan 3zonas 8_department 2bajogai 4la 6ngoda 4r 5awa 5vale 4to 5tur 3erley 3ikapur 4lobe 3le 5side 3on 4vombe
3rosden 3ur 2eerika_samoa 9uhendriigid 3lia 3nia 3ricana 6ka_samoa 7e_panenske_ostrovy 7i_djevicanski_otoci
5ka_birlesik_devletleri 7ans_samoa 9se_maagdeneilanden 7i_szamoa 9virgin_szigetek 7n_samoa 9samoasi 8isch_samoa
9sche_jungferninseln 9sche_uberseeinseln 8sk_samoa 9ka_jungfruoarna 9ka_samoa 9ke_oversoiske_oer
7s_savienotas_valstis 6os_samoa 5ska_samoa 7i_deviski_otoki 4sfoort 5ham 3s 4bury 2hara 3erst 7burg 2iens 3go_beach
2lwch 2man 5ford 3ochostos 2nat_charoen 2ol 3ra 3s 3zoc_de_mota 2pang 4rafaravola 5o 3thill 2qui 2ran 4vati 3eli
3itsar 3oha 2stelveen 5rdam 9_zuidoost 2untai 3r_oblast 1n_giang 3muileann_gcearr 3nuhud 3ros 2abar_district 3co
3heim 3kapalle 4ora 3lamanga 5njirofo 3mbra 4ur 3n 4d 4indeua 4tapur 5nag 3pa 4olis 3sco 3toli 5ra 2bar 3u 2cash
5ter 3horage 3ona 2da 4lusia 4man_and_nicobar 3ergrove 5lecht 5son 8s_bay 3hra_pradesh 3ijan_region 5on 3ong 4ra
5ra_la_vella 6e 4ver 3radina 4eas 5ws_farm 4ia 5jevica 4os 5y 2enii_noi 3tan_district 2g_thong 3arsk 4ston 4ur
3e_gardien 4les_city 4rs 3ilija 5ja 3le_park 6vale 5sea 7y 3ono 3ra_dos_reis 4en 3uila 5ra 4o 4s 3vila 3yalfold 2hui
2ibare_district 3na 2jangaon 4r 3iang 3o 4uan 3u 2ka 4ng 4ra 3eny 3leshwar 2liu 3ong 3u 2more 2n_arbor 3a 4_bay
5valley 4ba 4cotty 4hilt 4ka 4long 4n 5dale 5grove 3erley 4x 3field_plain 3ing 3obon 2osy 2qing 4u 2san_si
3e_aux_pins 5boileau 5etoile 5la_raye 5royale 4ba 4ong 3han 4un 3tead 5y 4ruther 2takya 4lya 4nanarivo 5ifotsy
4rctique 5ktida 8ka 8s 9z 7yda 5tida 8e 3hony 3ibes 4gonish 5ua_a_barbuda 8e_barbuda 9n_barbuda 9s_barbuda
9t_barbuda 8i_barbuda 8ja_barbuda 8och_barbuda 9g_barbuda 8si_barbuda 8und_barbuda 8ve_barbuda 8y_barbuda
5va_i_barbuda 9n_barbuda 9r_barbuda 8un_barbuda 4och 5quia 4polo 3ofagasta 4n 5ina 6o_enes 5y 3ratsyt 4im
6_and_newtownabbey 3sirabe 7nana 3u 3werpen 2ula 3radhapura 2xiang 2yama 4ng 6_si 2zhero_sudzhensk 3oategui 1o_lu
3mo_er 2mori 2nla 2sta_valley 2tearoa 2xi 1pac 3lit 3recida_de_goiania 4tado 3tity 4zingan 2eldoorn 2lerbeck
2ollo_bay 3mu 3pa 2penzell_ausserrhoden 9_innerrhoden 3in 3le_valley 5by_in_westmorland 5cross 5dore 5ton 8_thorn
5y_bridge 2rilia 2sala 2ucarana 3lia 3re 4imac_department 2vienota_karaliste 8ie_arabu_emirati 1qaba 2mola
2uatorialguinea 3iraz 1r_ramtha 5qqah 5ss 6tan 5yyan 4ifa 5qqah 4umaythiyah 2aabia_uhendemiraadid 3bia_saudi 9udita
9udyjska 5e_saoudite 6miirikunnat 3caju 5tuba 4hinovo 4ruz 3d 4_county 3gatsotn 4on 4ua 6ina 6ri 3k 4konam 4ura 3l
4uen 3mbagh 4oko_ekiti 3n 4a_hills 4da 6s 4juez 4ui 4zazu 3o 3peinia 4iraca 4ongas 3r 4aquara 5s 5t 4ia 4uama
3shiyama 3tiria 3uca 6_department 6nia 6ria 4re 3xa 3yat 2ba_minch 3ory 3roath 3utus_ridge 2cadia 7_vale 3elia 3hway
3ot 4verde 3topolis 2dabil 7_province 4han 4kan 3ee 5r 4n_arcade 4rsier 4sen 3glass 3ingly 3nacrusha 3rishaig 4oss
7an 2ecibo 3nella 3quipa 3zzo 2ganda 5zuela 3elia 4nteuil 6iina 7ne 8ie 9en 6on 6yna 4s 3yll_and_bute 2hus 2iana
6_governorate 3ca 3el 3fwala 3quemes 3sh 3zona 2jantin 4winangun 3ona 2kansas 3hangai_province 7elskaya 3low 2les
5ey 3ington 9_heights 2madale 4gh 4vir 3eenia 4nia 6e 7n 6ja 5sko 3idale 4tage 3strong 9_creek 3thorpe 2navutkoy
7luk 3cliffe 3e 3hem 3i 4ston 3o_atoll 4ld 3prior 3sberg 4ide 2o_valley 3a 3n 4a 3ona 3sia 2rah 4ijan 3ecife 3owtown
4yo 6_naranjo 2ta 4ne 4rmon 3em 5isa 3hurs_point 3ibonite 4gas 3vin 2ua 3ja 3nachal_pradesh 4del 3pa 4pukkottai 3sha
2vada 3i 4at 2ybrw 2zamas 1s_safirah 5lamiyah 6imiyah 6t 5mawah 4inbillawayn 4ulaymaniyah 5wayda 8q 2a 3ba 3dabad
3hi 5kawa 3ka 3n 4sol 2best 6os 2cension 3haffenburg 3ot 5_park 6vale 2enovgrad 3rbaidschan 8zaan 6jdsjan 2fordby 2h
3_shafa 7miyah 7trah 4vale 3a 4nti 3bourne 4urton 6y 4y 3croft 3dod 3eville 3field 4ord 3gabat 4ill 4rove 3hurst
3ikaga 4ll 4ngton 4ya 3kelon 3mont 5re 4un 3oknagar 9r_kalyangarh 3tead 4on_in_makerfield 7keynes 7under_lyne 6field
3urst 3well 4ood 2ia 3r_region 2kam_in_furness 3eaton 4r 5n 3lstwna 3ylstwna 2lockton 2mar 5a 2nieres_sur_seine
2patria 3endale 9_gardens 3ley 2quith 2saba 4m 3en 3iniboia 4s 2tana 6japura 4ra 3i 3khlm 3on 5_clinton 6on_trent
4ria 3rakhan 9_oblast 3urias 3wood_bank 2uncion 2v_samoa 4virdzinas 2wan 2yut 1t_tall 2acama 3fu 3kora 4pame 3mbua
3ni 3ria 3scocita 4ehir 3whai 2bara 2epaihania 2h_thawrah 3abasca 3boy 3elstone 4nry 5s 4rstone 5ton 3garvan 3iopien
3lone 3ol_park 3y 2i 3baia 3kokan 3u 2lanta 6ico 7da_department 7que 7s 3ixco 2siaman 4mo_andrefana 8tsinanana
4nanana 3ugi 2tadale 4pu 4rd 4wapiskat 3ica 4li 3leborough 3ock_city 3ur 3wood 2ua 2well 3orth 2yrau 6_oblisi 1u_cap
2bervilliers 3in_grove 3urn 2chenflower 4i 5nleck 4terarder 7muchty 3kland 5ey 2dlem 5y 2ghnacloy 4rim 3sburg
4daugava_municipality 3ust 6a 6ine_heights 2lnay_sous_bois 2r_atoll 3aiya 4ngabad 3ora 3ukun 2stin 6mer 6s_ferry
4raalia 6l 7_islands 7ia 9n_capital_territory 8e 9n 8ja 8nd 5ija 5umtimora 3ztralia 6ia 2triche 2vergne_rhone_alpes
1vadi 3lon 3nnaata 3re 2eiro 3ley 3nel 6l_heights 4ing 3rsa 2iemore 3gnon 3la 4es 2oca 5_beach 3ndale 8_heights
4head 4side 2stralija 5ija 2ustralya 5urya 1wakeri 3puni 2bsala 2dal 2hekenetana 2ka 2lu 3w 4_fnland 2mwl 3yw 2psala
2rbrw 3ybrw 2sim 3worth 2wlw 1xbridge 2el 2minster 1ya 3cucho 3pel 2den 3in 2eyarwady 2lesbury 5ford 5ham 3mer 3sham
2n_al_arab 2r 3shire 2sen 2valik 1z_zawiyah 4ubayr 5lfi 2ad_kashmir 4shahr 3mgarh 3re 2capotzalco 2erbaidjan 8zan
9ana 9anas 7gian 7jan 9o 7yan 6jdzan 9jan 9san 6ycan 5eidzjan 6jdzan 2ilda 3mpur 2ores 3v 2ua 4_province 4y 3l 2zaba
0baa_atholhu 3lbek_hermel_governorate 2b_ezzouar 3ahoyo 3il 4nda 3ol 3ruysk 3u 4shkin 3worth 2c_giang 4lieu 4ninh
3abal 4u 5_county 3chus_marsh 3huan 3kworth 3olod_city 4or 3s_kiskun 3ton 3up 2d_salzuflen 3a_barabil 4gara 4joz
4khshan 4lona 3e 4n_baden 6wurttemberg 3ger_creek 4his 3in 3lapur 3sey 2ekrajan 2fang 4ta 3ia 3oussam 3ra 2gaha
4lkot 4moyo 3cilar 3dad 3e 4nalstown 4qi 4rhat 3hdad 4eria 4lan 3illt 3mati_province 3o 4_city 5region 3shot 3uio
3worth 2hadurgarh 4ma 6_szigetek 6lar 5i 5os 5u_salas 5y 4rampur 4walnagar 7pur 3celievler 3eri 3ia 5_blanca 4r_dar
3la 3raigh 5jn 4ein 7a 8s 5yn 4s_scrub 2ia_mare 3cheng 3di 4oa 4yabati 3e_comeau 5lazare 5saint_paul 9te_anne
6te_anne 3hecun 3jiantan 3konur 3ldon 4ieborough 3majing 3quan 3rnsdale 3s 4e 4ha 6n 5ishan 3ti_district 3xi 3yin
2ja_california 9fornia_sur 5verapaz 3os_de_haina 2ker_island 5s_creek 7hill 6field 4well 3hmut 3i 4xanov 3ool 3u 2la
4clava 4diyat_ad_dawhah 9_ar_rayyan 4ghat 5tas 4i_pungut 4kan_district 5lava 5ovo 4lly 4nbale 5ga 6ir 4shikha 6ov
5ore 4yan 3briggan 3catta 4lutha 4ombe 3d_hills 4ivis 4ock 5yle 4win_park 3earic_islands 4rno 3four 4ron 3ga 4owlah
9_heights 6nie 3ham 5nnah 3i 4kesir 5papan 4ntore 4uag 3ka 5n 6abat 4h 3laghaderreen 5jura 5lpur 5n 6trae 5rat
8_central 9east 9north 5ter 5ugh 4ina 7mallard 7sloe 6collig 6gry 6road 8be 6teer 7oy_harbour 5sodare 5to 5vor 4och
4ybay 6oden 7fey 6unnion 5castle 6lare 6onnell 5fermot 5gar 6erry 6owan 5haunis 5jamesduff 5kelly 5linan 5mahon 6ena
6oney 7te 6un 5nahinch 5patrick 5ragget 5sadare 6hannon 5walter 3main 7_east 4edie 4oral 4ullo 3narring 3ochistan
4tra 3qa 5sh 3rampur 5nald 4othery 3sall_common 5s 4ham 3tarusija 4i 5more 5nglass 4krievija 3urghat 3vanera
4i_municipality 3wyn 6_north 3zan 4ers 2m 3a 4ga 4ko 3berg 3enda 3ingui_bangoran 3pton 3yan 2n_mai 4pong 4talat_yai
3aadir 4gher 4n 3bridge 4ury 7_don_mills 3chory 4roft 3da 5_aceh 5r_abbas 7e_anzali 9genaveh 7labuan 9mpung
7seri_begawan 4irma 4on 4raboua 5ele 4undu 6g 3eh 4pa 4s 3ff 4ora 3g_kruai 4a 5low 5ngte 5on 4hazi 4il
4ka_belitung_islands 6lan 5ok 4lades 9a 9as 9ch 9z 4or 4ui 3ha 5m 3i 4_mazar 5suwayf 5yas_city 3ja_luka 5r 6an
6masin 4ul 5p 3k 4foot 4nock 4ra 4s 5ia 7_beach 8grove 8park 5town 4ura 3nockburn 3ora_point 3qiao 3sbaria
4ka_bystrica 9strica_region 4tead 4wara 3ta 4eay_meanchey 5n 4ry 4ul 3well 3yo 4uwangi 2o_loc 3ding 3ji 3qing
3ruco_province 3shan 3tou 3ying 2patla 2qubah 2r 3_beach 4hill 3a 4bai 4hona_province 4kaldo 5i 5pur 4mati 5ula 4n
5agar 5duda 5oa 6vichi 5ya 4sat 4ut 3bacena 5de 6osa 9s 4erton 4ican 5l 4osa 4uda 3caldine 4elona 8eta 3da 4dhaman
4en_ridge 4ia 4ney 4oli 5n 4sey 4well_park 9valley 3eilly 5n 4llan_point 3gara 6h 4eddie 4o 5ed 3h_el_gazel 4am 3i
4ka 4ma_waini 4nas 5go 5itas 4q 4sal_division 5hal 3ka 4ing 7side 5sland 4ly_west 3lad 5ston 4borough 5y 4estone
5tta 3mer 6a 4outh 3nala 5rd_castle 5ul 4burgh 4es 5t 6by_le_wold 5y_point 4ham 4oldswick 4sbury 5ley 5taple
4t_green 4wood 3ooga 3quisimeto 3ra 5_do_corda 9garcas 9pirai 6mansa 5ba 5cas 6k_heights 5ncabermeja 6queras 8illa
9tas 5ute 4eiras 7o 5tos 4head 4ie 6re 5gada 4ow_in_furness 7upon_humber 9on_soar 6by 6ford 4y 3si 3tin 4lett
6y_green 4olome_maso 5n 6_le_clay 7on_sea 7under_needwood 8pon_humber 3ueri 4ipur 4ni 4ta 3won_heads 3ysaw 2s_congo
4sassandra_district 4uele 3a 4ksehir 4rabeasca 4vakalyan 3church 3el 5_city 6landschaft 3ford 3han
4kortostan_republic 3ildon 5icate 4n_view 5gstoke 3low 3mat 3oda 3que_country 3ra 5h 3s_hill 4ano 5r 4e_kotto 5ndean
4ingbourn 7ham 3ti 4on 3uo 3yun 2t_yam 3a 4c_city 4la 4m 4ng 6as 4tais 4ysk 3eau_bay 4haven 4man 7s_bay 3h 4a 4gate
4inda 4urst 8_city_centre 9manor 3i_sahra 4kent 3ken 3ley 4ow 3man 3na 3on_rouge 3tagram 5mbang 5ramulla_south
4ersea 6y_hill 8point 4icaloa 5r 4le 6_creek 3u 4_pahat 4mi 4raja 2ubau 3cau 4hi 3lkham_hills 3ru 3ska_municipality
2varia 2wku 3shar 3try 2xter 2y 3_horse 4islands 4of_plenty 4roberts 4street_corridor 4view 3amo 6n 4n 5_hot 6nur
6olgii_province 5khongor 4wan 3burt_province 3elsa_state 4ux 3iji 3nton 3onet_head 5ne 3ramaly 4euth 3side 4ton_hill
4water 9_north 3t_lahya 4own 3view_heights 8village 8woods_steeles 2zar_e_yakawlang 5ak 1each_haven 5lands 5mere
4on_hill 6sfield 9eld_upper 3minster 3rna 4sden 3trice 3u_vallon 4ceville 4desert 4fort 8_west 4harnois 4ly 4maris
5ont 8_hills 4pre 4sejour 4ty_point 4vais 3verlodge 6ton 3war 2bedouro 3ington 2cancour 3cles 3har 3kenham 4ingham
3ontree 2dale 3dau 3ford 7_park 9ark_nortown 7ale 3lington 6og 3was 4orth 3zin 2echboro 9ugh_greenbrook 5worth 4roft
3ford 3liar 3nleigh 3rsheba 4wah 2ga 3sye 3usarai 2hbahan 3choko 3eira 3shahr 2i_xue_ping 3bei 3chengqu 3daihehaibin
5o 3ghton 3hai 3jing 3liu 3meng 3piao 3ra 4ut 3su 3tbridge 4h 2ja 4_governorate 4ia 2kaa 4si 3es_county 5csaba 3obod
3usho 2l_air 4ombre 3a 4_bela 4ir 5t 4rusz 4u 4wan 3broughton 3chatow 4ika 4onnen 3don 3ebey 4d_hawo 5weyne 4k 4m 4n
3fast 4ield 4ord 7_roxo 6t 3gaum 4ia 6n_gardens 5ca 6ko 5e 6n 5ja 5o 5que 4orod 8_oblast 4rade 6no 6ve 8_heights
9south 3ice 4za 6s 5e_city 7district 3l 4_block 5park 6ost_hill 4a_vista 5ghy 5mack 6bi 6palli 5ra 6y 4bird 8_park
5owrie 4erive 5ville 6ue 8_heights 9hill 4field 5lower 4ingen 7ham 4mere 4o 4s_corners 5bank 5hill 3mont 7_cragin
8north 8south 5re 4ullet 3o 4_horizonte 4eil 4gorsk 4rechensk 6tsk 5usija 7ko 4vo 3per 3rose 3size_park 3ton 4urbet
3vedere 2mbridge 3owo 3pton 2n_arous 9_governorate 4tre 3alla 5madena 4raby 3becula 3d 4ale 4e 5r 6_municipality
4igo 7_city_centre 3edita 4vento 3gal 6uru 4bu 4hazi 4kulu 4o 4uela 3i 4_abbes 5department 5mellal 9al_khenifra 7red
5suweif 4dorm 4n_city 5a 6s 4to_juarez 3llech 3nett_springs 3oni 4wa 3salem 4on 6hurst 4ville 3tleigh 9_east 6y
7_park 4o_goncalves 3ue_state 3well 3xi 2ppu 2rala 4ne 4t 5_county 4zategui 3bera 7ti 4ice_corentyne 3dsk 4yansk
5chiv 3e_alston 5regis 4a 4kum 4sfield 6ord 4zniki 5ovskiy 3gama 6o 4edorf 5n 6_op_zoom 4heim 4isch_gladbach 4kamen
4vliet 3kane 4eley 8_vale 4hamsted 4shire 9_park 3lin 6_kopenick 7treptow 3magui 4udas 6es 6i 6u_salas 6y 3n 4eborg
3ovo 4wra 7_heights 3rechid 4i 5dale 5edale 5gan 5mah 5nba 4ouaghia 4y 5_islands 3serker 3thierville 4ioga 4oua 4ram
3uniy 3wick 7_upon_tweed 4yn 2sancon 3bes 3euteloseu 3uki 2t_shemesh 3hal 5ny 4esda 4lehem 4nal_green 3im 3ley
3siboka 3tiah 3ul 3ws 5_y_coed 2ulah_park 2veridge 5ley 8_park 6y 7_hills 2wbush 3dley 2xhill_on_sea 3ley 6_north
2ylikduzu 4əqan 3pore 2zerros 3iers 1hadohi 4rakh 6vati 5eswar 3galpur 3irab_bazar 3kkar 3lwal 3ndara 3ratpur 4uch
3tapara 4para 3vani 4nagar 3wanipatna 3yandar 2ilai 4wara 3mavaram 4ber 3nd 3sho 3wandi 6i 2ola 3ngir 3pal 3utan
2ubaneshwar 3j 3saval 1iala_podlaska 4oleka 5rus 4ystok 3nzhuang 2bir_hat 5evo 3ra_lake 2cester 3kley 4nacre
3ol_region 3ton 2da 4r 3denden 4ulph 3eford 3ford_on_avon 3will 2e 3lany 4efeld 4orrusia 9sia 6usko 8sia 9ie
4sko_biala 3n_hoa 3rton 2ggar 4era_waters 4in_hill 4leswade 3uacu 2hac 4r 5_sharif 3or_county 2japur 4r 3elo_polje
3ie 3nor 2kaner 4r_atoll 3ini_atoll 2la_tserkva 4mbil_heights 4spur 5uvar_district 3bao 5ys 3deston 3ecik
3gola_plateau 3imora 4nga 6urr 3lericay 4ingborough 7e 7ham 9y 7s 8hurst 7ton 4stedt 3oela 3qas 3sdale 4thorpe 5on
2m_son 3a 3bo 3ini 2n_xian 3an 5gonan 3brook 3doon 4ura 3gara 4erville 4ham 4ley 4ol 3h_minh 5thuy 4e 3jai 3ningup
3onga 3shangul_gumuz 3tulu 3zhou 2obio 3ko_norte 6sur 3mbo 2r_el_ater 7djir 3atnagar 3chcliffe_cliffside 5grove
5ington_on_sea 4otes 3dham 4well 5ood 3ganj 3igui 4ne 3jand 3kdale 4enhead 4hadem 4irkara 3lesik_arap_emirlikleri
9krallik 3mingham 9m_gardens 3nin_kebbi 3obidzhan 3r 4ong 3tinya 3uaca 3yulevo 9_zapadnoye 3zebbuga 2salpur
4u_gvineja 3ceglie 3han 4kek 4nupur 4oftu 5p_auckland 7middleham 7sutton 6briggs 6dale 6s_cleeve 8lydeard 8stortford
8waltham 7teignton 8oke 9n 7worth 6thorpe 7on 3kra 3lig 3marck 4il 3sau 6_guinea 3trita 8_nasaud_county 3wan 2tlis
3ola 4nto 3tern 3ung 2u 2ysk 2zerte 7_governorate 1jelorusija 5var_bilogora 2oerneborg 3rneborg 1laby 3ck_creek
6diamond 6forest 6hill 6mountain 6notley 6point 6river 7ock 5all 8s_park 5burn 9_north 9_south 9_with_darwen 7tt
5ett 5falds 5heath 5ley 5mans_bay 6oorfoot 5pool 5ridge 6ock 7d 5s_beach 6miths 6tone_heights 5town 5wall 7ter 6ell
6ood 4on 3enau_ffestiniog 8gwent 6von 5gwynfi 3gdon 4oevgrad 5veshchensk 3ine 5ville 4r_athol 5gowrie 3ke_jones
5hurst 5view 3nchardstown 4dford_forum 4tyre 3rney 3xland 3ydon_on_tyne 4ney 2ean 3kinge 3nheim 3ssington 3tchingley
6ley 3wbury 2i_bli 3da 4worth 3gh_park 3nd_bight 5ley_heath 3sworth 3tar 2ockhouse_bay 5ley 3emfontein 5hof 3is
3omington 3ra 3wing_point 3xham 4wich 2ue_bay 5haven 5nile 5springs 4water 3ff 5_point 3menau 3ntisham 2yth 4on
1nei_brak 1o_er_wo 3li 2a_vista 3co_department 3mbee 7_east 3z 2bbili 3o_dioulasso 4naro 2ca_raton 4ue 3holt 4um
6_hordel 3ono 3vana 2ddam 4en_town 4ington 3edern 4lwyddan 3han 3inayakkanur 3le_street 3min 3o 2e_district 3ny
3rosia 2gale 4ngar 3danci 3enhausen 3gabri 3hni 3nor_regis 3or 5odskoye 4ta 6_d_c 4vinje 3ra 2hemian_region 3icon
3le_plains 3uslav 2i 3s_des_filion 4briand 4e 4sevain 3tuva 2jnurd 3onegoro 2kak_atoll 4rina 5o 3e_region 4o 3htar
3sburg 2lama 3e 3garija 5tanga 3i 4ivia 4khamsai 4ngbrook 4var 5ie 7n 6ja 5ya 4wia 3lington 3ogna 4seu 3pur 3sover
3ton 6_le_sands 7point 7upon_dearne 3u 3vadin 3warra_heights 3zano 2ma 4derry 3bala 3et_county 3i_county 2n_accord
3ab 4ire 4n 4o 4venture 5ista 3beach 3di 5_beach 6junction 4oukou 5woso 3g_county 4aigaon 5ree 4olava 3hill 3ita
6_springs 3n 4ells_bay 5r 5t_bay 4y 5_hills 5bridge 7ook 5rigg 9_heights 5ville 3o 4_east 4gin 3tang 3ville 3ython
2oie 3ker_bay 3laroo 3nah 4dall 3ragoon 6ul 5l 4owa 3sbeck 3terstown 4le 3val 2queron_department 2r 3as 4zjan 3deaux
5rtown 4j_badji_mokhtar 7ou_arreridj 6el_kiffan 4on 3eham 7wood 3ga 4o 5_maggiore 5a 5u 3i 4soglebsk 4vli 3kou 3mla
3no_state 3onia 7_heights 4s 5u 4ugh_green 8of_arima 9f_bolton 9f_bury 9f_halton 9f_oldham 9f_rochdale 9f_stockport
9f_swindon 9f_tameside 9f_thurrock 9f_torbay 9f_wigan 8park 7bridge 4vichi 3rowash 3sad 4od_abauj_zemplen 3th 3ujen
6rd 3yeong 4spil 2saso 3ham 5n 3ilovo 3na_a_hercegovina 6hersek 6i_hercegovina 7n_hercegovina 4ia_e_herzegovina
8d_erzegovina 7hercegovina 7i_hercegowina 7ja_hertsegoviina 9_hertsegovina 7si_hertegovina 7y_herzegovina
5e_en_herzegovina 7herzegovine 6n_hercegovina 8och_hercegovina 8und_herzegowina 5ja_ir_hercegovina 8un_hercegovina
3sier_city 4ley_park 3ton 6_spa 3znia_hercegovina 2tad 4nic_ridge 5y 6_downs 3esdale 3haville 4well 3ley 3osani
8_county 4u 3shabelo 4uana 4vana 3tesford 4isham 4rop 3ucatu 3wood 2uafle 4ke 3cherville 4le_du_mouhoun 4touche 3eni
5za 3farik 3gainville 5ra 4hton 3ira 3lcott 4der 7combe 4ogne_billancourt 3merdas 7es 3rges 6t 5ogne_franche_comte
4ke 6lands 4ne 6_end 6mouth 4ton 3vet_adasi 7saar 8ziget 6eiland 6insel 6nsaari 6oen 7n 7v_ostrov 9otok 7ya
6uv_ostrov 2vey_tracey 3ingdon 6ton_camp 2w 3_bowing 4island 4street 3burn 3don 3en 5_hills 6island 6mountain 5fels
3ie 3ling_green 3ral 5ville 3thorpe 2x_hill 8_north 9south 3grove 3ted 2yaca 4nup 3eros 3le 5_heights 3ne_island
4ton_beach 3olali 2zeat 3hou 3icni_otok 3uyuk 1ra 3bant 4ham 3cebridge 9ge_heath 4ken_ridge 5ley 5nell 9_forest 3d
4bury 4dan 5on 4enton 4field 5ord 8_on_avon 4ing 4ley_cross 4ninch 4well 3ga 5nca 8_paulista 3hma_lodge 6pur 3idwood
4la 6_county 4ntree 4tling 3jarajnagar 3k 4na 4pan 3mford 4hall 6m 5ope 4ley 4pton 3ndenburg 6sburton 5fort 5on
5vlei 4sgore 5ton 4t 5ford 4xton 4yan 3siilia 5l 6e 6ia 7en 4ov 6_county 4sall 3teyevo 4islava 9a_region 4sk 4ton
3unschweig 6ton 5ton 3va 3y 4_park 4brook 4ton 3zilia 7e 7ja 4ylia 4zaville 2cko 2eakeyville 5fast_point 4m 3chin 5t
4on 3da 5sdorp 4bury 4on 3men 5rhaven 3na 4chley 4dale 4t 5_knoll 5ford 5wood 3scia 4il 4t 3warrina 4ood 3yten
3zilya 2iagolong 4r 5_hill 9l_belgravia 5wood 3ceni 3de 4ge 6_of_allan 9_earn 9_weir 6man_downs 6nd 8_county_borough
6port 6town 6water 5north 5water 4lington 4port 3erfield 5ley_hill 3gg 4house 5stone 5t 6lingsea 6on 8_and_hove
9east 9le_sands 8s 6water 4stock 3kama 3ll 3mscombe 3ndisi 4gelly 4kin 5low 4scall 5mead 3sbane 4tol 6n
3t_virgin_szigetek 4anski_deviski_otoki 9_djevicanski_otoci 9_indijskooceanski_teritorij 6ya_virjin_adalari
4i_neitsisaared 5sche_jungferninseln 6h_columbia 4on_ferry 4s 5_indische_oceaanterritorium 5e_maagdeneilanden
5ke_indickooceanske_uzemi 9ndickooceanske_uzemie 8panenske_ostrovy 4tany 5ilaiset_neitsytsaaret 6ska_jungfruoarna
4u_virdzinas 3ve_la_gaillarde 3xham 4ton 7_hill 4worth 2no 2oad_blunsdon 5beach 9h_waters 5field 6ord 5meadow 9ows
5stairs 7one 5view 9_north 5water 7y 3ckenhurst 5ley 5man 5ton 5ville 3d_posavina 3ken_arrow 7hill 4opondo_district
3mborough 4ham 4ma 6_stadsdelsomrade 4ont 4pton 4sgrove 4yard 3nkhorstspruit 4te 3okdale 5e 5field 5haven
9n_amesbury 5line 6yn 8_park 5s 5vale 5water 4me 5field 3ra 3seley 4sard 3tton 3ugh 6shane 6ton 9_astley 4lee 3vary
3wn_hill 6owl 5hills 5s_bay 6burg_chatham 6ville 3xbourne 5urn 2uce 3gge 3ndall 4ei_darussalam 7muara_district 5j 6a
6us 4swick 9_east 9_heads 9_west 3sque 4sels 8_capital 3ton 2venica 2yan 5sk 7_oblast 3mbo 3namman 4dwr 4mawr 4na
3tyjskie_wyspy_dziewicze 1u_luo_si 3ros 2ada_district 2banza 2caramanga 4sia 3ca 5n 3harest 4eon_si 3kden 4eye
4fastleigh 4haven 5urst_hill 4ie 5ngham 9mshire 4lands_beach 5ey 2dapest 8_ii_kerulet 9iii_kerulet 9iv_kerulet
9viii_kerulet 9xi_kerulet 9xii_kerulet 9xiii_kerulet 9xix_kerulet 9xv_kerulet 9xvi_kerulet 9xvii_kerulet
9xviii_kerulet 9xx_kerulet 9xxi_kerulet 9xxii_kerulet 4un 3dina 3e 4rim 3ge_budge 5woi 3leigh_salterton 3ta 3va
3yonnovsk 2ena_park 5ventura 6ista 4g_kan 4os_aires 2ff_point 4alo 3ord 2garska 3brooke 3le 3ulma 4ma 4ruslan 2he
2ilth_wells 3n 2jumbura 9_mairie 9_rural 2kan 4vu 3hara 3it_mertajam 5tinggi 3oba 2lacan 4hdelah 4ndshahr 4on 4wayo
3dana 3ford 3gaaria 5n 5rie 8n 7ja 8e 7stan 6ra 3harsko 3imba 3l_creek 4aburra 4een 4i 4s 5brook 3phan 2mba
3thang_district 2nbury 3clody 4rana 3da 5berg 9_east 9_north 9_south 9_west 5ll 5mba 5noon 4eena 4i 4oora 5ran
3galow 5rribee 5y 4endore 4oma 7_county 3ia 4nyong 3tingford 3ya 4ip 2on_ho 5ma_thuot 2rao 4s 4ydah 3bage 5nk 3dell
4ur 3es_saint_mary 4wala 3ford 3gas 4enland 5o 5rsdorp 5ss_hill 4h_by_sands 6heath 6le_marsh 5ead 4os 3ham 5npur 3i
4en 4ram 3kina_fasas 7faso 3leigh_heads 9waters 5y 6_in_wharfedale 4ington 3naby 5ge 4eside 5tt_heads 4greave 4ham
7_on_crouch 9n_sea 4ie 5ston 4ley 4opfield 4s_beach 6lake 5ide 8_heights 5ville 4tisland 5wood 3onga 4s 5a 6s 5i
3pengary 9y_east 4ham 3quina_faso 3ra 5doo 5neer 4ill_lake 5ngham 4um_heads 4y_port 3sa 5_province 4cough 4ledon
4twick 4wood 3ton 6_joyce 7latimer 7upon_stather 9on_trent 6wood 3undija 7s 4ri 3wash 4ell 4ood 7_east 3y
4_st_edmunds 4atiya_republic 2san 3by 3eresere 3h 4ehr 5y 4land_beach 4mills 4wick 3ia 5_county 3kerud 3selton
9_city_cenre 3to_arsizio 2ta 4n 5a 6s 4o 4re 3embo 3ha_buthe 3ler 3taba 4erwick 7orth 3uan 3wal 2ve_sala 2xar 3ted
4on 2ynaksk 3ukcekmece 2zau 5_county 3huang 3uluk 1wizibwera 2ras 3fw 3ws 3y 1ydgoszcz 2field 3ord 2ram 3on 5_bay
2tom 2umba 2wong 0ca_mau 2acupe 3guazu 8_department 3zapa 2banas 6tuan_city 5o 4rita 5lah 3edelo 3imas 4nda 5teely
3le_beach 3o 4_delgado_province 5frio 5rojo 5san_lucas 4olture 9e_south 3ra 5matta 9a_west 3udare 5waaq 4yao 2cador
4k 4pava 3em 4res 3he_creek 5u 4oeira_do_sul 8inha 8o_de_itapemirim 3oal 4una 2da 4s 3dens 4ington 3ereyta 9_jimenez
3iz 3nam 2en 3rgwrle 4leon 4narfon 4philly 9y_county_borough 4went 2gayan_de_oro 8valley 3liari 3ua 5s 2herconlish
5siveen 3ir 3ul 2i_rang 3cara_del_orinoco 4o 3dian 3eiras 3nta 3r 4neyhill 5lea 5ryan 5s 6_city 7north 4o
3ster_on_sea 5or 2jamar 7ca 9_department 2labar 7zon 5ozo 5ria 4is 4la 4ma 5ba 5vale 4pan 4rasi 8_county 5ca
3bayog_city 3cot 3das 6_department 7novas 4erbank 6cruix 6dale 4icot 4well 3edon 7ia_fairbank 3gary 3i 4fornia
9a_gully 4sta 4tzdorp 3laghan 5la_bay 5n 6der 5o 4ington 5ope 3mar 6ia 3ne 3oocan_city 4undra 9_west 3tanissetta
3umpit 3verton 4ia 5nia 3well 2m_pha 7_mines 4ranh 3acari 4guey 4qua 4rillo 5oes 4yenne 3be 5r 6ley 6well
5warra_village 4lesforth 4odge 7ia 6ja 5gia 5ja 5oya 5rne 5urne 5ya 4ridge 9_bay 9_gardens 9_park 9shire 4uslang
3den 6_haven 7park 7south 7town 3eley 5ford 4ron_park 6un 5un 3illa 6o 4ra 3lachie 3meray 3p_hill 5mountain 4ana 6ia
4bell 8_river 8field 8s_bay 9_creek 8ton 9own 7town 4eche 5rdown 4ina 7_grande 7s 4o_grande 6largo 6mourao
5s_do_jordao 9s_goytacazes 4sall 5ie 3rose 3uy 2n_gio 6uoc 4tho 7_city 3ada_bay 5ian 4kkale 4r 5ies 5sie 5y_islands
7wharf 3berra 3cun 3delaria 4iac 3elones 4wdon 3ford_heath 3gzhou 3illo 4ndeyu 3kaya 4iri 4uzo 3ley_heights 7vale
3more 3nes 4ing_town 8vale 7ton 4ock 5n_hill 6s_creek 6vale 3oas 4ga_park 4nbury 4ra 4vanas 4windra 3tabria 5ura
4emir 5rbury 4ley 4on 6_beach 3ungra 3vey_island 3yon_country 2o_bang 8_province 4lanh 3he 3l 3qiao 2p_chat 4haitien
4sante 4vert 3alaba 4s 3e_coast 7ral 5dorset 5town 5woolamai 4l 5_le_ferne 6saint_mary 5la 6en 3iata 4tal_region
3o_verde 3reol 3ul_verde 2queta 2rabanchel 5obo 4cas 4ga 5uatatuba 4ibi_olandesi 4picuiba 4s_severin_county 4tinga
4vonica 4zinho 5o_department 3berry 4onear 4rook 3chi 4roft 3denas 6den 4iff 7_heights 8south 5gan 4ross 4ston 4up
4well 3ey_park 3fin 3gados_carajos 3ibbean_coast 5e_neerlandes 5isch_nederland 4gnan 4na_heights 5dale 5e 5gbah
9_south 6in 5thia 4sbrook 3leton 8_place 9sur_mer 8ville 4ingford 5sle 4ow 4sbad 8_region 4ton 7_north 4uke 4yle
3man 5rthen 9nshire 4el 6o 5n 4ichael 4ona 4unnock 3narvon 4donagh 4egie 5s_hill 5w 4forth 4lough 4money 4oustie
4wath 3ol_city 5i_corona 6na 7e_springs 5ostadium 4ra 3pi_centro 5na 3ramar 5ra 4efour 4ick_on_shannon 9n_suir
7fergus 7macross 5galine 6twohill 5ngton 4ollton 5n 6shore 4um 6_downs 4yduff 3samba 4eldine 4halton 4on 6_city
4s_park 4tairs 3tagena 6o 7_province 4erton 4wright 3uaru 4pano 3woola 3y 2sa_grande 5loma 4blanca 9a_settat
4nare_department 4s_adobes 3cade 7s_region 5vel 3erta 4y 3hel 4mere 3ino 3oria 3per 3selman 3tanhal 4el
6lammare_di_stabia 7defels 6o_branco 5rton 4ille_and_leon 9la_mancha 4le_cary 8ove 7donington 9uglas 7hedingham 8ill
7rock 7vale 6bar 7ellingham 7layney 7ridge 6comer 8nnell 7rag 6dawson 7erg 9mot 6ford 6gar 6island 6knock 6maine
8rtyr 6point 8llard 6rea 9gh 7ock 6side 6town 7roy 6wellan 4or 4ries 5o_valley 6p_rauxel 5um_danorum 3uarina 4la
2t_island 3acaos 4guases 4lao 5ina 8_foothills 5onia 4marca 4nduva 5ia 5o 5zaro 4r 3balogan 3cliffe 3erham 3ford
3hedral_city 5rine_field 3ia_la_mar 3on 3rine 3terall 6ick 9_garrison 2uca_department 5guito 5ia 5sia 3lfield 9_east
9_north 9_south 3seni 2va_de_tirreni 4n 3ersham 4s_beach 3ite_city 2wood 3ston 2xias 6_do_sul 2yenne 4y 3man_adalari
6oarna 7erne 7yene 6saaret 3o_district 3thorpe 2zaquistao 1eara 2belitarik 3u_city 2chia 3il_hills 2dar 5_grove
6park 6rapids 6vale 3una 2fn_cribwr 2hia 4ja 2iba 2kija 3ya 2laya 3bridge 3fsborg 3ina 3le 2maes_bay 2ntar_zhupa
4enary_heights 6nial 9l_park 9l_scarborough 5r_city 4raal_afrikaanse_republiek 6l 7_abaco 9imak 9nd_western 9ndros
8bedfordshire 9ohemia 8city 8darfur 9epartment 9istrict 8eleuthera 9quatoria 8finland 8greece 8java 9utland
8kalimantan 8luzon 8macedonia 8ostrobothnia 8papua 9rovince 8region 9iver 8serbia 9ulawesi 8visayas
7afrikanska_republiken 9rikas_republika 7e 7niy 5e 6_est 7nord 7ouest 7sud 6ville 5ines_afrikos_respublika 5o_habana
7sur 4urion 2pu 2rdanyola_del_valles 3es 4te 3gy 5_pontoise 3ignola 3kezkoy 3na_hora 3ro 5_de_pasco 6largo
2sar_department 3ena 3inovo_oblesevo 4s_municipality 3ka 4e_budejovice 4o 3snock 2tinje 2uta 2yhan 2zayir 1hacao
4ewater 4hoengsao 4o 3de 4stone 4well_heath 9st_mary 3eryong_up 3fford_hundred 3gang 4ford 4uanas
3harmahal_and_bakhtiari 3i_nat 4basa 4gou 4he 4n_valley_bay 4yaphum 3kwal 6ma 3lan_pago_ordot 5tenango_department
4co 4font_saint_peter 9st_giles 6rd 4grove 4isgaon 4k_farm 5ida 4lakere 4ons_en_champagne 4us 3man 5rtin 4beri
7s_flat 7y 5ly 5ord 4paign 6sak_province 5igny_sur_marne 6on_lakes 4rajnagar 3nda 6nnagar 5igarh 5ler 5pur 5uasi
4ganacheri 5cheng 7un 5de 5ji 5le 7ng 6i 7ng 5ning 6yeong 5ping 5qing 5sha 7u 5tu 5won 5yi 6uan 5zhi 7ou 4ia
4napatna 4thaburi 3ohu 4yang 4zhou 3pais 5yevsk 4eco 5l_allerton 7hill 7saint_leonards 6hall 6izod 6town 4man 4ra
3rallave 4d 4field 4i_baguirmi 5kar 5ng 4khi_dadri 4lbury 5emagne 6roi 6sland 7ton 9wn 9wn_of_aberlour 6ville
9le_mezieres 5otte 9_parish 9nburg 9town 5ton 8_kings 9marshall 4mhaven 5inster 5outh 4nwood 4o 4sadda 4ters_towers
9towers_city 5ham 4vil 3s 4e 5town 4hka 3tburn 4eau_richer 7guay 7roux 4ham 7_islands 4swood 9_west 7rth 4tanooga
5eris 5ogram 3u_doc 4k 3ykovskiy 2eadle 7_heath 9ulme 4m 3boksary 3chnya 3ddar 5ington 5leton 3ektowaga 4tham_hill
3gutu 3khov 3lford 4ghoum_el_aid 4m 5er 5sford 6ley_wood 4sea 7_heights 5field 4tenham 4yabinsk 3mainus 4nitz
3nab_nagar 4galpattu 5de 6u 5gu 5hua 5tangcun 5xian_chengguanzhen 9g 5yang 5zhong 6ihe 4nai 4zhou 3onan 5gju_si
3pstow 3quia 3rbourg 4emkhovo 6ushki 5povets 4ia 4kasy 5essk 4mside 9_west 4naya_rechka 5ihiv 9_oblast 6vtsi 5ogorsk
4ry_burton 7hill 7orchard 6brook 6ville 4tanovo_yuzhnoye 5sey 4vonohrad 3sapeake 4ham 5ire_east 5unt 4sington 4ter
7_hill 8le_street 7field 7mere 3tumal 4wynd 3w_magna 4ton 3yenne 2hatarpur 5tisgarh 3ibramau 4ndwara 2i_linh 3a
4ng_mai 7rai 4pas 3ba 4ougamau 4uto 3cacao 5go 7_lawn 4hawatni 5ester 5ibu 6castenango 4kerell 5sands 4layo 4o
5loapan 5ni 5pee 3dambaram 4dingfold 4low 3esanuova 3feng 4ley 3gasaki 4orodo 4uayante 4well 3huahua 3k_ballapur
4hli 4magalur 4uma 5sei 6hino_shi 3lakalurupet 4ca 5ompton 4d_okeford 5ers 4i 5labombwe 4lan 5iwack 4pancingo 4tern
4worth 3maltenango 4bas 5orazo_province 6te 5u_province 4oio 3n_state 4andega 9a_department 5town 5utla 4cha_alta
6illa 7na 4derah 4e 4gford 5ola 4hoyi 4iot 4ju 4ley 4nachowk 5or 4o 5_hills 4tamani 4u 4y 3pata 4lun 4pendale 7ham
5ing_campden 9norton 9ongar 9sodbury 4re 4stead 3quimula 3rala 4chiq 4iqui_province 4k 4miri 4nside 9_park 4ongui
4yu 3seldon 4holm 5tian 4inau 8_municipality 4lehurst 4topol 4wick 3ta 4ose 4radurga 4tagong 6urgarh 6way_bay
4ungwiza 3vacoa 4ilcoy 3zhou 2lef 2obe 4ham 3co 3fu 3iseul 8_province 3kwe 3let 4oma 4sey 4ula 5teca_department
3mutov 3n_buri 4gjin 5long 5qing 5zuo 4tales_department 3pda 4pington 4well 3rley 7wood 5ton_cum_hardy 4vatsko
4wacja 4zow 3sica 2rist_church 6church 6iana 7e_downs 8s_beach 6mas_adasi 9eiland 9oya 3yston 2ubut 3cher_sandevo
3dleigh 9_knighton 3har_kana 3kha 4otka 3la_vista 4mleigh 4ucanas 3mphon 3ncheon 4gcheong 9ngnam_do 5ju 4ian
3quisaca_department 3rch 6_fenton 7stretton 7yonge_corridor 6down 6ill 6lands 4t 5on_park 4u 3sovoy 4t
3te_aux_outardes 3uk 3vash_republic 3war 3y_region 3zhou 2ypre 3styakove 1iad 3les 3mis 4pea 3njur 4orte 2binong
4toke 3uti 2cero 3urug 2dade_do_vaticano 3ra 2ego_de_avila 3naga 4fuegos 9s_province 3rna_hora 2kampek 4rang 3upa
2lacap 3e 4ungsir 6yi 3l_airne 2mahi 3islia 4tarra 2n_makao_oib 3a 3cinnati 3derford 3isello_balsamo 2par 3er
3olletti 3ro 4u 5s 3utat 2ranjang_hilir 3ebon 4ncester 2teureup 3rus_heights 3ta_del_vaticano 3y 4_beach 5of_belfast
9ristol 8edinburgh 8francistown 8isabela 8leicester 9ondon 8westminster 8york 2udad_acuna 8podaca 7benito_juarez
8olivar 9livia 7camilo_cienfuegos 8holuteca 7del_carmen 9l_este 9l_vaticano 9licias 7general_escobedo 8uayana 9zman
7hidalgo 7juarez 7lazaro_cardenas 8erdo 8ineal 8opez_mateos 7madero 9nte 7nezahualcoyotl 7obregon 8jeda 7piar 7real
8io_bravo 7sandino 9telite 7valles 8ictoria 3tat_vella 2xi 2zre 1lackmannan 9anshire 4ton_on_sea 3irlea_birchmount
3mart 3ne 4ton_park 3pham 3ra 4borough 4e 5galway 5mont 9_meadows 7rris 5nce_gardens 9park 9rockland 9town 6don
9_vale 6ville_shoal_harbour 5sholm 4inda 4kson 6ton 6ville 3udelands 5io 3y 4don 4field 4more 4pole 4ton 7_le_moors
9e_woods 8south 8west 2ear_island_waters 5view 5water 4tor_moor 3ckheaton 3ethorpes 3land 3mton_park 3nchwarton
3obury_mortimer 3rkenwell 4mont 8_ferrand 4vaux 3ve 5don 5land 6eys 2ichy 3fden 4fcrest 5e 4ton 7_beach 8hill
8springs 3nton 7_township 3theroe 3ve 2ocolan 3gherhead 3nakilty 4curry 4dalkin 4es 4skeagh 4tarf 3phill 3rinda
3sepet 3velly 8_park 5rdale 6lea 4is 3wne 3yne 2uain_meala 3j_county 5napoca 3nes 3tton 2ydach 4e 5_north 6river
5bank 1o_do 2acalco 3huila 3l_point 4burn 4dale 4hurst 4island 4town_of_balgonie 4ville 3mo 3ri 3st 3tbridge 4epec
7que 5s 4icook 4zacoalcos 2ban 4r 3bitty 3den 3h 4am 3ourg 3ram 3urg 6_north 2chabamba 4in 4rane 3katoo
4burn_central 4enzie 5rmouth 4field 4ington 4le_bay 3le 3onut_creek 8grove 4rote 4s_keeling_adalari 5eilanden 5oerne
2dicote 3o 3sall 2edpoeth 3s_creek 2ffs_harbour 2gan 3enhoe 3geshall 2huna 2imbatore 5ra 3ty 2jedes 2lac 4tina 3by
3capirhua 4hester 3d_ash 5lake 5norton 4en_common 4stream 3e_harbour 4ambally 4bee 4dale 4ford 4giales 4raine 5ne
4sberg 3ima 4nton 3lado_villalba 5roy 8_plateau 4ege_grove 8station 4ie 6r_row 5nes 6gham 7wood 9od_park 6sville
7wood 4ooney 3mar 3nbrook 4e 3o_vale 4mba 6es 6ie 6o 4n 5_department 5el_light_gardens 5ia 7_del_valle 8lindavista
8nativitas 4rado 8_springs 3sterworth 3tishall 4on 3umbia 6us 3ville 3wich 4ood 4yn_bay 3yton 2mal 4yagua
9_department 3be_martin 5r 6ton 3erio 3illa 4tan 7cillo 3merce_city 5wijne_district 4une_de_tori 3o 4doro_rivadavia
4e_district 4ras 5e 6_szigetek 6n 6rne 6s 3pton 3rie 3una_tori 2nakry 3cepcion 9n_del_uruguay 6tion_bay_south 4ord
7_west 7ia 3dell_park 5r 4obolin 5n 3ey_island 3fey 3gleton 4o 5_brazzaville 6kinshasa 4resbury 3ingsby 4sbrough
5ton 3nacht 4ecticut 5lls_point 4olly 5r 3on_bridge 3roe 3selheiro_lafaiete 5tt 4olacion_del_sur 4tance_bay 7ta
9_county 8ia 9na 9ne 7za 5itution_hill 3tagem 5i 4ramaestre 5ecoeur 3voy 3way 4y 2ober_pedy 3danup 3ee_bay 3gee 3k
4_adalari 5szigetek 4eilanden 4ham 4i_saared 5nsaaret 7eln 4ley 4oarna 5erne 5ve_ostrovy 6i_otoci 9toki 6y_ostrovy
5yene 4s_hill 5hire 9_eaton 5town 4town 3lah 5mon 5ngatta 5roo 4bellup 5inia 4ock 5ola_cove 6ngup 4um_beach 3ma
4babah 5s 4era 4inya 3n_rapids 4abarabran 5mble 3pers_plains 3ran 6bong 4oibah 5y 4paroo 3tamundra 4ehill 2pacabana
4n_department 3enhagen 3iapo 3manthorpe 3pabella 4erbelt 4lestone 4ull 3thorne 2quimbo 8_region 5tlam 2raki 4l_cove
6gables 6springs 3bridge 4y 5_glen 3deaux_heights 4illera 9a_department 4oba 3ea_del_nord 9_norte 9_sud 9_sur
4e_du_nord 9sud 5a_de_nord 9_sud 4ia_do_norte 9_sul 3fe_castle 3i 4nda 6i_beach 4o 3k 3lette 4u 3nelius
6la_de_llobregat 5r_brook 4holme 4ubia 4wall 3o 4mandel 9l_valley 4na 5el 7_fabriciano 8oviedo 5ie_district 4wa 4zal
7_district 3pus_christi 3ralillo 4ientes 5mal 4oios 4yong 3se 4ham 4ica 4o_italia_davenport 4torphine 3tazar
4es_department 3um 5ba 4nna 3vallis 2sby 3enza 3ham 3lada 3sack 3ta_davorio 7o_marfim 6mesa 4essey 2tabato 4i
3e_divoire 5saint_luc 4au_du_lac 3grave 3ia 3onou 4paxi 3swold_hills 3tbus 4enham 5sloe 6more 4ingham 2ulsdon
3ncil_bluffs 4don 4testhorpe 5y_durham 7of_ceredigion 9_flintshire 3par_angus 3rbevoie 4tenay 5own 3tts_crossing
3va_tabaquite_talparo 2va_lima 4sna_county 3e 4n 5try 2w_bay 3andilla 5sville 4ramup 3bit 4ridge 3denbeath 3ell 4s
3fold 3ichan_bay 4e 3ley 3pen 4lain 3ra 2xhoe 2yah 3lton 3oacan 2zumel 1rabtree 3ce 3dley_heath 4ock 3fers 7_west
3ig 5avon 5burn_farm 5ie 7burn 5lie 5more 5nish 4l 4ova 3mlington 3nbourne 9e_east 9e_north 9e_south 9e_west 5rook
4ebrook 4field 5ord 4ham 4leigh 6y 4ston 4well 3teus 4o 3ven_arms 3wley 7_down 2edenhill 4iton 3ech_saint_michael
3mona 5rne 8_point 3scent_head 4sy 4tmead 5on 5wood 4well 5ick 3te 5il 3we 4kerne 2ib_point 3ccieth 4iuma 4k 5howell
5lade 6ewood 3eff 3mea 3ngila 5leford 3stalina 3uleni 2na_gora 2oacia 4tie 4zia 3eserw 3ft 5on 7_downs 8park 5y
3ix_des_bouquets 3mer 4ford 4well 3ndall 4ulla 3ok 5well 4m 3pwell_bishop 3sby 4s_hands 7ills 6river_state 5field
6ord 5gar 7tes 5haven 6ouse 5maglen 6olina 4ton 3tone 3uch_end 3wborough 4land 5e 4s_nest 4thorne 3y 4don 7_hills
8north 8park 8south 3zet 2uden_bay 3mlin 4psall 3z_alta 4eiro 8_do_sul 2ynant 3stal_brook 8palace 1sad 2ehorszag
2ongrad 1u_chi 2a 3mba 3ndo_province 4za_norte 3uhtemoc 4titlan 9n_izcalli 5la 2bango 4tao 3uk 2ckfield 3uta
2ddalore 5pah 3worth 2enca 3rnavaca 2ffley 2iaba 3to 2kai 2lburra_beach 3cairn 4heth 3ebra 3iacan 3len 4inan 6gworth
4oden 5mpton 4ybackey 3more 3ts 3verstone_green 2mana 3balum 4erland 9d_park 6nauld 4ria 4um 3nock 2ndinamarca
4letown 3ene 4o 3g_kiem 3namulla 2par 3ertino 2razao 3dworth 3epipe 3ico 4tiba 3l_curl 3ra 5jong 5mbine 5ns_hill 4ie
5mundi 4umbin 9_valley 9_waters 4y_rivel 3tin 3ug 3velo 2scatlan 4o 3hendall 3todia 2ttack 2vette 7_ouest 2xhaven
3ton 2yuni_mazaruni 2zco_department 1wm 3afan 3bach 4ran 3tillery 1yangugu 2gnet 2pern 3r 4ess_hills 1zad 3rnogora
2echy 3stochowa 0da_lat 3nang 7_city 2bhoi 3ou 3ra 4owa_gornicza 3wali 2ceyville 3heng 4noye 2dri 3u 2egu 3jeon 3t
2gana 3enham 4stan 3lish 3upan 2inava_kaunas 4gean 3ry_flat 3sy_hill 3to 2jabon 2k_lak 3abin 4hlia 4r 3hla
5et_nouadhibou 3ota 2lai 4rna 3beattie 4y 3e_city 3gety_bay 3i 4_old_town 4an 6g 6wan 3keith 5y 3las 4ington
3mellington 5ny 3oa 3ry 5mple 3serf 4ton 3ton_in_furness 6ganj 3y_city 4ellup 2m_dam 3anhur 4scus 8_governorate
3bovita_county 4ulla 3ghan 3iao 4etta 3mam 3oh 3pier 7_peninsula 2nane 4o 3bury 4y 3deli 5nong 9_north 5rhall 4ong
3emarca 7k 3forth 8_east_york 3ia 4elskuil 4ja 4lovgrad 4marca 7ka 3jiangkou 3nevirke 3shui 4ka 5o 3ville 2okou
3tian 3ukro 2peng 3hne 3itan 3to 2qing 2r_chioukh 4es_salaam 4kulayb 3aa 4b 4yya 3bhanga 3ch 3enth 4sbury 3field
3gaville 3han 6_uul 3ien 3jiling 3laston 4ey 4ing_downs 8heights 8point 7hurst 7ton 9n_point 3mstadt 3nah 4dale 3ra
5s_hall 4ington 3tford 4mouth 4on 3vel 3wen 4in 2sha 5he 4i 5qiao 5tou 3ka_kalan 4ǝsǝn 3marinas 3oguz 2tchet 5worth
3e 3ia 3ong 3un 2ugafupirusu 5peupilseu 5upils 9sa 5vpils 5wpils 4pelis 5ilis 7s 3le 3phin 3ra 3sa 2vangere 4o
5_region 3eluyville 4nport 5try 3id 5son 4e 4s 5town 3oren_park 2w_park 3ei 4sville 3ghafbyls 3lish 3son_city 8reek
3ukou 2xi 4ng 3u 2yboro 3e 3kundi 3lesford 3r_al_balah 4ut 3s_bay 3ton 6a_beach 2zaifu 3eshan 3hong 5u 1e_aar
4merikanske_jomfruoer 9anske_jomfruoyene 3britiske_jomfruoer 9ke_jomfruoyene 3franske_sorterritorier
3palaestinensiske_omrader 3rust 2agon 3kin 3l 3n_park 4shanger 3rborn 8_heights 4ham 2bar 5ca 3enham 3re_birhan
6tabor 5cen 3ub 2can 4tur 3eption_bay 3in 2ddington 3edo 3ham 3ougou 2e_why 3bing_heights 3p_river 4cut 3r_lake
5park 5valley 4agun 4field_beach 3side 2gan 5wy 2hdasht 3iwala_mount_lavinia 3ra_dun 4i 3ui 2iniolen 3r_ez_zor
2l_afrikai_koztarsasag 4korea 4szudan 3abole 4combe 4hey 4neys_creek 5o 4ware 3chevo 3ft 3gado 3hi 3icias 3mar 5s
4enhorst 3oraine 3ph 3ray_beach 3son 3ta 5_amacuro 4ona 2mbeni 3erara_mahaica 3ir_hisar 6kapija
3okraticna_republika_kongo 8yczna_republika_konga 2n_centralafrikanske_republik 4dominikanske_republik
9ikanske_republikk 4helder 4sentralafrikanske_republikk 3bigh 7shire 4y_dale 3emarken 4ysville 3gbu 4uele_district
4zhou 3ham 6_court 4olme 3igomodu_district 4liquin 4stone 9_east 4zli 3man 6_island 5rk 4ead 3nery 4ington 4y
5loanhead 3ov 3pasar 3ton 6_holme 3ver 2oband 3ghar 3lali 4i 3ria 2pendencias_federales 3ok 4t_hill 2qen 3ing
2ra_ghazi_khan 5ismail_khan 3bent 4y 5shire 3i 4nce 3nancourt 3pt 3rimut 5nturn 4y 5beg 3singham 2s_moines 4plaines
3borough 3e 4ronto 5t_springs 3ford 3oto 3sau 3trnik 2t_palestinske_omradet 3mold 3roit 2urne 3x_montagnes 2va
3enter 3izes 3on 5_meadows 5port 5shire 2was 3sbury 2xter 2yang 2zhou 1haalu_atholhu 3hran 3ka 5_division 3mar 4tari
3nbad 4gadhi 3r 4an 5puram 4mapuri 6varam 4ruk 3ulpur 2enkanal 2i_qar 2ofar 3lka 3raji 2rangadhra 2uburi 3lia 6n 3ri
1i_an 3li 2adema 3mond_bar 8creek 3na 4bu 4ella 4zi 2ber_county 3rugarh 2ckens_heath 4leburgh 4son 4y_beach 2dao
3cot 3dillibah 3sbury 2ekirch 3n_bien_province 4vidafrikas_republika 7koreja 7sudana 3ppe 4sloot 3z_de_octubre 2ffa
2gby 3gers_rest 4le 3lur 3os 2hok 2jon 2khil 3irnis 2li 4_municipality 2mapur 3bokro 5ola 4ulah 3itrovgrad 2najpur
4lupihan 4marca 4pore 4s_powys 3digul 3gcheng 4jia 4le 6y_village 5i 4tao 4wall 4xi 4zhou 3ner_plain 4ington 3slaken
2ourbel_region 2palpur 3hu 3olog 2re_dawa 2sa 3hna 3ley 3raeli 3s 3tington 4rict 8_of_columbia 9of_rutland 9of_taher
6to_federal 3uq 2tchingham 5ling 3ton_hill 2vinopolis 3o 2yala 4rb_najm 6akir 9r_province 1jamaa 3net 2elfa 3mmal
2ibloho 4o 5uti 4uti 2ougou 2ugun 1mitrov 1nipro 6petrovsk 1oagh 2bele_municipality 3rich 4na 4oslav 3walls 2cklands
2ddaballapura 4ington 3ges_ferry 3oma 3worth 2gonbadan 3ubayazit 2ha 4d 2jran 2l_pri_ljubljani 3beau_mistassini
3enjske_toplice 3gellau 4oprudnyy 3isie 3j 3lar 6d_des_ormeaux 4s_point 4ymount 3neni 3ores 7_hidalgo 2magnano
3bivli 3inicaanse_republiek 6k_cumhuriyeti 7a 8ani_vabariik 9ninen_tasavalta 8i_koztarsasag 8na 9ische_republik
9ska_republika 9ska_republiken 7os_respublika 6que 3odedovo 3pu 2n_torcuato 4valley_village 3abate 4ghadee 6mede 4ld
4ustadt 3caster 9_east 3do 4useni 3egal 4tsk 3g_hoi 5nai 5thap 4a 5ra 4cun 4du 4feng 4gongon 5uan 4hai 5e 4kan 4ling
4ning 4sheng 4tai 4xi 6a 6ng 4yang 5ing 3ington 4sthorpe 3nacona 4ington 4ybrook 5carney 3ostia_san_sebastian 3vale
2olandella 3madgee 3nan 4side 2ra_creek 4do 4l 3bod 3chester 3drecht 3een 3i 3king 3magen 5nsland 3noch 3ogomilovo
3pat 3ridge 5go 3set 6_park 4ten 3tmund 4yol 3val 2s_hermanas 3quebradas 3so_region 2than 2uala 4ne 3ble_bay 6view
3glas 7_park 3liu 3ne 3rados 2ve_holes 4r 5_gardens 6heights 5court 5idge 4ton 3zhansk 2wling 3ner 5y 4ham_market
4patrick 4side 5view_roding_cfb 4ton 1raa_tafilalet 3mblio_kaulo_krantas 4men 3ncy 3perstown 3ycott 4ton 7_valley
2ean 3ghorn 3nthe 3sden 3wvale 2iefontein 3ffield 3ver 2obeta_turnu_severin 3chia 3gheda 3hobych 3ichead_nua 4twich
3mana 4iskin 4ore 3nfield 4gan 3uin 3ylsden 2umcondra 4mond_cove 8ville 6yne 4nadrochit 3ry 3zhkivka 2ybrook 3den
3sdale 1schang 4ibuti 1uarte_province 2bai 4sari_district 3bo 3lin 3na 3rovnik_neretva 3uque 2c_trong 3heng 3k_lake
4lington 2dley 6_park 2enaburg 2fferin_grove 4ield 4town 4y 2hok 2isburg 3tama 4sland 3welskloof 2kinfield 3uhturi
2leek 3uth 3verton 3wich 7_hill 2ma 4guete 4i 3barton 3fries 8_and_galloway 3raon 2n_laoghaire 3aburg 4ujvaros 3bar
6tonshire 4lane 4oyne 3can 4hurch 4raig 3dalk 5s_valley 4ee 6_city 4onald 5wran_beach 4rum 3eburgum 4din 5oo
3fermline 3gannon 5rvan 4iven 4loe 4og 3ham 4olme 5u 4ua 6ng 3ipace 3keld 5rque 5swell 3leer 5wy 4op 5y 3manway
4ore_east 3nington 3oon 3s 4borough 4haughlin 4table 4well 3tocher 3vant 2oba 5o 2que_de_caxias 2rack 4l 4ngo
4zno_department 3ban 3en 3g 4apur 3ham 3res 6_county 3sley 2shan 6be 6zi 3seldorf 2tton_park 2xford 2yun 2zce 3hou
1vinsk 1wgapyls 2insk 1yce 2ffryn_ardudwy 2mchurch 2neburg 3nyrne 2sart 3erth 1zabkhan 3oudzi 2ersija 6s 4zhinsk
2ibuti 7ja 7s 6sko 2sibuti 2winow 0eadestown 2gan 3le_point 6vale 5by 5hawk 5mont 5scliffe 6ham 2ling 2rby 3ith
3l_shilton 4s_barton 6colne 8urt 5field 5ton 5wood 4ville 4wood 2sington 6wold 3t 4_aimak 6lbury 6ngus 6yrshire 7ton
6zerbaijan 5bairnsdale 7llina 6endigo 7rbice_corentyne 8gholt 6oldon 6ranxton 7idgford 8sbane 7oughton 6unbury
5calder 7nnington 7rnarvon 6hattanooga 7evington 6orrimal 7wes 5dean 7reham 7vonport 6ulwich 7nbartonshire 5end
8_danforth 5flatbush 6remantle 5geelong 6obi_aymag 7re 7sford 6rand_bahama 7instead 6willimbury 5hampton 7nney 7rlem
9ing 8tford 6ills 6orsley 5independence 7nisfail 6pswich 5java 6erusalem 6indabyne 5kalimantan 7sai 7zakhstan
6empsey 7swick 6ilbride 8lara 6urrajong 5launceston 6eake 6incolnshire 8dfield 8ton 7smore 6ondon 7s_angeles 7thian
5mackay 7itland 7rkham 6elbourne 6olesey 5new_york 6orwalk 6usa_tenggara 5orange 5peckham 7nsacola_heights 7rth
5rainton 6enfrewshire 6yde 5sepik_province 6heen 6ide 6ussex 5taieri 7mworth 6ilbury 6oowoomba 5victoria_park 7llage
5wellington 7myss 6hitburn 6ittering 4bourne 4church 4ern 7_beach 8cape 8darfur 9istrict 8equatoria 8heights
9ighlands_province 8province 8region 8visayas 4ington 4lakes 5eigh 4on 6_in_gordano 4riggs 6ngton 5y 4vale 4wood
2ton 5_bray 6socon 5s_hill 3tington 2u_claire 1bbw_vale 2etsu 2olowa 3n_atoll 4yi_state 2ute_ikorodu
1catepec_de_morelos 2cles 6hall 6ton 2h_chettia 3ternach 3uca 4nga 2kington 1d_damer 2e 3a 3n 4_glen 5hill 9s 5park
6rairie 5terrace 4bridge 9e_humber_valley 4derry 4field 4s_landing 5or_park 4vale 2ge_hill 4cliff 5umbe 4water 5orth
9stown 3mond 3ware 4orth 2ina 4burg 8h 3rne 3son 3thvale 2mond 6son_park 5ton 3undston 2na 2o_state 2son 2wardstown
3instowe 1ffium 2on_alaaye 1ger 2ham 2ipat 4t 5as 5e 5o 5us 3to 4to 2linton 8_east 2remont 2yenlitoi_guinea
4sult_allamok 9arab_emirsegek 9kiralysag 3iptom 3pte 6n 5i 1ha_amufu 2ime 3watini 2lva 5_osh 2rebru 4hbru 2spoo
1ight_ash_green 6mile_plains 2lat 3ean_siar 2meo 3sbuttel 2ndhoven 2sen 2xample 1jido 3gbo 2ura 1kangala 2ibastuz
3ti_state 2poma 2uatoa 3vukeni 2vador 7a 8s 4tor_ginesi 7iaal_guinea 9l_guinea 9la_gvineja 9lguinea 9lna_gvineja
7ska_gvineja 2wador 1l_achir 3bagre 5nco 5yadh 3cafetal 5jon 3daein 3ejido 4ulma 3fasher 3hamma 5tillo 3jadid
3khroub 3limon 3menia 4ghair 4onte 3obeid 4ro 4ued 3paraiso_department 5so 4rogreso 4ueblito 3seibo 3tarf 4igre
4ocuyo 3viejo 5gia 2anora 7_heights 3zig 2ba 4san 7_county 3istan 3lag 2che 3inki 2da 3erslie 3oret 2eebana
3fantcsontpart 3geyo_marakwet 3ktrostal 3na 3rmore_vale 3uthera 3vandiluurannik 2fenbenskusten 9kysten 2gava 3in
2i_waters 3as_pina 3mbah 3ot 3sta 3zabeth 9_bay 9_downs 9_east 9_grove 9_hills 9_north 9_park 9_south 9_vale 2k
3_grove 4point 3ford 3hart 2lalong 4nd 3en_grove 5brook 4rslie 4smere 9_port_town 3icott_city 4minyt 4ot 6_lake
6t_heads 4son 3on 4re 2m_park 3hurst 3ira 3s_old_rexdale 4tead_market 4well 3vale 2oy_alfaro 2sa 3enham 3inki 3tead
5rnwick 4ree 3wick 2ta 3ham 6_north 2v 3a 4_i_estland 3etia 2wa 3ood 2y 3ria 2zinki 1malahleni 2balenhle 3era 3leton
3say 3u 4_county 5guacu 2den 2erald 7_beach 4son 7_park 4ton 2ilia_romagna 3n 4onu 3rados_arabes_unidos
5tele_arabe_unite 6i_arabi_uniti 6os_arabes_unidos 6s_arabes_unis 2khomazi 2ley 2men 4rich 4tt 3iganur 2neth
2pangeni 3ire_bay 2sworth 2u_heights 4park 5lains 3re_ekiti 1na 2camp 4nto 4rnacion 3hanted_hills 4eng 5ping 3initas
3ounter_bay 2d 3e 4avour_hills 4rby 3on 5ezya 2erhodar 3wetak_atoll 2field 7_lock 8town 2ga_province 4dine 3els
3land 4ehart 5mount_lawrence 4ish_corner 2id 2more 2na 3edi_est 7ouest 4r_glynn 3is 5corthy 5kerry 6illen 5timon
2och 3ggera 3la 2schede 3enada 3hi 2tebbe 4rprise 3re_rios 2ugu 5_state 6ukwu 2vigado 1pe 2hraim 2irus 2ping 2som 4o
2uni 2worth 1quador 4teur 5oriaal_guinea 1rbaa 3il 2cis 3olano 2d 3aojiang 3enet 2ebre 5o 5u 4uru 3chim 3gli 3mpro
2ftstadt 3urt 2gani 2ie 3kub_atoll 3na 4dale 3teria 4h 4re 6ea 6ia 6ja 2langen 2melo 4nistan 4ra 3ington 2ode
3ngo_region 2rachidia 3ol 2skine 7_park 7ville 2win 2ythree 4rea 2zincan 3sebetvaros 3urum 1s_senia 2bjerg 3o 4bo 4o
4u 3uu 2caldes_engordany 3h_sur_alzette 4en 4ol_park 4weiler 3ondido 3uintla 2enler 4yurt 3ukilseutuna 2farayen 2her
3ilstruna 4rusutouna 3owe 2ikhaleni 2k 3ilstiuna 7juna 7ouna 7una 4sehir 2lovaquia 5enia 2me 4ralda 9s 2pagne
4illat_province 4nha 5ja 5ola 3erance 7za 3inal 4rito_santo 3o 4eoe 4o 3uu 2quimalt 2saouira 3en 5don 8_north 9west
4x 3ington 3lingen 3uatini 2t 3ados_unidos 4ncia 3eio 4li 6_department 5la 6e 4pona 4rhazy 4van 3ija 3land 3ocolm 8e
8o 8u 4kolma 8o 4n 5ie 6ja 5sko 5ya 3uaire 2uatini 3k_oron 3po 2vatini 2zak_korea 6macedonia 5i_mariana_szigetek
3torszag 1tats_unis 3wa 5h 2ela_afrikka 6korea 6sudan 2helton 3iopia_regional_state 7e 2ioopia 4pia 6e 7n 6ja 3yopya
2obicoke_west_mall 3n 4_wick 4ia 2talong 8_beach 2wall 1udlo 2gene 2le 4ss 3omogo 2memmerring 3undi 2napolis 3ice
2roa 2sebio 3kirchen 2xton 1vandale 4s_head 5ton 8_gardens 9park 5ville 4ton 3tt 2enwood 3rard_park 4creech 4ett
4sley 4ton_hills 8park 3sham 2ington 2le 2ora 3smos 2reux 3y 1wa_district 2ell 2hurst 2yas_harold 1xeter 2hall
2minster 3outh 2ning 2tremadura 2uma 1ye 3mouth 2nesbury 3sford 4ham 2sturoy 2thorne 1zhou 3va 2za_ohu
0faadhippolhu_atoll 3fu_atholhu 3ri_saared 2catativa 2dden 2eroer 7ne 5yene 4ske_ostrovy 3tano 2ifley 3lsworth
3r_oak 4field 9_east 9_heights 9_west 5ord 4lands 5ie 6ght 4view 8_park 4winds 4y_meadow 3salabad 3yum 2jardo 2kaofo
3enham 3syw 2lan 3con 3esti 3her 3ka 4irk 4land 8_adalari 9szigetek 8eilanden 8i_saared 9nsaaret 9nseln 8ske_ostrovy
9ki_otoci 9ki_otoki 9oarna 9oerne 9oyene 8y 3l_river 4in 6gbrook 4owfield 4s_creek 3mouth 2ngcheng_chengguanzhen
9gang 5un 4shan 3ling 4ou 3nie_bay 3o 3ta 2qus 2r_north 3ah 4nah 4skur 3eham 4ru_salos 3go 3idabad 5kot 5pur 4ngdon
3m_cove 4borough_heights 4ington_hills 3nborough 4don 4ham 7_royal 4sfield 4worth 3o 4arna 4e_adalari 5r 3rar 4er
4oupilha 4ukhabad 3s 4aaret 4hut 4ki_otoci 3yab 2sa 2tehabad 5pur 3ick 4ma 3sa 2ulconbridge 4dhouse 2versham 3ona
4riten 2wkner 2yetteville 2zeley 3ilka 1ct 1eatherstone 2deral_district 8way 2icheng 3ra_de_santana 2jer 2lgueiras
3ixstow 9e 3ling 3tham 4on 4well 2ndalton 4ou 3gcheng 4gang 4hua 7ng 4kou 4ping 4run 4yi 3i 3nell_bay 3shui 4tanton
3wick 3yi 2odosiya 2rbane 3gana 4us 3izaj 3kessedougou 3managh_and_omagh 4e_neuve 4ont 5y 3n_bay 5hill 4andopolis
4dale 5own 4hill_heath 5urst 4ie 4s 4tree_gully 4vale 4y_creek 6grove 6hills 3oer_szigetek 4zepore 3rara
5z_de_vasconcelos 4ol 4ybridge 5den_park 5hill 3ski_otoki 3u_salas 2s 3_al_bali 4meknes 2tcham 3hard 4iye
1ianarantsoa 2diti 3ji 3schi 3zi 5s 4si 2er 4_cifci 6ounty 2fe 2g_tree_pocket 3i 3tree 2ley 3i 4piinid 6jnen 6nai 8s
7e 7i 7ler 7y 5piinit 7ne 9ne 9rna 9rne 4stin_bolgeleri 2nancial_district 3champstead 5ley 3dern 4ochty 5n 3edon
3gal_bay 4las 3landa 7e 7ia 8ya 4ey 4yandskiy 3ningley 4land 4mark 4orszag 3ska 5o 3tona 2orentino 2rhouse 3le
3ozabad 3uzabad 2shbourne 5urn 4er 6s 4guard 4toft 2tovinany_region 3zgibbon 4roy 7_crossing 8north 4william
2ve_dock 5oak_green 4miletown 2yi 1lacq 3gami 4staff 9_hill 3mborough 3nders 3tbush 4lands 3xmere 2eckney 3et 5wood
3mingdon_park 7ton 3nsburg 3tcher 3voland 3xbury 2imby 4well 3n_flon 4ders 8_park 9view 4t 3twick 2ockton 3okburgh
3ra_hill 5ville 4e 5at 5nce 8_graham 8ville_bristol 7ia 5s_department 6ti 5y 4iana 7opolis 5da 7blanca 6sdorf 5n 6a
5s 6sant 3wer_mound 2ynn 1nidek 1oam_lake 2chabers 4riw 4ville 3sani 2ggia 3o_island 2ligno 3kestone 4lando_salos
5enda_salas 3som 2ntana 4enay_sous_bois 4well 2otscray 2rbes 3de 4ham 4ingbridge 4on 3enade_arabemiraten 4st 6_glen
7hill 9ll_north 9ll_south 9lls 7lake 8odge 7row 6dale 6ville 3far 3li 3mby 4iga 4osa 3res 6t 7_hill 7dale 7ers_beach
7field 3ster 3t_beaufort 5collins 7ulonge 5de_france 5erie 5frances 5lauderdale 5macleod 6cmurray 6yers 5nelson
5saskatchewan 6mith 6t_john 5wayne 6illiam 6orth 4aleza 4h 4itude_valley 4rose 4uneswell 2shan 3ter 2ulridge 4sham
3mban 5ot 3ntain_valley 8ebleau 3r_crosses 5lanes 5marks 2wey 3lmere 2x_creek 3ford 3rock 3ton 6_beach 2z_do_iguacu
1raijanes 3mingham 9m_center 4lingham 4pton_on_severn 3nca 5ia 7_deli_teruletek 8guyana 8polinezia 7orszag 6e 6ja
8s_dienvidjuru_teritorija 9_gviana 9_polinezija 6sco_beltrao 9_morato 9_morazan_department 7town 5ja 5o_da_rocha
6ska_gvajana 9_polinezija 8i_sveti_martin 8o_juzno_ozemlje 6uzska_guyana 9ka_jizni_uzemi 9ka_polynesie 5uska
9_gijana 9_polinezija 8i_juzni_teritoriji 6zska_guyana 9a_polynezia 9o 4kfort 6urt_am_main 9_oder 5leigh_park 6in
5reich 6ig 7jk 7ke 5ston 9_east 9_north 9_south 5ton 8_junction 4s_guyana 6polynesie 5a 5iz_guney_topraklari
9uyanasi 8polinezyasi 5k_guyana 7polynesia 9lynesien 6a_guyana 8polynesien 8sydterritorierna 4ta 4zosisch_guayana
9ch_polynesien 3ser 6burg 9gh 2eckleton 3derick 9ton 8ton 7ksberg 4rikstad 3e_state 4ling 4mans_bay 9reach 4port
4town 3iburg 3jus 3mantle 4ington 4ont 3nch_creek 6s_forest 6ville 4da 3shwater 4nillo 5o 3uchie 2ibourg
3edrichsfelde 9shafen 9shain 4rn_barnet 4sland 3mley 7_green 3nton_on_sea 3ockheim 3sco 4ton 3uli_venezia_giulia
3zington 2odsham 3me 3ntera 2uitvale 2yazevo 5ino 3dek_mistek 1uchu 5cho 2ding 2efuki 3ncarral_el_pardo 4girola
4labrada 4tes_del_valle 2jairah 3i 4an 4eda 4n 5omiya 4oka 4sawa 2kayacho 3ien 3uchiyama 4i 5_shi 4oka 4roi 4shima
4yama 2lbourn 3da 3ham 6_gardens 3ing 3l_sutton 4arton 4erton 3op_szigetek 3wood 2nafuti 3chal 3dacion 4y_bay 3tua
3za 2origrotta 2qing 2rnace_green 3th 3ukawa 3zedown 2sagasuga 3hun 3sa 2ttsu 2wwah 2xin 2yang 3u 2zhou
3uli_district 1ylde 2styrws 2zabad 0ga_kgapane 3rankuwa 2afu_alif_atoll 6dhaalu_atoll 3lkacyo 2bao 3es 5_governorate
3ona 6s 4rone 3rovo 3u 4n 2dabay_district 4g 5_betageri 3di_annaram 3wal 2efle 3rwen 3vle 2fle 3sa 2gauzia 3ebrook
3noa 2iles 4limh 3nesville 4ford 4sborough 3thersburg 2jana 3raula 3uwaka 2lapagos 4shiels 4ti 6_county 5si 3esong
3gate 4uduud 3icia 4winku 3larate 4e 3ston 3veston 2magori 3bela 4ie 5ja 5ya 4o 5ru 3lingay 3onal 3ping_lor 4rin 2na
4noque 3dajika 5ki_pradesh 4er 4hidham 6nagar 4ia 3ganagar 5pur 5rampur 5wati 4es 4neung 4oh 4shang 4u_chengguanzhen
4won_do 3ja 3nan 3shui 4u 3tang 3zhou 2o 3gou 3liu 3mi 3ping 3you 3zhou 2pan 3yeong 2ranhuns 3bsen 4utt 3cia
3den_grove 7island 7suburb 6a 5z 3elochhead 3field 4orth 3grave 3issa 7_county 3land 3net 3oowe 4ua 3ran 3sington
4tang 4wood 3tcosh 3vagh 3y 2sa 3h_barka 4ua 3pe 3teiz_vitoria 4onia 2tchina 3eshead 3ineau 3ton 2utaborg 4eng 2ven
3le 5borg 2wler 6_east 7south 2y 3a 3ndah 3thorne 2za 4_province 5strip 3iantep 1badolite 3rpolu_county 2ongan
1dansk 2ynia 1e_de_bao 2bze 2dangan 3dington 3ling 3ney_hill 3o 2ebung 3long 7_city_centre 8west 3veston 2fle
2gharkunik 2ilston_bay 3ta 2jiu 2la 4n 3derland 3endzhik 3ligaer 3orup 3senkirchen 2mbrook 3ena 3lik 2neina
4ral_pico 8roca 8santos 8trias 4va 5e 3he 3k 3oa 3t 4eng 2ographe 3rge 6_hill 7town 6s_hall 6town 5ia 6e 7n 6yevsk
2ra 4ldine 6ton 9_city_centre 3eida 3i 3man 6ia 6town 3nsija 6s 3o 3rards_cross 4ingong 2sundbrunnen 2tafe 3eborg 8a
9s 3xo 2uteborgo 2valia 3gelija 2ylang 1hajnsielem 3nzi 3rbia 4daia 4yan 3t 4al 3ziabad 5eh 5pur 4ni 2otki 3wr
2wtnbrgh 1ia_lai 4nghia 3maica 3ppone 2bbons 3ilterra 3raltaras 9s 3sons 3uti 2dgegannup 2essen 2ffnock 3u 4_shi
2jon 2lan_province 3berdyke 6t 7_islands 7on 3fach_goch 4ord 3gandra 4it_baltistan 3len 5s_plains 4ieston_heights
5ngham 4y 3more 3roy 3ston 3wern 2mcheon 3li 2n_gin 3e 4_bissau 3owan 2ordania 2psy_hill 2ralang 4rdot_city 6s_hill
3esun 3ga 3idih 3on 5a 3raween 6heen 3ton 3van 2sborne 3enyi 2tarama 3ega 2ugliano_in_campania 3rgiu 7_county
2vatayim 2yani 2za 1jakova 6e 3meenlinna 2ilan 3rokaster_county 2oa_haven 3teborg 5hbarg 1lace_bay 4is 3dbeck
4esville 4stone 9_central 9_park 3namman 4dore 5wr 4mire 3pwell 3rus 3sgow 7_city 4nevin 4s_house_mountains 4tonbury
3zebury 4ov 2ebe 3msford 3n_alpine 5burnie 5eden 5forrest 5huntly 5innes 6ris 5osmond 5waverley 4alta 5riff 5vy
4boig 5rook 4coe 4dale 7ough 5ene 7ning 5ora 6wie 4eagle 5lg 7_east 8north 8south 6la 4ferrie 5ield 9_jane_heights
9_park 4garry 5owrie 4haven 4mavis 5ore_park 4ning_valley 4orchy 6ie 4rothes 6y 4side 4unga 4vale 5iew 4wood 2inton
3wice 2odeni 3govac 5w 3ria 3ssodia 6p 3ucester 9rshire 2usburn 2yfada 3n_neath 4corrwg 4de 1mina_tori 1nangara
2iezno 2osall 2yaviyani_atoll 1o_cong 2a 3lpara 2ba 3ernador_galvez 3i_aymag 4chettipalayam 3owen 2dalming 3ean
4froy 4rich 3hra 3manchester 3shill 4tone 2eteborg 8q 2h_djiboua 3adi 4na 2iania 4s 2jra 2kak 2l_gol 3a_gokarannath
3borne 3cuk 3d_coast 4en 6_bay 8each 7grove 7point 7square 5rs_green 3estan 3spie 2ma 3be 5_state 4ong 3ez_palacio
2naives 3bad_e_kavus 3da_city 5l 5r 4ia 3gchangling 4guan 4ju 4yi 4zhuling 2oburrum 3dmayes 4na 4wick 5ood 4year
3gong 3le 4wa 6_beach 3ndiwindi 4ellabah 3seberry_hill 4nargh 4trey 2palganj 3pingen 2rakhpur 4nboy_district 3don
6_park 6vale 3e 4bridge 4y 3gan 4ol 3ing 6_by_sea 3j_county 4e 3leston_on_sea 4itz 3no_altaysk 6badakhshan 3ogorszag
4kan 4ntalo 3seinon 3t 3zow_wielkopolski 2saba 3berton 3field 4ord 6th 3hogawara 3nells 3port 3sops_green 3tivar
2teborg 7q 5urg 4mburgo 4nba 6urg 3ham 4embourg 5nburg 4oburgum 3land 3nburg 3tenborg 4ingen 2uda 4hurst 3lburn 4ds
3rock 2vernador_valadares 6orate 3i_altai_province 5sumber 4lon 2wanbrae 3rie 6_junction 2xhill 2ya 4ng_si 3cay
3erkata 3gol_rayon 1raaff_reinet 3bouw 3cemere 5ville 4ia 3d 4_skopje 4sko 3ekenland 3fton 3ham 6stown 3iguenamanagh
4kija 4n 3nada 7_department 4by 4d_anse_mahe 9e_praslin 6bahama 8nk 8ssa_county 9sam 6cay 7entre 6est 6falls_windsor
7orks 6gedeh_county 6island 6junction 6kru_county 6port 7rairie 6rapids 5e_cache 8omore 7digue 7prairie 4ge 6_hill
7over_sands 6mouth 4ivicus 4ma_province 4ollers 4tham 5on 6wn_on_spey 4ville 3o_de_murviedro 3pevine 4penhall 3smere
4sington 3vata 7i 4elbourg 5nhurst 5send 3y 4s 5_point 5hott 3z 4hdanka 2cija 3ka 2easby 4t_amwell 7yton 6bardfield
9ford 9ton 7edwyn 8ntley 7ookham 6chesterford 7orby 6dunmow 6eccleston 6falls 6glen 7onerby 7ransden 6hanwood 8rwood
8ywood 7orkesley 9wood 8ughton 6leighs 6malvern 8rton 7issenden 6paxton 6sankey 6torrington 6wakering 8ldingfield
7yrley 6yarmouth 7eldham 5er_accra 8lakeburn 9ondon 8napanee 9oida 8poland 8sudbury 3ce 4ia 4ja 4ko 3ece 4ley 4n_bay
6island 6point 6valley 5acre 9s 5bank 6urgh 5field 9d_park 9ds 6ord 5hill 9s 7the 5island 5mount 5ock 5sboro 9ough
6lopes 6tone 5vale 6ille 5way 6ell_point 6ich 7th 6ood 9_coxwell 4r 5ton 3gory_hills 3ifswald 3kland 3nada_north 6e
6ines_parish 4fell 4land 8e 8ia 9ja 4oble 3sford 4ham 4ik 3ta 4na 3venbroich 6macher 3y_lynn 4abbey 4mouth 4stanes
6ones 4town 2iechenland 4kenland 5ija 3ffin 6th 3methorpe 4sby 5haw 5ton 3sons 4ton 2odnenskaya 3enland 9a 9ia 3gol
3nant 4ingen 4land 7ti 4sko 3ombridge 4nimaa 3s_islet 4e_vale 4seto 5zschocher 3uville 3ve 5dale 5send 3znyy
2udziadz 3ndisburgh 4thal 3usia 3zia 5e 5ja 5nsko 4ja 1tbwrg 1ua 3cara 3dalajara 9ra_de_buga 6canal_province 6upa 8e
4eloupe 6upa 3iba 4nia_department 4ra 3leguaychu 3ma 5s 4uchil 3nabacoa 5caste_province 5juato 5mbi 5re 4gdong 5shui
5xi 5yuan 5zhou 4hu 4ica 4kou 4shan 4tanamo 9o_province 4yin 4zhuang 3rapari 6uava 5tingueta 4da 4enas 4ico 4uja
5lhos 3save 4dualito 3temala 9_city 4ire 3viare_department 3yama 5na_francesa 6illa 5quil 5s 4nabo 2bkin 2cheng
7_chengguanzhen 2divada 4yatham 3ur 2eckedou 3lma 5im 7_oued_noun 4ph 3ra 4cif 4nesey 4rero 2iana 6_francesa 3beroua
3der 4imaka 4onia_montecelio 3gang 4ue 5into 3lden_sutton 5ford 9_west 5wood 4in 4sfield 3ne 5_bissau 6equatorial
5a_bisau 7ecuatorial 8quatoriale 5e 6_bissau 7equatoriale 6a 7_bissau 8ecuatoriala 5s 3ping 3ra_de_melena 4en
3sborough 4eley 3xi 3yang 3zhou 2jana 6_francuska 4r_khan 5at 3ranwala 5t 2kovo 2lariya 3barga 4ene_municipality
3f_province 4port 4view_heights 3gong 3i 4n 4ston 3lane 4iver 3marrad 3u 2mdale 3i 3mersbach 3ushane_province 2na
4_yala 4n 3balanya 3dagai 5roo 3ey_afrika 6kore 6sudan 3gahlin 4oren_merter 3ma 3n 4edah 5ss 4islake 3po 3san
3takal_junction 4ur 3ungsitoli 2ozhen 2rabo 3cistan 3gaon 3i_si 4a 3upi 2sau 3hikawa 4u 3inje_municipality 3ong
3tavo_adolfo_madero 2tersloh 2wahati 2yana_francese 9anceza 5e 6_francaise 3ong 3ra 3uan 1vadelup 8a 3jana 3m
3temala 2ineja 7_bisau 9isava 9issau 1wadar 4elupa 3lior 3ndalan 4gju 5myeong 3temala 2eedore 3lup 3ru 2inea
6_bissau 7rownikowa 2ynedd 4neville 1yanpur 2eonggi_do 6ju 6san_si 9gbuk_do 9gnam_do 2mea 5_bay 3pie 2oda 3r
4_moson_sopron 2ula 3mri 2vaskyla 1ǝncǝ 0ha_dong 3long 3tinh_province 2a 3_alifu_atholhu 4dhaalu_atholhu 3pai 3rlem
2bbouch 3erfield 3iganj 4kino 3ra 2chinohe 5oji 3ienda_heights 9santa_fe 4qabul 3kett 4ham 7_west 4leton 2dano
3denham 4ington 4on 3ejia 4ra 3field 3jer_lamis 3leigh 5y 6_wood 4ow 3spen 4ton 2eju 3lsingborg 3meenlinna 5nlidn
2far_al_batin 3izabad 2gatna 3en 3ley 3onoy 2hndorf 2i_duong 4phong 3cheng 3fa 3kou 3lar 5siki 4ey 4in 4sham 4un
3men 3na 5n 5ult 4ing 3para 4hong 3tis 3zhou 2jdina 4u_bihar 3iawa 4pur 3jah 3o 2kkari 3odate 2labja 3dia 4wani 3e
4_barns 4kulani 4sowen 5worth 3fway_bush 3iburton_village 4fax 4sahar 3kirk 3lam 5nd 4e_saale 5tt_cove 5umseutadeu
4glen 4ing 4ow 4s_creek 6head 3mostadium 4s_ta 5tad 8as 3singborg 4tead 4well 3ton 4whistle 3wan 2ma 4da 6n
7_province 4h 4kita 4matsu 4r 3ble_le_rice 6ton 4urg 7_mitte 8nord 3den 3eenlinna 4ldon_hill 5n 4nlidn 4rsley 3gyong
3hung 3i 4lton 8_city 9east 9hill 9west 3lyn_heights 7terrace 3m 4a_bouziane 5met 4ond 7_park 7ville 3oa 5_amerika
3pshire 5tead 9_gardens 4ton 7_east 8in_arden 8park 8wick 3stad 3ura 6na 3ynlyna 3za 2na_marino 4m 5aki 4u_am_main
3ceville 4heng 5uan 3da 5n 4cross 3ekari 3feng 4ord 3gu 4zhou 3inge 3jia 3mer_springs 3na 5n 6s 4ibal 4o 5ver 3oi
4ver 3si 4lope 3ting 4sport 3umangarh 3wood 5rth 3yin_chengguanzhen 4u 5an 3zhong 2ora 2pani 3bae 3py_valley 3ton
3ur 2rar 5e 5i 3bin 4our_breton 8island 4urg 6y 3da_khas 5p_region 4enberg 4ingstone 4oi 4wick_village 3efield
3geysa 4hita_county 3idwar 4har 4pur 4sh 3jumaa 3lan 5xton 4ech 5m 5sden 6ton 4ingen 7ton 4ow 3old_wood 3penden 4ole
3rietsham 5ngay 7ton 9n_park 5s_park 6dale 6mith 6on 8burg 6ton 8wn 4ogate 5ld 5w 3sin 4ton 3tford 4hill 4lebury
6pool 6y 7_wintney 4shill 5town 4well 3umusutaddo 4nabad 3vey 4ington 3well 4ich 3yana 2sanpur 3hima 6oto 3ilpur
3kovo 3lemere 4ingden 7field 3sall_grove 5n 4elt 4i_messaoud 4ocks 3tings 3uda 3well 2t_yai 3aitai 4y 3field 8_heath
9peverel 3herleigh 6n 6sage 4ras 3illo 3o_herena 5matene 7yor_province 5pateremi 6iere_mikerona 5ruhia 4gaya_honcho
4hobei 3sukaichi 3tingen 4on 6_vale 2ughley 5ton_green 3moana 3raki 4i_arapia 3t_katanga 5lomami 5mbomou 5ogooue
5uele 4e_kotto 5rive 4s_bassins 6de_france 2vana 5t 3eli_lakha 4n 4rfordwest 5hill 5i 6gg 3irov 3re_saint_pierre
2waii 4lli 4rden 4ssa 3era 3ick 3ker 5sbury 4hurst 4inge 4s_nest 3orth 3sh_isa 3thorn 8_east 9south 8dale 9ene 8e
2xby 3ey 2y 3_point 4river 3borough 3dock 5n_bridge 3es 5_subdivision 3field 3le 4ing_island 3market 3ward 7s_heath
2zaribagh 3el_grove 5brook 5wood_north 9_park 3lerigg 1eacham 3d_of_muir 4corn 4ingley 3ge 3lesville 4ing 4y 3nor
3rd_en_mcdonaldeilanden 6ja_mcdonaldinsaaret 6og_mcdonaldoyene 6und_mcdonaldinseln 5on_och_mcdonaldoarna 4st
3th_and_reach 5cote 5erton 5field 5mont 5ridge 5wood 4ley 4on_chapel 3vitree 2ba 3burn 3den_bridge 3ei 4rsham 3i
3ron 2chi 4uan 3kenberg 4ington 4mondwike 3torville 3un 2ddon_greta 3e 3ge_end 3on 5g 2erlen 2fei 2gang 3uan 2idberg
4e 5lberg 9g_heights 9g_west 3ghington 3he 3kere 3lbron 8n 4ongjiang 4sinci 3no 3shan 2jiang 2kinan 2la_province
4sinki 3ena 6_valley 5sburgh 6vale 7ille 3idon 3laby 5s 4ersdorf 4ifield 5n 3mand 4ond 4sley 3ong 3sby 4enkis
4ingboli 9rg 9rgas 9rgi 9rja 7fors 7i 8a 7jaborg 7ki 7oburgum 6ki 8s 8um 7o 7y 6qui 9a 4set 4ton 2meika 4l_hempstead
4nlina 8na 4t 3ingbrough 6ford_grey 3mant 3pstead 3sby 4worth 3yock 2nan 3dala 4erson 9ville 4ra 5ina 3ekara 3field
3gbei 4elo 4oed 4shan 6ui 4yang 3ley_beach 9ach_south 8rook 7in_arden 7on_thames 4ow 3nenman 3rietta 4y_farm
3stridge 3tiy 4y 2pingjie 3o 3u 2rat 3bert 3ceg_novi 3dsmans_cove 3edia_province 4ford 8shire 4taunga 3ford
3itage_park 9pointe 3manas_mirabal 6us 4it_park 6age 4osillo 3nals 4e 5_bay 6hill 4ing 3oica_caborca 8guaymas
8matamoros 8zitacuaro 4uxville 3rera_province 3stmonceux 5on 3ten 4ford 8shire 3ushinbori 8ki 3vey_bay 3zliya
2speria 3se 3ton 3wall 2tauda 3hersett 3ton_le_hole 2ves_county 2wett 2xham 2yfield 3sham 3uan 3wood 2ze 3hou 3uo
1hohho_region 1ialeah 2baldstow 2cks_bay 2daka 4lgo 2etzing 2gashi_osaka 7murayama 3gins 3h_barnet 6entham 6lantyre
5etherley 5halden 8stow 5legh 7vel 5ongar 5park_north 9_swansea 6eak 6oint 6rairie 5river 5valleyfield 5wycombe
4am_ferrers 6s_park 4bridge 5ury 4clere 4ett 4fields 4gate 8_hill 4land 8_creek 9papua 9park 8s_ranch 5ey 4ton 6wn
4vale 4worth 2ina 3raan 3umaa 2kari 3one 2lbert 3den 5sheim 3l 4_top 4arys 4bank 4crest 9_village 4ingdon 4man
4sboro 9ugh 5dale 5ide 5ton 4vue 3ton 3versum 2machal_pradesh 4tnagar 3eji 3imachi 2ncesti 4hinbrook 5ley_wood 4kley
3daun 4head 4istan 4ley 4marsh_island 4upur 3ganghat 5poa 4ham 4oli 3o 3thada 4on 2rakata 4tsuka 3i 4_ranaka 4a 4yur
3osaki 5hima 3upia 3vatistan 3waun 2sar 3paania 3ton 3zpania 2ta 4chi 7_naka 3chin 3i_matene 1lsnky 4qy 3yngbwrg
6hbwrgh 5ky 5qy 2uhluwe 1mas_cerberus 2nlynh 1oa_binh 2bart 6_city_centre 6ville 3oken 2cking 4ley 7_heath
4wold_cum_wilton 2d_hasharon 3desdon 3gson_vale 3h_ech_chargi 6l_gharbi 2ffman_estates 3u 2hhot 3oe 2kitika 3kaido
3owhitu 2landia 6sko 3beach 5ck 4orn 4rook 3den_hill 5r 3guin 7_province 3land 7_karib_terseg 8park 9ark_west 7a 7ia
4ingworth 4oway 8s_beach 4y 5well 6ood 3mes_chapel 6ville 4firth 4ia 4view 4wood 3on 3royd 3sworthy 3t 4on_le_clay
4ze 3yhead 4town 4well 8_green 5ood 2ma_bay_county 4i 3e_hill 4bush 8_west 4dale 4stead 3s 3yel 6_voblasc 2ncho
3durasa 3eybourne 3g_kong 4arije 4gang 4he 4ipua_haina 4jiang 4kong_kiinan_erityishallintoalue 9kkt 9oao_ciny 9sar
9sar_kina 9zao_ciny 8i_erihalduspiirkond 4qiao 4rie 4seong 4won 3iara 4ton 3jo 3olulu 4nga_o_amerika 4tura 2o
3fddorp 3k 4_norton 3le 3n_hay 3pstad 3rn 3ver 2pe 4_island 5town 5vale 8ley 4man 3pers_crossing 3ton 2rad_zhodzina
4m 4na 5o 3bury 3ia 4shni_plavni 4zonte 3ley 4ivka 3migueros 4ozgan 3nby_island 4castle 5hurch 4epayne 4ing
7sea_park 4sby 7_heights 5ea 6y 3owakia 5inia 3rabridge 3sens 4ford 7th 4ham 4ley 7_park 4monden 4t 5ed_keynes
3ta_guinardo 5leza 4olandia 5n 6_kirby 3vaatia 5tija 6orszag 3wich 2shangabad 4iarpur 3pet 3ur 2tan 3ham_heights
2uaphan 3ghton 8_bay 9conquest 9le_spring 3mt_el_souk 3nde 4slow 3ston 3zhen 2vd 3e 4ton 2ward 6_springs 3den 3ick
3land_island 4ong 3rah 3th 3wood 2xton_park 2ylake 5nd_nether 1pa_an 1radec_kralove 9alove_region 2odna 2vaska 4tska
1sinchu 1ua_hin 3cheng 5o 3dian 3ibei 4cheng 4dian 4hua 4nan 4yang 5uan_chengguanzhen 3lien_city 4ong 3mantla 4bo
3nan 4cavelica 6yo 4ggang 5hua 5lou 5mei 5nihe 5pi 5shan 7i 5zhou 4kou 4ren 4uco 7_department 3ral 5z 3shan
3uchinango 3yin 3zhou 2bei 3li 2cknall 2ddersfield 4inge 3son 6_bay 2e 3huetenango 3lva 3sca 2gh_town 4enden 5s
6dale 3li 3o 3uo 2icheng 3la 5_department 4ong 3nan 3qu 3tene 5rangi 3xing 4quilucan 3zhou 2jra_shah_muqim 2lan
5_ergi 3me 2macao 4rie 3ber_heights_westmount 7summit 6mede 6ston 4oldt 3en 4wood_cedarvale 3pty_doo 2nan 3chun
3edoara 9_county 3g_yen_province 4erford 4nam 4ria 3manby 3stanton 3ters_hill 7ville 6view 4field_heights 4ingdale
8on 7ton_beach 9n_park 4ley 5y 4spill 5ville 3wick 2ocheng 3nville 3qiu_chengguanzhen 2rdon 3ghada 3iname 3lingham
4stone_park 3on_east 3st 5bridge 5pierpoint 5ville 9e_grove 3th 2sbands_bosworth 3hitai 2tane 5g 2yen_lam_ha 3ton
2zhou 1vidovre 1wado 3nghae 3seong_si 4un 3won 1yde 4_heath 5park 4rabad 2eres 3san 6_dong 2lsynky 2ogo 2the 2uga
0ialomita_county 4veni 2si 4_county 1badan 3gue 3raki 4ra 2b 3_governorate 3enburen 2irite 2ri 2shaway 3tock 1ca 3ra
2halkaranji 3eon_si 3ihara 4nomiya 6seki 1da_timor 4virumaa 3h 4o 5_falls 3lia 3nre 3ppadi 2e 2fu 2ku 2lib 1emen
2rland 2vure 1fo 2rane 1ga 3rassu 3unija 2bara_odo 3o_ora 5ukwu 4ho 2dir 2ede_ekiti 2loolik 2uatu 1haraira 2iala 3pa
2orombe 1ida 2rimaa 2srael 2zuka 1jebu_igbo 6jesa 6ode 3ro_ekiti 2sland 2ui 3w_district 1keda 3ja 3re_ekiti 2ire 4un
2om 4a 3t_ekpene 2san 1l_birgu 3fgura 4ontana 3gudja 4zira 3kalkara 3marsa 4ellieħa 4osta 4unxar 3qala 4rendi
3ħamrun 2a_orangun 3gan 3m 4_province 2chester 2e_bouvet 4christmas 4de_france 7man 6s_chenes 4norfolk
4perseverance_i 9verance_ii 3bo 3s_aland 5caimans 6ocos 7ok 5du_vent 5eparses 5feroe 5malouines 7rshall 5pitcairn
5salomon 5vierges_britanniques 4a 2fov 3racombe 2ha_bouvet 5christmas 5de_man 5norfolk 4s_aland 6cayman
7ocos_keeling 8ok 6faroe 6malvinas 8rshall 6pitcairn 6salomao 6virgens_americanas 9gens_britanicas 3eus 2igan 6_city
3nden 4ge 3on 4upoli 2kal 3eston 3ley 2lawong 3inois 4zi 2minster 2o 3bu 3cos 3ilo 3rin 2uka 1maichi 3richo_ko
2babura 2elda 3ne 3reti 2isli 2mingham 2o_state 3la 2peratriz 3hal 2us 1n_guezzam 3nadur 5xxar 3salah 2a 3gua 3la
3rajan 4uwa 3zawa 2ce_in_makerfield 3heon 4innan 5ri 4ture 2da_silase 4iatuba 3e 4nted_head 4pendence 9ncia 3i
4an_head 6a 7polis 4e 5n 4ja 4o 3oneesia 6sie 9n 6zia 8ja 7ja 4oroopilly 4re 3ramayu 2egol 2ga 4_vald 4testone
3ersoll 3ham 3le_farm 5burn 6y_greenhow 5ton 5wood 3o 4ldmells 5stadt 3raj_bazar 5ve 3ushetiya_republic 2hambane
9_province 2ia 3sa 4hcrone 3tonihia 2kberrow 3oo 2naloo 3er_mongolia 5leithen 4s_park 3isfail 9_estate 6il 3landet
3sbruck 2owroclaw 2sch 3ula_bouvet 7christmas 7man 7norfolk 5ele_aland 9caraibe_olandeze 9cayman 9cocos_keeling
9cook 9falkland 9feroe 9marshall 9pitcairn 9solomon 9virgine_americane 9virgine_britanice 2tia 4buca_department
2uvik 3yama 2verbervie 5cargill 6lyde 5ell 5gordon 7wrie 5keithing 6ip 5leigh 6och 5may 8_park 6ere 5ness 5urie 2zai
1oannina 2la 2na 3e 3ian_islands 3view 2rdania 2wa 4_city 1patinga 2iales 2oh 3juca 3ti 2plepen 2swich 1qaluit
2uique 4tos 1r_rabat 2aak 4n 3k 4a 5s 4leion 3na 5s 4shahr 3puato 3que 2bid 2chester 2ece 2iga_city 3ja 3nga 2kutsk
7_oblast 2lam 4nd 6a 6e 6ia 5ti 2onbark 5ridge 4dequoit 4ville 3quois_falls 3rszag 2pin 2ricana 2ska 4o
2thlingborough 2uma 3n 2vine 6stown 5g 6_park 6ton 2ymple 1s_siggiewi 4wieqi 2aacs 3bel 6_province 6a 6la_plains
3haya 2e 3_ekiti 3hara 3rlohn 3saki 2fahan 4ra 2hikari 6wa 4m 5bay 4nomaki 4oka 3urdi 2ieke 3olo_county 3ro
2kenderun 3itim 2la 4_bouvet 5de_man 8navidad 5norfolk 4mabad 5pur 4nd_bay 7harbour 6a 6e 6ia 7ja 6s 5ti 4s_aland
6caiman 7ocos 8ok 6feroe 6malvinas 8rshall 6pitcairn 6salomon 6virgenes_britanicas 3e_of_arran 8bute 8cumbrae 8islay
8lewis 8mull 8wight 4ham 4s_of_scilly 4worth 3ington 2mailia 4yilli_district 2na 2o_britannia 3la_bouvet 6christmas
6di_man 6norfolk 4e_aland 6cayman 7ocos_keeling 8ok 6faer_oer 8lkland 6marianne_settentrionali 9shall 6pitcairn
6salomone 6vergini_americane 9gini_britanniche 2panija 5ya 4rta 2raele 4il 2sia 3y_les_moulineaux 4k_kul 2tanbul
4ravshan 3ria 2vec 3icre 1ta 3_timor 3alia 3baiana 4ira 4orai 4una 3coatiara 3guai 5i 3ituba 3jai 4uba 3lie 6n 5ja
4ya 3mi 3nhaem 3pecerica_da_serra 5runa 5tinga 8inga 5va 6i 4ipoca 5ra 4ua 3quaquecetuba 3ria 4si 3sy 3tiba 3ugua
4na 3valta 2o 3man 2u 3iutaba 3mbiara 3ri 1unecopia 1vanhoe 7_east 4o_frankivsk 5vo 7_oblast 6skoye 4teyevka 2er
4_heath 2inghoe 2oorkust 2ry_sur_seine 2ybridge 1wade 3ki 4uni 3mizawa 3ta 4e 4suki 2ibeseukwille 2o 1x_xagħra
4ewkija 4għajra 2elles 2tapa_zihuatanejo 6luca 2worth 1yelgava 1z_zebbug 5jtun 4urrieq 2a 3bal_department 2hevsk
2land 6a 2mail 4ylovo 3ir 5_province 4t 2rael 6a 6is 2tacalco 4palapa 2umi 5otsu 5sano 4o 0jaapan 2bal_al_gharbi
5pur 5ya 4t_island 3iru 3lah 3oatao 8_dos_guararapes 4ticabal 3rayil 2cana 4rei 3kass_flat 4son 7_heights 7ville
3mel 3obabad 5s_well 4na_de_plancarte 2en 2ffa 4na 2gadhri 3dalpur 3raon 3tial 3uariuna 4ey_grande 2hanabad 5girabad
2igaon 3pur 3salmer 2karta 2lai_nur 4l_abad 9d_region 5abad 5pur_jattan 4ndhar 4pa 4un 3gaon 3ilabad 4ngo 4sco 3na
3paiguri 3uit_atoll 2maica 5ka 5que 4jka 4lpur 3beroo 4i 5_city 4oree_heights 3estown 3isontown 3jamal 3khandi 3mu
5_and_kashmir 3nagar 3pur 3shedpur 3tland 3ui 4ria 2n_juc 4kempdorp 4mayen 3akpur 4uba 3dakot 4ira 4owae 3e_brook
4sville 3gipur 3in 3ja 3nali 2ora 2pana 5i 4o 3ekrom 4ri 3on 5ia 6ja 5ska 7o 5ya 2ragua_do_sul 4nwala 3dim_paulista
3o 4slaw 3rahdale 4ow 3vamaa 4is 6_island 2sper 6_park_lodge 3trzebie_zdroj 3z_nagykun_szolnok 2tai 4ni 3ibarang
4roto 4wangi 2u 3nkaledonija 4pur 4zelande 2va 2worzno 2yapura 3uya 2zan_region 1eannette 2dburgh 3dah 2emen 2ga
3unovce 2ju_city 5do 2kabpils_municipality 2lenia_gora 3gava 7_municipality 5wa 2mber 3en 5a 6s 3o_island 2na
3ceping 3douba 8_governorate 3sen 5pinga 4heping 2ollabuk_do 6nam_do 3ngeup 4ju 2para 2quie 2rash 3emie 3ilderie
3ome 3rabomberra 3sey_city 3usalem 2smond 3sore 3us_maria 7enendez 2tpur 3te 2vle 2wells 3ish_autonomous_oblast
2ypore 1halawar 3ng_sadr 4si 3rgram 4ia 4khand 4suguda 2elum 2umri_telaiya 3njhunun 1i_parana 2agedaqi 3musi 3nchang
4gbei 5kou 5men 5shan 6u 5uang 5xi 5yan 6in 6ou 5zhuang 4shui 3ohe 4jiang 4zhou 5uo 3shan 3wang 3xing 3yue 5guan 3zi
2dong 2ehu 3shi 5ou 3tou 3xiu 3yang 2gawa_state 2hlava 3oafricka_republika 2jel 3iang 4ga 2lin 3liby 2mboomba 3eta
3ma 3o 2nan 3chang 5eng 3d 4abyne 5lee 4era 4ing 3gdezhen 4gou 4hong 4ili 4ling 4men 4zhi 6ou 3hua 3ing 3ja 4i 5ang
3niu 3otega 8_department 3sha 5i 3xiang 3zhong 6u 2shu 5i 2tai 3ra 2udian 3jiang 3pu 3quan 3tai 4epec 2veskile
2waka_province 2xi 4an 2yuan 2zan 3hou 3ni_korea 6sudan 3zakh_region 5x 1jonchjoping 2uvjaskjulja 1oao_monlevade
5pessoa 2bstown 2dhpur 2ehnsu 7_osh 7u 3nkoeping 9ngs_kommuna 4su 6u 7_linn 3tsu 2gensu 4vamaa 2hannesburg 3ns_creek
5on_city 5ton 8_atoll 8e 7wn 3or 5_bahru 2inville 2liet 6te 4mont 3o 2mbang 2na 3chehping 3esboro 3glei 3koping
9s_kommuna 3quiere 3siopingas 2ondalup 6nna 2plin 2ra 3daania 5n 6_springs 6ia 7e 8n 7ja 6sko 7town 3ebru 3hat 2s
3e_c_paz 3hua 3lin 2ulusaar 9i 3nieh 2vensuu 2wzjan 2ymontop 3ner 3pur_hat 2zsefvaros 1uan_diaz 4a_diaz
3zeiro_do_norte 2ba 3ilee_pocket 2chitan_de_zaragoza 2dgeford 3ita 2egang 3vaeskuelae 2igalpa 3z_de_fora 2juy
2latten 3eoen 3iaca 3on 2nagadh 3cos 4tion_area 9hill 9village 3diai 3ee 3gtine_karalyste 8s_valstijos
7iai_arabu_emyratai 3in 3lian 3ortoun 2odkalnija 2piter 2ra 3by 3ien_bay 3mala 2tiapa 2vaskula 3eskiule 3jaskjulja
2ye 2zna_afrika 6korea 9eja 4i_sudan 4oafricka_republika 9ska_republika 4y_sudan 1waneng 2nkwmng 2tnbrj 2ynsw
1yvaeskylae 9ae_linn 4skyla 9_linn 2waskyla 0ka_er_ma 2afu_atoll 3imaneilanden 3pverdie 3rina 2banjahe 5kalan
4rdino_balkariya_republic 3basin 3inda 4rwala 3overde 3ul 3we 2chin_state 2dayanallur 3i 4na 4ri 5li 4yivka 3oma
3ugli 4na 6_state 2edi 3song 2fanchan 3frine 3r_ad_dawwar 6sh_shaykh 6z_zayyat 5el_sheikh 2ga 4_bandoro 4wa 3era
3oro 4shima 2haroa 3ibah 3ramanmaras 4iz 4or_pakka 3ta 2i 3ana 4poi 3feng 3hua 3li 3maninseln 7saared 6u_salas 9alos
3nuu 3rana 4ouan 3serslautern 3thal 4i 4ong 3yuan 3zuka 2jiado_county 3man_szigetek 6ie_ostrovy 6ji_otoki
6ske_ostrovy 8i_otoci 6y 2kamega 8_county 5igahara 3egawa 3heti 3inada 3ogawacho_honmachi 2lamaria 6ssery 6ta 6zoo
5unda 4sin 3bajar 5r 6ri 3edu_sala 4en 4mie 3goorlie 3ibo_poblacion 4mantan 5na 4nga 5ingrad 9ad_oblast 7skiy 4sz
4yaganj 3kie 3lakurichi 5ngur 5roo 4inn 5sta 5thea 3maleu 5r 6_kommuna 7stad 6a 7s 6i 4unai 4ykiya_republic 3na
3orama 3seukeulona 6tadeu 3uga 6_oblast 4lushi 4sh 3yan 6i 2maka 5ura 4lia 4potia 4reddi 5hati 5una 3bah 5lda_east
9west 5r 4ocya 5dja 6scha 7ja 6za 7sa 3chatka 3ensk_shakhtinskiy 4oka 4roen 5un 7a 8s 7ga 3ianets_podilskyi 4fukuoka
4gyo_ku 4na 4renjaku 3loops 3oke 4pia 3pala 4haeng_phet 4ong_baharu_balakong 8cham 9hhnang 8dungun 8speu_province
8thom 5t 4ung_baru_subang 9ukit_baharu 8sungai_ara 3sack 3thi 3yanske 5ran 4shin 2na 4da 4gawa 4hooka 4nga 4sin 4ta
4yannur 4zawa 3be 3chanaburi 5ipuram 5rapara 3dahar 5l 4hkot 4i 4os 4ukur 4y 3em 3gar 6oo_flat 9ground 9point 5var
4ding 4gye 4won_do 3i 4_keli 4mbla 3jia 3kan 6_region 6halli 3nangad 5uj 4ur 3o 4_state 4ya 3pur 3sas 6_city 4k
3ta_hame 4urk 3uma 3wal 2ohsiung 3lack 2p_verde 3enguria 3isa 3ona 4oka 4svar 3p_verde 3unda 4rthala 4skasing 3verdy
2ra 4baglar 6r 5uk 7_province 4chayevo_cherkesiya_republic 6i 5sony_sziget 4d 5ag 4ganda 8y 4ikal 6kudi 4j 4k
5a_bays 6lpakstan 5ol 4lee 4ma 6n 6y 4na_downs 5ganom 6sembung 5ja 4piana_horana 4s_region 4tsu 4uli 4wara
4yip_hollandasi 3bala 4inci 3dinya 4zhali 3eela 4lia 3gazstan 3i 4bian_alankomaat 6sche_niederlande 7k_nederland
8a_nederlanderna 5ske_holandsko 9nizozemsko 5u_nyderlandai 4ibi_madalmaad 4mganj 5nagar 4ong 4pski_otoci_nizozemske
4ya 3lovac 4sakrona 5hth 5krona 7una 7wna 5ruhe 5ta 7d 8as 8e 3nal 6i_pradesh 5taka 4up 3ol_bagh 4ri 5o 3ratha
4inyup 3s 4_province 3tasura 3uah 4maru_shi 5ba 4r 4sukuruna 6tado 3vina 3war 2sachstan 4hstan 4i 5_central 4khstan
4ma 4oka 4ragod 3ese 3ganj 3hgar 4ihara 9_shi 5ma_shi 5pur 5wa 7zaki 4mar 3ihan 3ongo 3piysk 3sala 4el 5rine
9_governorate 3tamonu 3ugai 4kabe 4r 2tanning 4r 5a 6s 5ina_sofia 4tanga 4vi 3erini 3herine 9_east 9_south 4leen
4mandu 4u 3i 4har 4kati 4ola 3o 4omba 4ri_shi 4wice 4ya 3ras 3sina 7_state 4uta 3umba 4nayaka 3y 2ukapakapa 3nas
3ra_namoda 2vadarci 4kli 4la 5i 4ngo_east 8west 2wagoe 5uchi 4kawa 4lu 4na 5ishi 4saki 3erau 3it 3m_umbu 3thoung
3ungan 2ya 4h_state 4ngel 5kulam 5za 3es 3in_state 3seri 2zachstan 9nas 4hstan 9a 6ztan 4jistan 4khstan 5istan 5stan
4n 3erun 3o 1e_te_ka 3wo_la 2adby 4y 3lba 3rneys_spring 5s 4sley 2bbi 3ili_governorate 3omas 2cskemet 2dah 3ington
4ri 3ougou 3ron 3ungwaru 7uni 3zierzyn_kozle 2elby 4e 5sdale_eglinton_west 4ung 3nia 2f_governorate 3fi 2gworth
2ighley 3lor 6_downs 7east 7lodge 7park 3raville 3th 2kava 2lantan 3burn 3et_timor 3ibia 3loe 4s 4yville 9e_ridge
3mscott 3owna 3sall 4o 5n 4ton 3ty 3vedon 8_hatch 4in_grove 2merovo 3nay 3o 3ps_creek 5ey 5ton 8_hardwick
4ten_allgau 3sing 2na 3dal 6e_lakes 6l 5ri 3ema 3g_tung 3hardt 3ia 4ja 4lworth 4ngau 4tra 3ley 3mare 4ore 7_hills
3nedy_park 7s_bush 5r 5wick 4ington 4oway 3ora 4sha 3sal_green 4ington 9n_chinatown 9n_gardens 9n_grove 9n_park
4worth 3t 4_town 4au 4hurst 4on 4stown 4ucky 4ville 4wood 3wick 2p 3anjen 3erra 3nock 2rala 4ng 4tsini 3ch 3en 5ata
4sley 3guelen 3icho_county 4keri 3man 6shah 9h_province 4it 3pen 3robert 3sbrook 3tosono 3yneia 2sgrave 3hod
3k_aafrika_vabariik 4i_afrikan_tasavalta 3singland 3wick 7_ridge 2ttering 4on 2w 3_east 3arra_beach 3dale 2yingham
3nsham 3sborough 3worth 1far_saba 1galagadi 3tleng 1ha_lmar 3barovsk 9k_vtoroy 3dki 3gaul 4rachhari 3kasiya_republic
3landrion 4ifah_a_city 5s 4khal 4mstad 3mbhat 4eehnlinna 5nlinna 4gaon 4is_mushait 4mam 5ouane_province 3n_yunis
4abad 4dallah 5wa 4h_hoa 4na 4pur 4ty_mansia 9nsiysk 3ragpur 4dah 4gone 4ian 4kiv 4toum 5syzk 3savyurt 4h 3tauli
4lon_province 3ya_mnandi 2elsingborg 9ori 7ki 4zinki 3menlina 4is_miliana 6set 3nchela 4ifra 3rson 2imki
2jameehnlinna 6nlinna 2long_luang 2melnytskyi 2obar 3jaly 5vend 3mas_region 4eyn 7i_shahr 3n_kaen 3poli 3rasan
8_province 4oshevo_mnevniki 4ramabad 7darreh 7shahr 3st 3uribga 3vsgol_province 3wst 4y 2rustalnyi 2ujand 3lm 4na
6_division 3rja 3shab 3zdar 4estan 2yber_pakhtunkhwa 1ialla 3ma 5_downs 4bu_county 3na_wiwi 3ra 2bris
3worth_harcourt 2chevo 2dal 4pawan 3brooke 3derminster 3lington 3man_park 3sgrove 3welly 2e_ntem 3l 4ce 2gali 3oma
2hikihi 2ina 2kitanga 3uyu 3wit 2laben_bay 3barchan 4eggan 4irnie 4urn 3cock 5ole 5y 4reggan 4ullen 3dare 3getty
3i_island 4fi_county 4manjaro 4s 3ju 3keel 5nny 3l 4aloe 5m 6arsh 5ra 6ney 9_heights 9_vale 4earn 5en 5ster 4orglin
4ucan 5mney 4ybegs 5leagh 3macanoge 6olm 5llock 5rnock 5urs 4ore 3osa 3pedder 3quade 3rea 4ush 3sby 4yth 7_south
3tamagh 3winning 4orth 2mberley 7y 4olton 3hae 3itsu 3pton 3ry 2n_kora 3a 3cardine 3dersley 4ia 4u 3eshma 4ton 3g
4_creek 4aroy 4horn 4isepp 4lake 8_west 6ssie 4man_reef 4s_beach 7ridge 6hill 6langley 6meadows 6park 6sutton
6worthy 5bridge 6ury 5clere 7iff 6ote 7urt 5ey_falls 5ford 5grove 5kerswell 7ttle 5land 6ey 5port 5teignton 6horpe
6on 8_bagpuize 9beach 9south_east 9upon_hull 9upon_thames 5ville 5way_south 6ells 6inford 6ood 9_park 4ton 4ussie 3i
4_ekuatoria 5pihao 4ja 3loss 5ugh 3negad 3okawa 3ross 3sale 4ealy_drinan 4hasa 3tbury 4ore 3vere 2ppa_ring 5x 4en
3ra 5s 3ushi 2rasao 4tpur 3by_muxloe 3cubbin 3dasah 3ghizistan 7stan 4isia 7stan 6tan 5zie 7ja 7stan 8ztan 6sko
7tana 4uistan 3ibatis 4hi 4khan 5kale 4nyaga_county 4pati 4shi 7ma 3k_sandall 4burton 5y 6_in_ashfield 7lonsdale
7stephen 6moorside 4caldy 5onnel 5udbright 4ham 4intilloch 4land 8_lake 6reli 5eatham 6es 5iston 4newton 4op 4uk
4wall 5ood 3ov 5_oblast 5o_chepetsk 6hrad 3rawee 4ibilli 5emuir 3sehir 3ton 6_in_lindsey 3undo 3wan 3yat_gat 4u
2sangani 4ran 6zu 3ela_voda 5evsk 3hanganj 8rh 4iwada 4organj 3i 4i 5_county 3lingbury 4ovodsk 3mayo 3pest 3simmee
3umu 6_county 2tahiroshima 4jska 4kami 5yushu 4le 4mi 4nagoya 3chener 3gum 3imat 3ui_county 3we 2upa 3rasao
2veton_park 3u 2ziltepe 3lyar 1ladno 3eng 3genfurt_am_worthersee 3ipeda 8_county 3ng 5enan 3ten 2einton 5zschocher
3mzig 3rksdorp 2imovsk 3n 4tsy 2mar 3r 2skrwna 2uang 1naphill 3resborough 2ebworth 2ighton 2ocklyon 3ttingley 3wle
4sley 3xfield 4ville 2utsford 2ysna 1o_peiyw 3samui 2banya 3e 3lenz 3ryn 2caeli 3h_bihar 4ani 4i 2dar 2eweit
2foridua 3u 2ga 4lym 4rah 7_bay 3i_state 3on_shahri 2h_kong 3at 3ima 6rama 3oro 2idu 2jonup 2ka 3omo 4sinseln 5oarna
6ve_ostrovy 7i_keelingovi_otoci 9otoki 6yene 5u_kilinga_salas 9lingo_salos 3shetau 4tad 3ubu_matsuki 6nji
4sz_keeling_szigetek 2lar 3da 4ing 3hapur 3kata 3lam 4egal 3n 3ombiya 5na 5yia 4nnawa 3pino 3umbia 7e 8n 7ja 3wezi
3yvan 2maki 4rom_esztergom 4tipoort 5su 3bolcha 3enda 7ntsky_aerodrom 3i 3oorid 4rai 5en 7e 6rna 5i 6t 5lar 5o
5u_salas 5y 3somolsk_on_amur 2n_tum 3an 3ch 5e 3gas_brazavilis 7kinsasa 4o_brazavil 9zavila 9zzaville 6dv 6kinihaha
9sasa 9shasa 6parawhe 6vabariik 5n_demokraattinen_tasavalta 7tasavalta 5ussi 3ibodom 4hi 4n 5i 3nagar 3osu 4top
3stanz 3tagora 3ya 3zska_demokraticka_republika 8republika 2o_wee_rup 3kossaared 9ret_keelingsaaret 3nawarra 4doola
4gal 3ralbyn 4ingal 3tingal 2pargaon 3enick 4ysk 3pal 4ies 3rivnica_krizevci 3uaranga 2ratla 3ba 3ce 5_county 3dofan
3ea_polnocna 9udniowa 5town 3fez 3gozstan 3hogo 3iyama 3la 3oatia 4it 4lev 4mopia 4nadal 4r 5a 4sten 3trijk 3u_kakoa
4mburra 3ydallos 2sai 3ciuszko_national_park 3hi 5gaya 3i 4ce 6_region 3ka 3on 5g 4va 6s 4wo 3rae 3ta_rika 5nay
5rika 6yka 4er 4i 5antynivka 4roma 8_oblast 3zalin 4ovo 2t_addu 4malik_barkhurdar 3a 4_bharu 5kinabalu 5tinggi 4ra
6_south 4yk 3divuara 3ikawatta 3k 4a 5_linn 5pura 4o 3las 4i 4ovka 3o_rika 4ka 4r 3ri 3tagudem 5yam 2ubolla 3dougou
3ffo 3ilou 3likoro 3ngou 3opio 3sseri 3tiala 3vol 6a 7_linn 4uora 2vel 3ilpatti 3rov 3vola 2weit 3loon 7_city 2zan
3ep_afrikai_koztarsasag 4yevo 3hikode 4ukhovo 1palime 1raaifontein 3bi 3gujevac 3kow 3ljevo 3matorsk 3pina_zagorje
3slava_municipality 4naya_glinka 5odar 9_krai 6gorsk 7vargeisky 6kamensk 9sk 6turinsk 6yarsk 9sk_krai 3thum_baen 4ie
4ovo 2eeka 3feld 3ikka 3menchuk 3sek 3uzberg 2ibi 3el 4vija 3shnagiri 7nagar 4tiansand 3va_palanka 4ogashtani 2oatia
6e 7n 6ja 3noberg 3onstad 3potkin 4yvnytskyy 2ugersdorp 3isfontein 3sevac 4hevo 2ymsk 3vyy_rih 1sar_chellala
5el_boukhari 8kebir 2tovo 1uacjok 3la_lumpur 6selangor 6terengganu 3ma 3ndian 4tan 3tamara 5rupa 2ba 2chaman 4ing
2damatsu 3us 2fa 2gluktuk 2hdasht 2jalleq 4wsko_pomorskie 3e 2ka_salas 4tpalli 3es_county 3i_airani 4chuo 3o_salos
2lai 3diga_municipality 3im 3ob 3ti 3uin 2magaya 4moto 4novo 4rapalayam 4si 3ba 5konam 4o 3ertau 4u 2nar 3dla 4uz
3ene_region 3gsholmen 4ur 3ingan 3ming 3namkulam 3shan 3unurra 3yang 2opijas 5o 6_linn 2pang 3chino 3ros 2qa 2raby
4hao 4nda 4shiki 3damir_district 4istan_province 3e 3gan 6_oblast 3ihara 3nell 4ool 3oiso 4rtnyy 3raba_point
5jong_heights 5lta_park 4i_kurri 3sk 5_oblast 3uman 5e 4njang 3wongbah 3zeme_municipality 2sadasi 4tsu 3hiro 4tia
2tahya 4isi 3loanong 2uba 2vait 4jt 3eit 6a 7s 4yt 2wait_city 4na 3eit 6i 4jt 2zbass 3ey_kore 6makedonya
8riana_adalari 3netsk 1vemo_kartli 1wadukuza 3i_chung 5tsing_district 3jalein_atoll 3le_county 3ngo 5yang 4za_sul
3ra_state 3zulu_natal 2ekwe 3neng 2fwla 2ilu 3nana 2tka 2un_tong_district 2wbyw 3la 3pyw 3wwla 1x_then_beirk 1yabram
3iklat 4n_seikgyi_township 3ukse 2iv 4_city 5oblast 2le 4_bay 2menlaakso 2neton 2ogle 3sai 3to 2pr 4os 2ustendil
2zyl 5orda 0l_għarb 5sri 2iklin 3mdina 4garr 4qabba 4sida 1a_altagracia_province 3broquerie 3ceiba 4horrera
4oncepcion 9tion 4rosse 3dolorita 5rada 3gi 4oulette 4uajira_department 3habana_vieja 6ra 4e_di 3laguna 4ibertad
9ad_department 4ouviere 3malbaie 5ssana 4esa 4inerve 4ohammedia 3pampa 5z 6_department 4iedad 5ntana 4lata 4ocatiere
4rairie 3reunion 4ioja 5viere_anglaise 4ochelle 5mana 5nge 3sarre 4erena 4pezia 3tirana 4uque 3union 3vega 4ictoria
2amu 3ne 5_sahara 6virumaa 3scaanood 3youne 2be 4_region 4lle 3insk 3orie 3rador 8_city 3uan 6_bajo 3ynrnta 2c
3_alouette 4brome 4connelly 4du_bonnet 4la_biche 6pierre 4megantic 4simon 3eby 3hin_rayon 4ti 4ute 3olle 4mbe
3s_district 2dakh 3brooks 3ismith 3ner 4un 3y_frere 4bank 5rand 4smith 4well 2e 3_atoll 3la 2fayette 3ia 5gi 2ges
3hman 4ouat 3os 5_de_moreno 3una_niguel 5es_district 2h_ti 3ad_datu 4n 4rpur 4t 3ij 3ore 3t 4i 5s 4y
2i_chau_province 3bin 3dley 3kipia 3wu 3xi 3yang 3zhou 2jas 3eado 2ke_albert 5cargelligo 7thie 6harles 6owichan
5echo 6lsinore 5forest 5gardens 5havasu_city 8en 6eights 5illawarra 5macdonald 6unmorah 5wendouree 4field 4land 8s
4mba 4nheath 4s 5_entrance 4ville 4wood 3hdaria 4impur 4ti 5y 3shadweep 6m 5mipur 2l_bahadur_nagar 3a 4_musa 3itpur
3monirhat 3or 5_park 3upon 2m_dong 3ar 3bare 5yeque 4erhurst 5th 4ourn 4ton 7_baby_point 8shores 3esley 4zia_terme
3ia 4ngton 3lash 3mermoor 3ongan 5t 3pang 4eter 4hun 4ung 3u 2na 4rk 6shire 3cashire 6ter 4efield 4hester 4ing 3der
4mark 4rake 4sborough 5dale 5hut 3e_cove 9_north 9_west 4sborough 3g_lang 5son 8_province 4arud 4enburg 6feld 6hagen
4fang 5ord 4ham 5o 6lm 4ley 7_green 8park 4port 4sa 4toft 6ucun 4warrin 9n_south 4xiang 4zhong 3igan 3karan 8_sahari
3oraie 3sdowne 4han 4i_sahara 5ng 7_westgate 4vale 3tz 3xi 3zhou 2o_cai 3ag 3hekou 3junmiao 3sa 5s 4z 2peehnranta
5nranta 4nlanta 5rand 8ta 3land 3pe 5ehnranta 6nranta 9nta_linn 5nranta 3rnta 3u_lapu_city 3ynranta 2r 3a 4che
4pinta 3baa 4ert 3edo 4s 3go 4s 5_bay 6north 3isa 3k_hill 4ana 4field 4hall 4spur 3naca 5ka 4e 3rakeyah 2s_cruces
5umbres 4marias 4piedras 6nas 4tunas 9_province 4vegas 3hio 2tacunga 4kia 3chingdon_and_snoreham 3ham 4lain 3i 4na
3robe 3ur 3vija 2uder 6dale 6hill 3nceston 9n_city_centre 5hing_place 3rel 5ncekirk 6s 6tides 4ieston 4o_de_freitas
3sanne 3taro 4em 4oka 2val 5leja 5trie 3endon 5ham 4rton 3ington 3ras 2w 3ang 3nton 3rence 8_park_north 9park_south
3son 3ton 2xey 3ti 2yton 5wn 3yah 2zio 1e_bic 3havre 3mans 3plateau 3tampon 2abrook 3gue_city 3mington 3nder 4yer
3side_bennington 5ngham 3therhead 2banon 4p 3el_sur_quevillon 3lanc 3owakgomo 2cce 3heng 4lade 3onfield 2da 3bury
3uc 2e 3derville 4s 4u 3k 4_wootton 3ming 3paja 3sburg 4ton 4wood 3ton 3uwarden 3ward_islands 2fortovo 2gana 5es
4spi 3ionowo 3nano 4ica 2hi 4gh_acres 2icester 9shire 4hhardt 3den 3fear 3gh 5ton_buzzard 3nster 3pzig 3ria 3ston
3xlip 3yang 2kki 3oumou 2lystad 2mbang 3e 3on_tree_passage 3pira_department 2nah_valley 3cois_paulista 3exa
3gshuijiang 8tan 4yelorszag 3ham 3ingradskaya_oblast 5ogorsk 5sk_kuznetsky 3kija 3nox_head 6town 3zie 2o 3gane 3la
3minster 3n 4_department 4ay 4gatha 4ora 3pold 7ina 3va 2paya 3pington 2re 3ibe 4k 5_district 3wick 2s_abymes 4cayes
5edres 5orts 6teaux 4escoumins 4mamelles 3bury 3chenault 3han 3kovac 3lie 3mahagow 4urdie 3noy 3osibirsk 4tas 5o
3ser_poland 3zno 2tchworth_garden_city 3ham 4bridge 9e_park 3icia 3land 3onia 5ya 3terkenny 6ston 4land 4onia 7e
5rszag 2uchars 3meah 3ra 3ven 2vallois_perret 3en 4rkusen 3in 4s 4ttown 3oberezhnyy 2wes 3isham 5porte 5ton 5ville
2xington 9_fayette 2yburn 3land 3sdown_on_sea 3ton 6stone 2zayre 3he_county 1hanbryde 3sa 2okseumawe 2untse 1i_jia
2an 4cheng 4ghu 5ji 5ping 5xiang 5zhai 4he 4jiang 4ozovo 4shan 4yuan 6ngang 4zhou 3ocheng 4lan 4ning 4yang 5uan
4zhong 2b_island 3an 5a 6s 5o 6n 4u 4va 3eeria 4rec 7_region 5ie 6ja 5tad 6y_grove 5ya 3ia 4e 4ja 3on 3reville 3ye
5n 2cha 4eng 4field 4inga 4tenburg 7rade 7stajnsko 9einas 9ejnsko 6rfelde 4uan 2da 3combe 3lington 3o_di_ostia 3u
2ege 3pagia 5iya 5ja 5ya 4oja 3taja 5ya 4tua 4uva 2fton 2ga 3ezhuang 3htning_ridge 5water 3uo 4ria 2htenstajn 8eina
2ibanon 4ua 2ja 3epaja 3iang 2ka_senj 4si 3hobory 3iep_atoll 3ouala 2lle 5strom 4i_pilli 4ooet 3ongwe 3ydale 4field
2m_pende 3a 4_province 5region 4ssol 4vady 4y 3bazi_municipality 4e 4urg 3ehouse 4ira 4kilns 4rick 3oges 4n
5_province 3pio 4ley_stoke 4opo 3uru 2n_chex_ping 4xue_ping 3ares 4s 3cang 4eping 4hehping 6ping 5joping 4oln 7_park
7shire 5pia 3da 5naes 7s 4en_park 4field 4i 5sfarne 4ley 4say 3e_islands 3fen 3gao 5yen 4cheng 4dale 5ong 4en 4field
4hai 5e 4wood 5u 4yuan 3hares 3iere 3jiacun 6ng 3koeping 5ping 5u 3lithgow 3n 3ping 3qiong 4u 3s 4epinga 4heping 5ui
4iopingas 4yeping 3thwaite 4on 6_upon_ouse 6g 3wood 3xi 5a_chengguanzhen 3yi 3z 2ons_bay 2pa_city 4wa 4ya 3etsk
7_oblast 3hook 3ing 3kovo 3pstadt 2quica 2ra 2sala 4row 3bon 4urn 7_and_castlereagh 3hi 4u 5i 3keard 4i 3more
7_heights 3naskea 3s 3towel 2tauen 3herland 4gow 3oral 4uwen 3tle_amwell 7bay 8ookham 8ray 7chalfont 8lacton 8urrent
7dunmow 7eaton 7grove 7hallingbury 9mpton 8ulton 7lever 7mountain 7paxton 8ortugal 7river 8ock 7weighton 6borough
8urne 6hampton 6port 4oral 3uania 7e 3va 5nia 6ya 3wa 2udvika 3he 3ji 3ksemburgas 4u 3panshui 3quan 3xin 3zhi 5ou
2vani 3ely 4rmore 5pool 5sedge 3ingston 9ne 3onia 4rno 2xian 2yepaya 2zhi 1jubljana 3tomer 1lanarth 4beris 5radach
4deilo 5ilo 5overy 5rindod_wells 5udno 5ybie 6sul 4elli 5rchymedd 4fair_caereinion 8fechan 8pwllgwyngyll 5yllin
4gefni 6ler 5ollen 5ynidr 4haran 7ry 4idloes 5lar 4rug 5wst 4santffraid_glan_conwy 4trisant 5wit_fardre 9major 2eida
2oydminster 2wynypia 1nkwmng 2shwpng 1o_prado 2a_janan 3nhead 2baniemi 4tse 4ye 3ethal 3ito 3nya 3urn 2charbriggs
4gelly 5ilphead 4maben 4winnoch 3kerbie 4hart 4ing 4leys 4ridge 4yer 2d 3don 3hran 3i 3ja 3war 3z 4_voivodeship 2ei
2fa_county 3thouse 4us 2g_dragomer 3an 5_central 7ity 6lake 6reserve 6square 6village 5holme 5lea 4r 4tec
3one_occidental 8riental 3rono 2hardaga 2iza 2ja 2koja 4ssa 2mami 3bardy 3e 3za 2nan 4vla 3don 6derry
9ry_county_borough 4rina 3g_ashton 5beach 7nnington 6ranch 6uckby 5clawson 6rendon 5de 6itton 5eaton 5gully 5island
6tchington 5jetty 5lawford 5melford 5stratton 6utton 5whatton 5xuyen 4dendale 4feng 5ield 5ord 7gan 4gang 5u 4hope
6ughton 4jiang 6ng 4ling_county 4mont 4nan 5iddry 4quan 4reach 5idge 4shi 6ui 5ight 5tanton 4tan 5on 6wn 4ueuil
6ville 4view 4warry 5ick 5ood 4yan 3i 2oe 2p_buri 3buri 2rain 3ca 3ena 4stan_province 4to 5te 3i 4ent 3n 4e 3raine
2s_andes 6geles 4banos 4dos_caminos 4lagos_region 4mochis 4patios 5olvorines 4rastrojos 5eyes_acaquilpan 5ios
8_region 4santos_province 4teques 3siemouth 3twithiel 2ta 3hian 3te 3wa 3yssko 2udi 4water 3ga 4hborough 5linstown
5rea 3is_trichardt 5eville 5iana 5ville 3m 3na_aafrika_vabariik 6korea 6sudaan 4gnamtha 4t 3rdes 4es 3shanguan 3th
2vech 4land 5y_banks 3iisa 7_linn 4jsa 4sa 4za 2w_ackworth 4bradley 4etherley 3dham 3ell 4r_austria 6beechmont
7railes 8oadheath 6chittering 6earley 6halstow 7utt 6juba 6king 9gswood 6mitcham 6plenty 6river 6sackville 8xony
7habeelle 7ilesia 4stoft 3ood 2xton 2yalty_islands 2zova 5o 1pyn_rnta 1ualaba 3ncheng 4da 6_norte
4g_prabang_province 4shya 3pula_province 2bango 4o 3bock 3eck 3in 3lin 3nan 3ombo_region 3u 4klinggau 4mbashi 4sz
2can 4s 3ca 3e 4mbursko 4na 4rne 4ville 3heng 3ija 3keesarai 4now 3rezia 2ddenden_foot 6ham 3enscheid 3gershall
3hiana 3low 3milla 3ovica 3vika 6i 3wigsburg 7hafen_am_rhein 3za_municipality 2eyang_chengguanzhen 2gano 4rno 3o
3wardine 2hansk 2jan 2kovica 3semburg 9ga 2leburgaz 3ou 2majang 3bini_province 4y 3sden 2ncarty 3d 4a 5_sul 5s 4eu
4i 5n_links 4ur 3eburg 4n 5burg 3glei 4sod_ng_helsinki 3t 2ocheng 3he 4uang 3jiang 3men 3rong 3yang 2qa 3uillo 2rnea
2saka 6_province 3har 4un 3k 3semburgo 2tana 3es_mountain 3on 3sk 3terworth 3wyche 3z 2xembourg 6urg 9o 8sko 3or
2zern 3hou 3iania 1viv 1wdwykh 2nd 1yall_bay 2dbrook 3d 3enburg 3iard_millicent 3ney 2man 3e_regis 3inge 6ton 3m
3pne 4stone 2nbrook 3chburg 3dhurst 4och 5n 3eham 4mouth 3field 3mouth 3n 3shwbyngh 6pyng 3ton 3wood 2on 4s
2sterfield 3ychansk 2tchett_matravers 3ham_st_annes 3karino 3telton 2ubertsy 4lino 2ypʼyh 1ənkəran 0ma_er_mo
3on_shan 2astricht 2ba 4i 4lacat_city 3lethorpe 3opane 2cae 4mic 4o_kiinan_erityishallintoalue 6oao_ciny 6sar 9_kina
6zao_ciny 4pa 4ristan 5thur 4u 5_erihalduspiirkond 3clesfield 3duff 3edoine_du_nord 6n 7ia 9_and_thrace 9_de_nord
9_del_nord 9_del_norte 9_do_norte 9_polnocna 4io 3gregor 3hakos_county 5la 5ns_beach 4en 6g 5rla 4ida 5lipatnam
5ques 4ynlleth 3kay 6_city 4enzie 4lin 4sville 3lean 6y_island 5od 3masters_beach 4erry 3on 3quarie 9_fields 9_hills
9_links 9_park 3room 2daba 4gaskar 9ra 9ras 7zkar 4lena 4napalle 5g_province 4ripur 5ska 7o 3dingley 7ton 5ston
3eira 4ley 4ra 3gaon 3hesh 4ipura 4ubani 5pur 4ya_pradesh 6mgram 6pur_thimi 3inat_an_nasr 9sh_shamal 8hamad
8sittah_uktubar 4son 4un 3oc 4nas_novads 4ra_bay 3re_de_dios 4id 6_centro 5z_department 3urai 3zarska 2e_hong_son
3baru_chuo 5shi 3kel 3steg 2feteng_district 3fra 3raq 2gadan 7_oblast 4lang 4ngue 3dalena 9_contreras 9_department
4eburg 3elang 3haghah 4era 7felt 7lin 4ull 3ill 3na 4etic_island 4itogorsk 4olia 3og 4ng 4r 3rath 3ugpo_poblacion
3way 2ha_sarakham 4bad 4ica_berbice 4janga 4ragama 6shtra 4samund 3bubnagar 3dia_governorate 3endranagar 4shtala
3ikeng 4lyow 3oba 4ra 2i_ndombe 3cao 3da_vale 5n_wardak_province 4en_gully 7newton 6bower 6head 4stone 4uguri 3le
4si 3n_beach 4e 4puri 4z 3o 4ta 3quetia 3rehau 4i 5pora 3sons_alfort 3tland 8_city_centre 3zuru 2jadahonda 4lengka
3ene 3ie 3ota 6s 5ta 3uro_atoll 2kamba 4o_kkt 4ssar 4ti_city 4u_haina 3edonska_kamenica 9i_brod 4ni 4tu 3hachkala
3iivka 4ra_ulawa_province 3oko 3rana 3ueni_county 4mbako 4rdi 2labar 5o 4catan 5ca 4dziecna 4ga 4hide 4isia 7e
5ta_province 5zija 4jsie 5zia 4k 5al 4mbo 5pa 4nda 5g 5je 4ppuram 4rd 5tic 4sia 4tya 4ui 5t 4vi 6ja 6s 4ybalay 5er
3den 4iivid 5v_szigetek 6as 6e 7n 8e 7rna 9e 6i 7ja 6ler 6y 4on 6ado 4yvai 3e 4diivit 6ven 7y 6wy 4gaon 4isie 4ny
4r_kotla 4sia 4w 4zija 5ja 5ya 3indi 5gao 6shan 4otenam 4r_cantonment 4s 3kajgiri 5pur 3lacoota 5wi 4ow 3me 5sbury
5y 4o 5e 5gia 3oelap_atoll 4los 3pas 3tby 4e 5pe 4on 3ua_bay 4ku 4mfashi 4ngun 3vern 7_east 2mbere 7_kadei
3ou_region 5dzou 2n 3_adasi 4sziget 3abi 4capuru 4do 4gua 7_department 4ma 4oag 4ti 5uto 4us 4vgat 4wan 6tu_wanganui
3bij 4y 3cheral 6ster 3dalay 8_region 6uyong_city 5marri 5ue_city 4era_county 5ville 4i 5_bahauddin 5mba 4oul 4saur
4urah 8_city_centre 4ya 3ea 3falut 4redonia 3gaia 5lagiri 6dan 6ore 5papa 5tainoka 4ere 7_east 6ton 4ilao 4o_hill
5rei 5tsfield 4rol 6ve_cay 4ystau 3hattan 4uacu 3i_saar 4ca 6land 4ema 4fold_heights 4hiki 4la 5la 4ngrida 4pur 4sa
4toba 6uwadge 4waki 4zales 3jeri 4imup 3koeng 3ly 5_vale 6west 3mad 3narakkat 6gudi 4ering_park 4heim 4ing 7ham
7tree 4um 3okwari 4ora 4r_park 5hamilton 4uba 3resa 3sa 5ari 4ehra 4field 9_park 9_woodhouse 4ilingan 4oura 4ton 3ta
5mpay 4eca 3ufahi 4kau_city 4nda 4rewa 8_east 4s_province 4tuke 3yara 3zanillo 4houli 4ini 7_region 2ocun 3ming
3ri_hill 5bank 2ple_creek 8oss 6grove 6leaf 6ridge 5ton 3ua 4to 6_city 7province 2r_del_plata 3a 4ba 4caibo 6nau 6y
4di 6_region 4enui 4marua 5ures 4nd 5garoo 5hao 4ta 5iri 4wi 6_city 4ylya 5ong 4zion 3bella 4le_bar 3ch 5am 5wiel
6ood 4oola 5ry 3dan 4en 4i 5n 3echal_deodoro 4eba 4ia 3gahayukencana 5ret_river 6ita 5te 4herita 4ibi_county 3i 4a
5_gamla_stan 9lastan 6trinidad_sanchez 5n 6a 6na 6o 7_roque_alonso 7s_siaurines_salos 6y_polnocne 5ra 4bor 5yrnong
4ca 6o 4ehamn 5ndorf 6thal 5tta 5ville 4hi 4jampole_county 4lao 5ia 4na 5ette 5ga 5illa 5o 4on 4time 4upol 4van
5eles 4y_el_republic 3ka 5la 5pur 5zi 4dale 4et_bosworth 7deeping 8rayton 7harborough 7lavington 7rasen 7warsop
8eighton 4field 4ham 4inch 4land_wood 4s_point 6tey 4yate 3l 4borough 4don 4eston 4in 4ow 3mion 3nhull 3oc 5co 5ko
4ka 6s 5ko 5o 4ndera 5g 4ochy_river 8dore 4ua 5bra 5si 4wijne_district 5n 3ple 3quard 5esas_islands 3rakesh 9_safi
5ra 4ickville 4ocos 4uecos 3sa 5bit_county 5la 7_salas 6o_salos 7vi_otoci 5skala 5xlokk 4den 4eille 4field
4hall_adalari 9szigetek 8eilanden 8i_saared 9nsaaret 9nseln 8oarna 9erne 9ve_ostrovy 9vi_otoki 9vy_ostrovy 9yene
5field 4ton 7_moretaine 3tapura 4ensville 4ham 4in 6ica 7k 8a 7que 4ock 4ynika 3udi 4game 4lan 4me 4pe 3vdasht 4in
3y 4bank 5orough 5urgh 4hill 4land 8_county 4port 4stown 5ville 4vale 5ille 3zahn 2saka 4lly 4n 4urhi_buzurg 4ya
6_department 3cara 4ot 5uche 3eru 6_district 3ham 4had 4onaland_central 9nd_east_province 9nd_west 3ina
3jed_soleyman 3kinonge 3lin_beach 3sa 5chusetts 4ey 6_east 3terton 3vingo 8_province 2tabeleland_north
9and_south_province 4di 4galpa 9_department 6mi 4kahika 4m 5ata 5oros 4ne 5zas 8_province 4o 4ra 6m 5o 4ura 3ehuala
4ra 3hura 3i 4niki 3li 4ock 3o_grosso 4la 3raville 4uh 3subara 5do 5e 5moto 5to 5yama 3tawa 4ishall 3urin 2u 3a 3bin
3chline 3dsland 3ghold 3lavi_bazar 4den 4e_region 3mere 3nabo 4gakororiko 6raki 6tapere 7uroto 3puia 3ren 5tania 9en
9ja 4ice 6ija 8us 7o 7us 5taania 7nie 9ja 2vretanija 4icij 4ovo_and_rostusa 2wana 3lamyine 3son 6_lakes 2xixe
3wellheugh 2yabeque 4guana 6ez 4ro 3bole 3erthorpe 3field 8_east 9west 4ord 3iladuthurai 3kop 3land 7s 3mana 3nooth
3o_kebbi_est 9i_ouest 3san 2zabuka 4ndaran 4r_e_sharif 5a_del_vallo 4tenango 5lan 3ovia 3yr 1babane 3iki 3ke 3le
4mayo 3ndaka 4za_ngungu 3rara 2eya 2omou 3uda 2uji_mayi 1callen 2cracken 5e 2dowall 2ewen 2graths_hill 2kail 3ellar
3inney 6on 2laren_flat 8park 8vale 2mahons_point 1eadow_heights 7lake 7springs 6bank 7rook 6s 4s 3ford 3sham 3ux
2cca 5_region 3helen 3klenburg_vorpommern 2da 4n 3ea 4llin 4nine 8_governorate 3ford 3ias 4cine_hat 4murje 4na
6_estates 7region 5die 5ipur 3owie 3way 2emu_atholhu 3rbusch 4ut 2ftah 2ghalaya 2hedinti_county 3hiko 3ika 5o
2idling 3ganga 3hekou 3kle_earnock 4tila 3shan 3zhou 2jicanos 4t_island 2kanehia 3nes 3sika 6o 4yk 2laka 5y 4ti 3ba
4ourn 8e 9_city_centre 3dreth 3ekeok 4uz 3fort 3illa 4pilla 4ssa 4ta 5opol 3ksham 3le 4ons_bay 3ndal 7a 4kalne 3o
4cheville 3rose 7_park 3tham 7_mills 4on 6_mowbray 7south 7west 3ville 2mphis 2nabe 4i 5_bridge 4ka 4ngle 4s_sala
3daha 4en 4ip 4oza 3e_grande 4men 4ng_district 3gcheng_chengguanzhen 4huan 4lang 4mao 4yin 3ifee 4ngie 3o_sala 4ra
3ston 5rie 3tone 5r 5ugou 3zel_bourguiba 4ies 2opham 2ppershall 2rauke 3bein 3ced 6es 4ier 3e 4lani 4wether
9r_heights 3ida 6n_plains 5en 5ian 4gnac 4mbula 4ngandan_west 4zo 3kezefendi 3lo 3maid_beach 8waters 3nda 3redin
4ilands 5mac 5ott 5tt 5wa 4ow 4ylands 9s_west 3sa_matruh 4ch 4in 4tham 3ter_keresteciler 4hyr_tydfil 4oyudan
3u_county 3zifon 2sa 3quite 3saad 4ico 5na 6gham 3tre 2ta 4_department 4betchouan 4irie 8_terrace 3calfe 4hosin
3ford 3heringham 4il 4ley 4uen 4ven 3lili_chaamba 3ro 5gorodok 3tupalayam 5r 3ung 3z 2ulaboh 2vagissey 2xborough 3ic
5ali 5o 6_city 4ko 4que 2ybod 3cauayan 2zhdurechensk 1i_kai_li 2ami 5_beach 6gardens 3n_channun 4detta 5oab 4ke_mor
4mar 7_birmania 7as_birma 4wali 4yang 4zhu_deyang_sichuan 3ojie 3ss 2chael 4eng 4igan 4oacan 4urinsk 3kle_trafford
6ham 6ton 3oud 3ronesie 7zia 2d_calder 4ulster 3delburg 4le_cove 7govi 7island 7juba 7park 7rasen 8idge 7shabele
8wan 7winterslow 6mount 6sbrough 7town 6ton 9_grange 8wn 6wich 3hurst 3land 7s_province 4eton 4othian 3ori 3rand
3somer_norton 4tream 3vale 3way_islands 7point 4est_city 3yat 2e 3lec 2gori_county 3uel_hidalgo 2hara 2jas
2khaylovka 9sk 3i 3keli 5ri 3roneesia 7sia 9afoderasjonen 9e 9en 7zia 9ja 8ja 8ya 2la 4gro 7s 4n 3borne_port
9st_andrew 3denhall 4may 4ura 3e_end 4s 3ford 7_haven 8on_sea 3i_atoll 4ngimbi 3l_park 4ars_well 4bank 5ridge 6ook
4creek 4er 6s_point 5t 4grove 4icent 5ken 5sle 4merran 4ner 4om 4port 4stream 8et 5wood 4thorpe 5imber 5own 3nathort
4e_bay_province 4gavie 4row 4thorpe 3perra 4itas 3son 6s_point 3ton 6_keynes 7of_campsie 9_leys 3verton 3waukee
2maropa 3ico 2nab 4mi_alps 7soma 6rinkan 6uonuma 4s_gerais 4titlan 5o 3bu 3chinbury 7hampton 3darie 4elo 5n 3ehead
4ralnye_vody 5s_rest 3gacevir_city 4cun 4elchaur 4gang 5uang 4lanilla 4ora 4shui 3laton 3na 4eapolis 5dosa 5sota
5tonka 9a_mills 3o 4kamo 3sk 5_city 4ter_lovell 7ley 3tlaw 4o 3usinsk 3ya 5ma 5t_an_nasr 2olndalas 2quelon_langlade
2ra 4_mar 6esa 4bel 7a 4goane 4mar 5ichi 4nda 5i 3boo_north 3field 3i 4alguda 3oslava 3pur_khas 3rabooka 3yang
3zapur 2shan 4ima 3iones 8_department 4r 3kolc 3ratah 3sion 7_bay 9each 8river 8viejo 5ssauga 9ga_beach 7ippi 4oula
6ri 8_city 3terton 4issini 4ley 2t_ghamr 3au 4va 4wa 3cham 5eldean 7l 8_park 7stown 7ton 3iaro 3o 4yo 3rovica 8e
3tagong 4e 2ura 2xco 2yagi 4ko 6jima 6nojo 4ng 4zaki 3oshi 2zoram 3uho 4sawa 1janma_birma 6r_burma 7sko 1mabatho 1oa
3bit 3ma 3na 4da 3te 2bara 3berley 3ile 2ca 4mbique 5edes 3oa 4ca 2dakeke 4sa 3bury 7_heights 8north 3derfontein
3ena 4sto 3ica 4in_ilit 4molle 2e 3lndal 3ra 4ewa 4s 2ffat 6_beach 2ga 4dishu 3gill 3i_das_cruzes 5guacu 5mirim 4la
5ev 3ok 4listan 2hali 4mmedia 4piki 3eli 2il 3ra 2jkovac 3okerto 2ka 4meh 3hotlong_district 3olo 4pane 4tow 3po 2ld
4avie 8n 7ja 6sko 5wia 3enbeek_saint_jean 5dinar 4polole 3fetta 3ina_de_segura 4se 3let_del_valles 4ymook 9_beach
3ndal 3ong 3teno 2mbasa 7_county 2n 3_repos 3a_vale 4co 4gas 5han 4kas 5o 4sh 5terevin 6ir 8_governorate 3bulk
3calieri 4hengladbach 4loa_aravaca 6va 4ton 3dlo 4olkiri 3eymore 3g_cai 4agua 5la 5r 4hyr 4mong_toto_maite 4olei 6ie
8t 7ja 6sko 5olia 5ria 4u 3ifieth 3k_fryston 4ayo 4hams 4land 4stown 3mouth 8shire 3o 4tera 3rovia 3s 4anto
4enor_nouel 5rrat 3t_albert 9rt_north 5buxton 5fleuri 5joli 5laurier 5royal 5saint_gregoire 9t_hilaire 5tremblant
4agnes 6u 7e 5na 5uban 4e_cristi_province 6plata_province 5bello 5giardino 6o_bay 5libano 6lo 5morelos 5negro 5puez
5rey 8_park 6ia 6o 6rey 5s_claros 5video 9o_department 4gomery 4magny 5orency 4o 4pellier 4real 8_est 9ouest 6uil
5ose 4seratas 7rado_county 9ta 4ville 3ufia 3ywa 3za 2odiesburn 3irivier 3ka 3lap 4oolaba 3nah 4bi 4coin 4e 5e_beach
7ponds 4ta_bay 3ra 5bbin 5k 4e 5_park_beach 5bank 4oobool 6duc 6ka 6lbark 6pna 3se_factory 6jaw 6lake 4omin 5nee
2pti 2quegua 8_department 2ra 4dabad 4g 4nbah 4talaz 5uwa 4vian 8_silesian_region 4y 5field 4zan 3bi 3chard_bishop
3den 4ialloc 4oviya_republic 3e_og_romsdal 4cambe 4e 4lia 5os 4na 5o_valley 4ton 7_in_marsh 7hampstead 3i 4guchi
4n_heights 5ville 4oka 4sset 4tanya 4ya 6ma 3ley 3mugao 3ningside 9de_heights 7ton 3o 4be_province 4e 4goro 4ko 4n
5a_santiago_province 5dava 4tawa 4vis 3peth 4hett_vale 8ville 3ris 6burg 3tdale 4lake 3uya 3well 2sambiik 7k 3cow
6_oblast 3hi 3man 6_park 3s_park 5vale 4blown 4el_bay 5nd 4ley 4man 4oro 3t 4aganem 5r 4eiros 4oles 4yn 3ul 2tcombe
3herwell 4ihari 3ril 3t_haven 4ingham 3u_orana 5puwei 5whakarangi 8rau 4eka 4roa 2ulden 4ton 7_chapel 3ndou
4t_albert 7nnan 7thos 7ustin 6barker 7rydges 7uller 6claremont 8ear 7olah 8mpass 8ok 9lum 8tton 7rosby 6dandenong
7ennis 7ruitt 7uneed 6eliza 7velyn 6gambier 7ravatt 9vatt_east 6hawke 9thorn 7elen 9ena 7utton 6isa 6keira 8mbla
7uring_gai 6lawley 7ebanon 8wis 7ofty 8uisa 8w 6macedon 8rtha 7elville 8rrion 7organ 6nasura 8than 7elson 6ommaney
7usley 6pearl 7leasant 9asant_east 9asant_west 7ritchard 8ospect 6richon 8verview 6saint_thomas 7heridan 7tuart
6tarcoola 6vernon 7ictoria 6warren_park 9rigal 8verley 5ain_ash 9creek 9view 5mellick 5rath 5sorrel 3ra 3scron
2ville 2wbray 2xico 6_leste_province 2y 3cullen 3en_chari 6ogooue 3obamba 3ross 2zambic 8o 7k 8a 9s 7que 1panda
2ophomeni 2umalanga 1saken 1tarfa 2hatha 2samboro 3kheta_mtianeti 2wara 1uan 3r 2barak_al_kabir 7pur 3i 2ch_hadham
5wenlock 4inga 2danjiang 3gee 6raba 3jimba 3on 3u 4g 2eang_nonthaburi 2ff 3ulira 2ghal_sarai 3la 2hafazat_hadramaout
4rraq 2ir_of_ord 4head 4kirk 2jiayingzi 2kachevo 4lla 3dahan 3o 4no 3tsar 2lambin 3barton 3dersdriseloop 3goa 4rave
3heim 4ouse 4urddart 3ing 3lagh 5loo 4ion 4umbimby 3tan 3ugu 3wala 2mbai 2ncar 4ie 3daring 4esley 4ford 4ijong
5ngburra 4oolun 4ubbera 3gyeong 3ich 5ipalita_di_kalmar 9ity_of_ajdovscina 9ity_of_ankaran 9ity_of_apace
9ity_of_beltinci 9ity_of_benedikt 9ity_of_bled 9ity_of_bloke 9ity_of_bohinj 9ity_of_borovnica 9ity_of_bovec
9ity_of_braslovce 9ity_of_brda 9ity_of_brezice 9ity_of_brezovica 9ity_of_cankova 9ity_of_cerknica 9ity_of_cerkno
9ity_of_cerkvenjak 9ity_of_cirkulane 9ity_of_crensovci 9ity_of_crnomelj 9ity_of_divaca 9ity_of_dobje
9ity_of_dobrepolje 9ity_of_dobrovnik 9ity_of_domzale 9ity_of_dornava 9ity_of_dravograd 9ity_of_duplek
9ity_of_gorisnica 9ity_of_grosuplje 9ity_of_hodos 9ity_of_horjul 9ity_of_hrastnik 9ity_of_idrija 9ity_of_ig
9ity_of_izola 9ity_of_jesenice 9ity_of_jezersko 9ity_of_jursinci 9ity_of_kamnik 9ity_of_kidricevo 9ity_of_kobarid
9ity_of_kobilje 9ity_of_kocevje 9ity_of_komen 9ity_of_kostel 9ity_of_kozje 9ity_of_krizevci 9ity_of_kungota
9ity_of_kuzma 9ity_of_lasko 9ity_of_lenart 9ity_of_lendava 9ity_of_litija 9ity_of_ljubno 9ity_of_luce
9ity_of_majsperk 9ity_of_makole 9ity_of_markovci 9ity_of_medvode 9ity_of_menges 9ity_of_metlika 9ity_of_mezica
9ity_of_mirna 9ity_of_mislinja 9ity_of_monaco 9ity_of_moravce 9ity_of_mozirje 9ity_of_muta 9ity_of_naklo
9ity_of_nazarje 9ity_of_odranci 9ity_of_oplotnica 9ity_of_ormoz 9ity_of_osilnica 9ity_of_piran 9ity_of_podcetrtek
9ity_of_podlehnik 9ity_of_podvelka 9ity_of_poljcane 9ity_of_polzela 9ity_of_postojna 9ity_of_preddvor
9ity_of_prevalje 9ity_of_puconci 9ity_of_radece 9ity_of_radenci 9ity_of_razkrizje 9ity_of_ribnica 9ity_of_rogasovci
9ity_of_rogatec 9ity_of_ruse 9ity_of_salovci 9ity_of_semic 9ity_of_sencur 9ity_of_sentilj 9ity_of_sentjernej
9ity_of_sentrupert 9ity_of_sevnica 9ity_of_sezana 9ity_of_skocjan 9ity_of_skofljica 9ity_of_sodrazica
9ity_of_solcava 9ity_of_sostanj 9ity_of_starse 9ity_of_store 9ity_of_straza 9ity_of_tabor 9ity_of_tisina
9ity_of_tolmin 9ity_of_trbovlje 9ity_of_trzic 9ity_of_trzin 9ity_of_turnisce 9ity_of_verzej 9ity_of_videm
9ity_of_vipava 9ity_of_vitanje 9ity_of_vodice 9ity_of_vojnik 9ity_of_vransko 9ity_of_vrhnika 9ity_of_vuzenica
9ity_of_zalec 9ity_of_zavrc 9ity_of_zelezniki 9ity_of_zetale 9ity_of_ziri 9ity_of_zirovnica 9ity_of_zrece
9ity_of_zuzemberk 3nar 4o_para 9a_west 3ruben 3ster 3tenegru 3uf 2radnagar 4kami 4mvya 4rrie 4tpasa 3cia 3doch
3es_county 3freesboro 3gon 3iae 4cay 4dke 4wai_beach 3mansk 3om 4ran 3ray 6_bridge 6s_bay 4ieta 4umba_downs 8teman
7eena 5rundi 3ton 3upara 3wara 4illumbah 3zuq_district 2s 3affah 4ndam_governorate 5ze 4shino 3cat 3oma 3selburgh
3tafakemalpasa 3well_hill 7brook 2tare 3hanna 3su 2yinga 2zaffarabad 8garh 8nagar 8pur 1wanza 2eka 3ne_ditu 1y_tho
2anmar_barma 9irma 9irmania 9irmanie 9urma 3ree 3ydo 2eik 2ingyan 3tkyina 2kolaiv 6yiv 2lor 5_bridge 2mensingh
9h_division 2rtle_bank 6ford 2slowice 3ore 2tchett 3holmroyd 3ishchi 1zuzu 0na_er_wa 2ama 3rva 3s 2bari 4tieh
6ye_et_tahta 3erezhnyye_chelny 4ul 6_governorate 3ha 3iac 3lus 2cala 3ional 2da 3ezhda 3iad 3or 2enae 3so 2fferton
3talan 2ga 4hama 4land 4mbie 4no 4oka 4reyama 5pur 4saki 4ur 3da 3ercoil 3ina 3o 4rnyy 4ya 3pur 3uabo 2ha 4riyya
4vand 2ic 3hati 3lsea 5worth 3rn 5e 4obi 7_county 2jaf 5abad 5garh 3ibabad 3ran 6_region 2ka 4no 4ra 4tsu 7gawa
3hchivan 4odka 5n_nayok 7pathom 8hanom 7ratchasima 7sawan 8i_thammarat 3salbari 3uru 6_county 4sp 2lchik 3euba
3gonda 3ut 2m_dinh 3akkal 4ngan 3bour 4ucca 8_heads 3drik_atoll 3ibe 5ie 6ja 5ya 4ibia 4pia 3pa 4o 4ula 3u_atoll 4r
3yangju 2n 3a_glen 6rebizi 5mambere 4imo 4ngo 3bin 3chang 5ong 5uan 4un 4y 3dajie 4ed 4i 5ng 4u 5rbar 4yal 3feng
3garhar 4en 4loi_jat 4ong 3hu 3jangud 4ian 5n 6g 3kana_sahib 3long 3ma 3ning 3pean 4iao 5ng 3tai 4erre 5s 4on 6g 5u
4wich 3um 5anga 5ea 3xi 3yang 3zhang_chengguanzhen 5ou 2pa 4nee 7_downtown 3erville 3ier 6ville 3les 3o 4leon 2qadeh
2r_wa 3a 4_shi 4coorte 4il 4ngba 5jito 4ra 4sapur 6raopet 4thiwat 4yanganj 3berth 4onne 5rough 3ela 5lan 8_vale
4mburn 3fa 3ino 4ta 3naul 3o_fominsk 4k_county 4oma 4wal 3rabeen 6ri 6undah 5ndera 5wallee 6eena 4e_warren
9ren_north 9ren_south 4ogin 5mine 5w_neck 3singdi 3utocho_mitsuishi 4vua 3v 4a 5_osh 5e 4e 3wa 5na 4ee 3yn_region
2sarawa_state 3hik 4ua 4ville 3inu 4rabad 5iyah 3o_tjer_di 3sau 3ugbu 4shiobara 2tal 3halia 5n 3ional_capital
9capital_region 9city 4tingou 4vidad 3ore 2ucalpan_de_juarez 3joji_kaledonija 8zelandija 2vadwip 4n 4polatsk 4rre
4ssa_island 3enby 3i_mumbai 3oiy 6_region 4joa 4tas 3sari 2wabganj 5shah 4da 4lgarh 2xi 2y_pyi_taw 3arit 2zarabad
5et 7h 5ovo 3illi 3ran 4et 1dola 1ea_ionia 4smyrni 3mt_county 3r_north_side 3th 5_port_talbot 2bo 3raska 2cochea
3ton 2derland 9ene 9erna 3lands 3umangad 2ebing 3dham_market 4ingworth 3mbucu_department 3pawa 3rim_south 2ftcala
4ekamsk 5yugansk 3yn 2gapatam 3eri_sembilan 3ombo 4tino 2he 2ihu 3jiang 3lston 3va 2llore 4y_bay 3son 6_bay 7region
7south 4pruit 2ma 3by 3cija 3ecko 4torszag 2nagh 6_bridge 3ets 3jiang 2pala 6s 5gunj 3ean 3ora 2rang 3yungri
2ss_ziona 3ton 2tanya 3her_heyford 7poppleton 7stowey 6avon 6by 6lee 6ton 3ley 3rakona 3tleham 2u_hohenschonhausen
4ulm 3brandenburg 5uck 3chatel 3e_neustadt 3illy_sur_seine 3kaledonien 4olln 3munster 3quen 3seeland 4s 4tadt
3tral_bay 3ville 3wied 2vada 3gin 3innomyssk 3sehir 8_province 2w_alresford 5quitaine 5uckland 4basford 5edford 6ith
5raunfels 6ighton 7tain 9in_province 6unswick 5uildings 4cairo 6rlisle 5ross 5umnock 4delhi 4farm 5erry 4gisborne
5lasgow 4hamburg 7pshire 6ven 4ireland 4jersey 4kingston 4lambton 9on_heights 5ynn 4malden 6rske 7yland 5exico 5ills
7ton 6rpur 4norfolk 4orleans 4pitsligo 5lymouth 5rovidence 4richmond 5ochelle 6mney 6ss 4south_memphis 9_wales
5tevenston 4toronto 6wn 5redegar 4valley 4westminster 5indsor 4york 8_city 3ark 6_on_trent 5thill 3bold_verdon
5rough 4ridge 4urgh 6n 6y 3castle 9_city_centre 9_east 9_emlyn 9_under_lyme 9_upon_tyne 9_west 4omb 3ent
3foundland_and_labrador 3haven 3ick 4ngton 3lands 3macher 5ins 5n 5rket 9_on_fergus 4ilns 3nham 3port 7_beach 8news
8on_tay 8pagnell 3quay 3ry 3stead 3ton 6_abbot 8ycliffe 7ferrers 7le_willows 8ongville 7mearns 7poppleford 7stewart
6brook_east 9ok_west 6hill 6more 5wn 7_cunningham 8st_boswells 8trim 7abbey 8rds 7hamilton 7mountkennedy 7stewart
2yagawa 3land 3shabur 3veli 3yattinkara 1ga_motu_horomona 9keimana 9mahara 3ika 4o 4tiria 3njuk 3oundere 3raard
4chelong 4dmau 4uawahia 3tea 4pang 2chesar 2eremlengui 2he_an_province 3ia_lo 2iwal 2obe_bugle_comarca 3ngotaha 3uni
3zi 2ukurr 3nguru 4nawal 3ru 2waketsi 1ha_trang 2ill 2ulunbuy 1ia_valencia 3gara 7_falls 8park 3mey 3nbo 4zhuang
5ishan 3ri 3ssa_province 2bok_district 2ce 3hinan 4olls 6s_point 7on 3kerie_district 4ol 3olas_romero 5et 4sia
2ddrie 3erlande 9es_karibu_salas 9y_karaibskie 3walden 2ederlande 3mcy 3uw_caledonie 6zeeland 5egein 3ves 2gde
5_province 3eeria 4l 4r_state 5a 5ie 6ja 6s 3htcliff 2igata 3hama 3tsu_honcho 2jer 5ya 3megen 2kaia 4ragua 7va 6hua
3ki 3olainkaupunki 7stad 4pol 3sic 2lo 4polis 2mba 5hera 4in 3es 3roz 2nderry 3eveh 3field 3gbo 4de 4hai 4i 4xia
4yang 3h_binh 5hoa 2ort 2pani 4win 3pes 2rgua 3mal 2s 3a 3hi_tokyo_shi 5nomiya_hama 5o 3poreni 3shin 2teroi 3on 3ra
5_region 2uas 3je 3tao 2verville 2zamabad 3hnekamsk 6vartovsk 5iy_novgorod 5y_novgorod_oblast 7tagil 4yn 3ip
3ozemska 9i_karibi 9i_sveti_martin 9o 3wa 1jemacka 3ru 2ombe 1ketempornk 2ongsamba 3teng 3wakowa 2por 2werre 1newi
1oarlunga_downs 2beoka 3le_park 9k_north 5sville 2da 2gales 4ta 3insk 3rad 2ida 3sy_le_grand 2kha 2la 3eusyeping
3lamara 2me 2ng_bua_lamphu 5khai 3oichi 3thaburi 2onan 4u_atoll 3rd_korea 6macedonie 5elijke_marianen 4wegen
3sa_heads 5ville 2ra 4nda 4ville 3biton 4ury 3ceping 4hehping 4opia 3d 4_est 5korea 5makedonia 7rianene 5ouest
5ubangi 4erstedt 4horn 4korea 4land 5iche_marianen 4makedonien 6rianerna 9nerne 6zedonien 4oyar 3folk 7_adasi
8county 8sziget 7as_sala 7insaari 9sel 7o_sala 8n 8ya 6ski_otok 3ilsk 3ja 3lane 3mal 5n 6_gardens 7park 7wells 6by
6dale 7in 7y 6hurst 6ton 6ville 3ra 4botten 4cheping 6joping 4koeping 6ping 4shjopin 3sepinga 4heping 4iopingas 4ko
4unluurannikko 3th 5_abaco 7delaide 7egean 7lbury 7ndros 7voca 7yrshire 6baddesley 8lgowlah 8nk 8ttleford 8y 7each
8ndigo 8rgen 9wick 7oambee_valley 8ndi 8oval 7rabant 8ighton 6caribbean_coast 9olina 8ve 7entral_province 7harleston
8icopee 8ungcheong 7ollingham 8ogee 8wichan 7url_curl 6dakota 7enmark 7istrict 7uffield 6east 9t_lincolnshire
7leuthera 8mham 7pping 6ferriby 7remantle 6geelong 7osford 6hamgyong 8ven 7ill 9ls 7obart 8lland 9lywood 7wanghae
6ipswich 6kalimantan 8relia 8zakhstan 7essock 7horasan 7ivu 7ordofan 6la_crosse 8ke 9es 9himpur 8mbton 8narkshire
8s_vegas 7ebanon 8igh 7incolnshire 8ttle_rock 6mackay 9lean 8luku 8nly 7elbourne 7iami 6narrabeen 7ewbald
7orthamptonshire 8wra 6ossetia_alania 8trobothnia 6parramatta 7eoria 8rth 8therton 7lympton 7ort 7rovince
6queensferry 6rhine_westphalia 7ichland_hills 9hmond 8verdale 7ocks 7yde 6saanich 8vo 7hields 8ore 7ide 8nai
7omercotes 9erset 7t_marys 8amford 8rathfield 7ulawesi 8matra 8nderland 7ydney 6tamworth 8wton 7horesby 7oowoomba
7urramurra 7yneside 6vancouver 6wahroonga 8lsham 8rd 9randyte 7est 9tern 9tern_province 7illoughby 7ollongong
8nthaggi 8otton 6yorkshire 5allerton 6m 7pton 9onshire 5borough 6ridge 5cote 5east 9ern_governorate 6rn 8_ari_atoll
9borders_region 9cape 9darfur 9district 9ireland 9islands 9mindanao 9province 9red_sea 9region 9state 9territory
5field 5gate 5iam 5land 6each 5mead 5olt 6p 6rpe 5ridge 5umberland 9rland_park 5west 9_territories 6ich 4on 6_canes
3uega 3vec 5ge 6ia 7ja 5ska 4ille 3walk 4egen 6ia 4ich 4ood 3zagaray 2shiro 4opingu 2tting_hill 7ham 9mshire
2u_barris 3a_caledonie 5zeelanda 4dhibou 4kchott 9t_north 9t_south 9t_west 3mea 3poort 3velle_caledonie 9zelande
2va_caledonia 5friburgo 5iguacu 5kaledonia 9donie 9donija 5lima 5scotia 5zelandia 9ndija 4ci 4r_gardens 5a 4to
4ya_balakhna 3gorod_oblast 3i 4_pazar 5sad 5zeland 3o_hamburgo 5peredelkino 5selo 4altaysk 4cheboksarsk 7rkassk
4gireyevo 4hrad_volynskyi 4khovrino 5uybyshevsk 6znetsk 4moskovsk 4rossiysk 4shakhtinsk 5ibirsk 9sk_oblast 4troitsk
4vladykino 5olynsk 3y_zeland 4y_urengoy 5e_cheremushki 2wa_kaledonia 5zelandia 3ei 3ra 5_hill 5ngapur
3shera_cantonment 3y_sacz 2yabrsk 1rbh 1sukka 1taounkavpils 1uble 2dgee 2eva_caledonia 6esparta 6guinea
6segovia_department 6zelanda 4itas 4o_casas_grandes 6laredo 7eon 2gaal 2i 2kufetau 4laelae 4nonu 4s 2llagine 3sen
2man 4zu 3urkah 2navut 4wading 3dah 3eaton 3gua 2ova_caledonia 6zelanda 2rabad 3iootpa 4stan 3nberg 2sa_tenggara
4ybin 2tfield 2zvid 1wrkwpng 3shwbyngh 6pyng 4pyng 1xr_chex_ping 1y_caledonia 3kaledonien 2a_kaledonien 4zeeland
3gan 3la 3mira_county 3ndarua_county 4ga 3unglebin 2derlandai 2eri 5_county 2iregyhaza 2ngan 2ora 2ugat_szahara
1zerekore 9_region 0o_mon 1adby 2k_bay 4flats 4lawn 4park 3dale 4en 4owns 3engates 4y 3ford 3ham 4urst 3ington 3land
7s_park 4eigh 8_east 9south 5y 3ridge 3ura 3ville 3wood_village 2maru 3i 2tlands 4ey 2xaca 1bala_bjelokosti 3n 4do
2era 4hausen 4on 2idos 3hiro 2ninsk 2ock 3noma 2ra 3uchevo 2u 3ase 2walden 1cala 3na 2citanie 2ean_grove 6reef
6shores 5side 2hakovo_matveyevskoye 3iltree 3ota 2otepeque_department 4lan 2umare_del_tuy 1date 3wara 2e 3mis 3nse
3sa 4sa 2iham 3ntsovo 3sha 3velas 1ecusse 2ganda 2kraine 2lebeulo 2rebro 7_isvec 8kommuna 2stermyra 2zbekistan 1ffa
3enbach 6urg 3icer 1gaki 3minana 2den 2more_vale 2ooue_ivindo 7lolo 7maritime 2re 2un_state 3z 1hafia_ifigh
3ngwena_region 2inemutu 3o 2rid 1io 2ta 1jo_de_agua 1ka 3nagan 8_falls 3ra 3ya 5ma 3zaki 2cheon 2e_mesi 3gawa
3hampton 3ne 2igwe 3nawa 2lahoma 8_city 2otoks 2rika 1la 3ine 3ncho_department 4des_salas 3szorszag 3the 3varria
2bia 2d_bar 6sing 5each 4east_york 5rowal_bay 4guildford 4harlow 4kilcullen 7patrick 4leake 4noarlunga 4reynella
4toongabbie 4windsor 5oking 3bawn 4ury 3castle 3enburg 3ham 3meldrum 3s 2eksandriya 2impia 3nda 3ver 2maliq 2ney
2omouc 7_region 3ngapo 2sztyn 2t 2upona 2veston 2ympia 1maan 3gh 3ha 4eke_region 3na 5s 2durman 2e 3mee 3r
2ihachiman 2nogovi 2okoroa 3l 2ran 2sk 4_oblast 2ura 3sati_region 3ta 1nchan 2do 4_state 2e_mile 4tree_hill 3kawa
3poto 3rahi 4oa 2gjin 3ole 2itsha 2kaparinga_hills 2ojo 3michi 2slow 2tario 1onoonba 2ralea 2st_timor 4enrijk 5rhout
2ty 2ulou 1paheke 3va 3wa 2oho 3le 5_voivodeship 3tiki 2stina_kolasin 8niksic 8plav 9luzine 8savnik 8zabljak 2ua
3nake 1radea 3i 3l 3n 4_park 4a 4ga 5e 6_farm 7walk_district 6ville 4ia 4more 3tia 2bost 2chard_hills 2dino 3os 3u
2ebro 6_isvec 7kommuna 6gia 3gon 3khovo_borisovo 9borisovo_severnoye 9zuyevo 3l 4ia 4lana_province 3m 3nburg
8_oblast 3wa 2hangazi 3ei 3on 2iental 8_bay 3huela 3llia 3ta_eruwa 4o 3zaba 2kney 6_islands 2land_park 6o 3eans
2meau 6_hills 4nyorszag 4sby_st_margaret 3iston 3oc 4nd 3skirk 4town 2o_province 3covis 3miya 4octo 3pi 3qen_zizhiqi
3szorszag 2pington 2sett 3ha 3k 2ta_afrika_cumhuriyeti 2umiyeh 3ro 3zgan 2well 2yol_oblast 1sa 3ka 4i 3n 3sco 2borne
7_park 2goode 2h 3_city 4region 3ana_region 4wa 3ikoto_region 3kosh 3naviyeh 2ijek 2lo 2manabad 5iye 2nabruck 2ogbo
3rno 3yoos 2s 3etia_alania 5t 3i 2t_timor 3ankinskiy 3end 4rgotland 5ley 5myra 5rike 3fold 3ia_carelorum 3rava 4ig
4obothnia 5leka 5v_man 5w_wielkopolski 6iec_swietokrzyski 3timor 3uncalco 2un_state 2westry 1ta 3go 3huhu 3ki
3ngarei 3r_meanchey 4a 4u 3tara 3wara 2ford 2i 2jozondjupa_region 2ley 2ok_bouvet 5man 5norfolk 3rohanga 2radnyy 2su
2takring 4ppalam 4wa 3erburn_park 5shaw 5y_st_mary 3oway 2umoetai 1uadai 3gadougou 3higouya 3ka 3ngani 3rgla 4zazat
2domxai 3tshoorn 2ed_rhiou 5zem 3me 3st 3zzane 2ganda 3hterard 5ibridge 2ham 5_fafa 6pende 2idah 2jda_angad
2lad_teima 3ed_djellal 3lu 3o 3u 4_linn 2m_el_bouaghi 3e 4o 2ndle 2psala 2rense 3imbah 4nhos 3o_preto 3u
2ter_islands 3look 3well 2yen 2zbekistan 1valle 2er 4combe 4ijssel 4land_park 4strand 4ton 6wn 2idiu 3edo 2lu
2orhangay 1wairaka 2en_sound 4sboro 3rri 2hiro_bay 2meo 2o 2ston_ferry 1xbow 2enford 4hope 2ford 6shire 2ley 5_park
6vale 2nard 2shott 2ted 1yama 3n 2o 3_state 2ster_bay 1zamiz_city 2bekistan 2erki 4sk 2one_park 2ubulu
0paapua_uus_guinea 3rl 2bianice 3na 2catuba 3huca_de_soto 3ific_paradise 9ines 7a 3o 2dalarang 4ng 6sidempuan 3bury
3dington 4ock_wood 3erborn 3iham 3ova 3stow 7_heights 2ekakariki 3roa 3si_bassi 2fos 2gadian 4r_alam 3e 4t 4wood
2hama 4ng 3iatua 2ignton 3hia 3jat_hame 3lin 4ou 3nswick 3ses_baixos 9ixos_caribenhos 9jos 4ley 3ta
3vantasaajan_guinea 2k_kret 3aratehi 3enham 8_upper 3ina_wharo 4stana 9s 5ztan 4tane 3okku 3pattan 3se 3tia 5ka
3uranga 9_heights 2laio_faliro 4kollu 4ng 6karaya 5i 5pur 4os 4sa 5tinensische_autonomiegebiete 4tine 4uli 4v
3embang 4ncia 4rmo 4stiina_alad 9alaisalue 7jnse_gebieden 7nas_teritorijas 8os_teritorija 8ska_territorierna
9ka_uzemi 9ke_uzemia 9ko_ozemlje 9ko_podrucje 5ztin_autonomia 3ghar 6t 3hoca 3i 4manan 4n 4tana 3lavaram 4e 3m_bay
6each 9h_gardens 5coast 7ve 5desert 5harbor 5island 4a 5_soriano 5s 4dale 4ers_green 7ton 9n_little_italy 9n_north
9wn 4i 5ra 4woods 4yra 7_atoll 3o_alto 5negro 4ncha 4po 3tan 3u 3wal 5ncha 2mandzi 5ukan 3ekasan 3pan 5tar 4ierstad
4lemousses 5ona 3ulang 4ra 2nabo 4ji 4lanoy 4ma 6_oeste_province 4nia 3cevo 4hkula 3dak 4eglang 4harpur 4o 3evezys
3gbourne 4kalpinang 4nirtung 3ihati 4pat 3jshir 3kow 3long 3mure 3nal 3o_aqil 4rama 3ruti 3shan 5i 3t 4in 4on_hill
3vel 3zhihua 4os 2ola 3y_paet 2pakowhai 5ura 4ntla_de_olarte 5ui 4rangi 4toetoe 6he 6wai 3ineauville
3oea_nieuw_guinea 4uasie_nouvelle_guinee 3ua 5_jaungvineja 6naujoji_gvineja 7euguinea 7oua_guinee 8va_guine
9a_guinea 9a_gvineja 8wa_gwinea 7ueva_guinea 8kini 8ova_guinea 7y_guinea 8a_guinea 6uj_guinea 7usi_guinea 6yeni_gine
3worth_everard 2quistao 2r 3_naogaon 3a 4_de_minas 6istrict 5hills 9s_west 5vista 4burdoo 4catu 4dip_garh 6se
8_point 5sasvar 4field_gardens 4gominas 5uai 7j 7ri 5vaj 8a 8us 5waj 4iba 4kai 5ou 4lowie 4magudi 6ribo 9o_district
5ount 4na 6gua 6que_city 6vai 4p 5araumu 4u 5apebas 3bhani 4old 3c_boutin 3dubice 9_region 3e 4ina 4mata 5oremo
4pare 3iaman 4hi 4nga 5tins 4s 3k_avenue 5grove 5holme 5orchards 5ridge 9e_south 5slope 4chester 4dale 4ent 5rville
5s 4hill 5urst 4inson 4lands 5ea 4side 5tone 5ville 4ville 4way 5ood 8s_donalda 3la 4i_vaijnath 3ma 4elia 3naiba
5mirim 5s 4ell 4umaa 3o 3ral 5matta 9a_park 4earra 4sboro 4y_sound 3sabad 4ippany 3tington 4ridge_green 3ung
3vatipuram 3wan 3ys 2sadena 4rkemis 4y 3co 5e_vale 9le_south 3eh 3ig_city 4r_mas 3ragad_branch 4ur 3sage_west 5ic 5u
4o_fundo 5s 3taza_province 4o 3uruan 2tan 3ea 4ley_bridge 4rna 5son 3hankot 4ein 4um_thani 3i 4ala 4llas 4ya 3na 4os
3o_branco 4s 5_de_minas 3ra 4ick 5ngton 4ocinio 3tani 5ya 4erson_lakes 4i 5ngham 4oki 4ukkottai 3uto 3zcuaro 4un 2u
3anui 4tahanui 3l 4inia 5sta 4o_afonso 4ton 2via 3lodar 8_region 5hrad 5vo 6skiy_posad 2wtucket 2yakumbuh 3neham
8_south 5sville 3s_bas 8_caribeens 4andu 8_department 3yannur 2zardzhik 1eabody 3ce_river 5haven 4hester 5land
3k_hill 4hurst 9_heights 3rce 6dale 4l 5and 4sall 3sedown_saint_john 4lake 2c 3angaan 3kham 3s 2dernales_province
3regal 4o_juan_caballero 2ebles 3l 2gasus 3s_creek 4wood 2hchevo 2icheng 3na 2kalongan 4nbaru 2labuhanratu 3eliu
3ican_narrows 8waters 3mo_park_humberlea 3oponnese 4tas 3sall 3ton 2ma 4gatshel 4lang 4tangsiantar 3ba 5_north
6south 4erton 4roke 8_dock 9pines 8shire 4ury 3ulwuy 2n_clawdd 3aflor 4l_debe 4ma 4ng 4polis 4rth 3cader 5itland
4oed 3dle_hill 3ehuera 3gcheng 4uin 3hold 3icuik 4na 4stone 3kridge 3maenmawr 3nant_hills 4ington 4sylvania 3ola
3parcau 3rhyn 7deudraeth 4ith 4yn 3sacola 4hurst 4ilva 3ticton 4re 4yrch 3uelas 3yffordd 4groes 3za 5_oblast 5nce
2oria 2ppermint_grove 2rai 4k 4ra 4via 3baungan 3cut 3egian_beach 9springs 4ira 4tiama 3gamino 3ico 4hi 4steri 3lis
3m 4_krai 3nambuco 4ik 3o 4u 3pignan 3ranporth 6well 4is 4y 5_vale 3shore 3th 5_amboy 7nd_kinross 6city_centre 3ugia
4ibe 4u 3vomaysk 5uralsk 2saro 3cara 3hawar 3nica 3sac 3t_county 2ta_riko 4h_tiqva 4ling_jaya 5uma 4pa 4re 4wawa 3en
4rborough 5culter 5head 6of 5lee 5sfield 6ham 3ionville 3lad 3njica_municipality 3one 3rie 6_terrace 4odvorets
5gradka 5lia 7na 5pavl 9ovsk_kamchatsky 6olis 5upolis 5vec 5zavodsk 3worth 2vensey 8_bay 2wsey 1flugerville 2orzheim
1hagwara 3laborwa 4tan 3n_thiet 4g_nga 3rr 3si_charoen 3tthalung 3yao 2etchabun 9ri 2ichit 3ladelphia 4ippinen 4lip
7_island 3tsanulok 2nom_penh 2oenix 7_islands 3ng_dien 5sali 2ra_phutthabat 6radaeng 4e 2u_quoc 4tho 3ket 3sro
3thaditjhaba 1ia 3cenza 3lba 3nura 3ra_waters 3tra_neamt 3ui 2ccadilly 3heng 4incha 3kering 3nic_point 3o_rivera 4s
3ton 5u 4ure_butte 2e_creek 3decuesta 4mont 4ras_negras 3kary_slaskie 3rre 6ville 3t_retief 4ermaritzburg 4u_afrika
6koreja 6sudanas 2kine 2la 4r 3ibhit 3khua 3ning 3ot_butte 3sen 4ley 3town 2mlico 3pama 4erne 4ri 2nar_del_rio
3chbeck 5er_creek 4ourt 3damonhangaba 4iga 3e_hill 9s 5mountain 4haven 4llas_park 4town 3gdingshan 5u 4jin 4liang
4nan 4shan 4wu_county 4xiang 4yi 6n 4zhuang 3hais 3jarra 3ner 3sk 3xton 2o 3neer 3trkow_trybunalski 2racicaba 4eus
4nshahr 4pora 4ssununga 3bright 3ipini 3kanmaa 3ojpur 4ngia 3ton 2sa 3cataway 4o 3hva 3toia 2ta 4_kotte 4lito
3cairn_adalari 9szigetek 8eilanden 8i_saared 9nseln 8oarna 9ve_ostrovy 9vi_otoci 9vy_ostrovy 9yene 3esti 3hampur
5puram 3i 4keina 3kernas_salas 7o_salos 3lochry 3medden 3sea 4tone 3t_meadows 5town 4enweem 4sburg 9h 5worth 2ura
2vka 2zhou 1lacentia 5tas 3ines_wilhems 5field 5land 5s 4sance 3naltina 4eta_rica 4ken 4o 4tagenet 6tion 3ridel
3snica 3teau 7_central 8state 7x 4tsville 3uen 3ya_del_carmen 4ter_estates_danforth 2ean 4sant_point 9view 8on 3iku
3nty 3ssisville 3ttenberg_bay 3ven 2immerton 2jevlja 2ock 3iesti 3vdiv 2umbon 4pton 8_green 4stead 2ymouth 4pton
8_park 4stock 2zen_region 1oa 2brezi_slonoviny 7e_slonoviny 2catello 3klington 3os_de_caldas 2dgorica 3lasie 3olsk
2fadder 2gradec 2hang 3enegamook 3ja_korea 6makedoonia 8riaanid 4ois_korea 8makedonia 9ariaanit 3npei_state 2inciana
4t_chevalier 7lare 7ook 6fortin 7rederick 6lonsdale 6pedro 7iper 6vernon 5e_calumet 8laire 7du_lac 7la_rue 7noire
3tiers 2k_fu_lam 3eno 3hara 3olbin 4t_county 3rovsk 8oye_streshnevo 2lanco 5d 5gui 4tli 5sk 3beth 3en 4sworth 4ubo
4vskoy 4wali 3i 4chni 4ja 4nesia_francesa 9_francese 6zia_franceza 7ja_francuska 3jska 3lachi 3mont 3ogne 4kwane
4molok 4nia 5ya 3perro 3sko 3tava 3vamaa 3ynesie_francaise 3zeath 2merania 5oon_supenaam 3ona 3pano_beach 2nce
3d_inlet 4ers_end 3ferrada 3gia_herekowini 3nani 4ur 6u 3oka 4rogo 3sonby 3t_rouge 4a_grossa 6pora 5rddulais 4efract
5land 5sbury 5vedra 4iac 6n_kechil 7ak 5celli 4lliw 4yates 5berem 5clun 6ymer 5pool 6ridd 2o 3l 4a 4e 3raka 2payan
3rad 2rana 3bandar 3i 4ngland 4rua 4s 4wana 5ia 3lamar 4ock 3onai 5ehia_wiwi 3t_adelaide 6lberni 7fred 6rea 7thur
6u_prince 7gusta 9sta_west 5bannatyne 6lair 6roughton 5cartier 6halmers 8rlotte 6olborne 7quitlam 5de_paix 7nison
6ickson 6ouglas 5elizabeth 7liot 6rin 7roll 5fairy 5gentil 6lasgow 8ud 5hacking 7rcourt 7wkesbury 6edland 6ope
5kembla 7nnedy 5lincoln 6ouis 5macquarie 6cneill 6elbourne 6oody 7resby 5noarlunga 9lunga_south 5of_spain 6range
5pirie 9e_south 9e_west 5rowan 5said 8nt_lucie 6hepstone 6orell 6t_mary 7anley 6udan 5williams 9unga 4adown 5ferry
5ge_la_prairie 8park 5legre 5rlington 5vogie 4ekiz 5rville 4glenone 4hcawl 5leven 5madog 4ici 5shead 4knockie 4land
8_parish 6oise 6w 5ethen 4marnock 5ore 4neuf 4o 5_alegre 6feliz 6novo 6rico 8ko 6seguro 6velho 5bello 5gallo 5rico
7ko 6yko 5viejo 4raine 5ee 5ush 4scatho 5lade 5mouth 9h_heights 5oy 5tewart 5wood 4ugale 8i 9a 9ja 8ska 9ko 6uesa
5mna 3uvuo 3va 5s 4o 5o 3y 3z_am_rhein 2sadas 3tmasburg 2taro_siparuni 3chefstroom 3enza 3iskum 3osi 6_department
3sdam 3terne 6s_bar 7pury 4on 4s_point 5ville 9e_beach 3ukara 2ulton_le_fylde 3so_alegre 2wassan 4y 3ell_river 2yang
3nton 2zega_slavonia 3nan 3uelo_de_alarcon 3zuoli 1rabumulih 3chin_buri 5uap_khiri_khan 3ga_polnoc 9udnie 4ue 3hova
4ran 3ia 5_grande 4riewood 3ncuzija 9os_gviana 9os_pietu_sritys 9os_polinezija 4tsuse_guajaana 9_lounaalad
9_poluneesia 8maa 3to 2eah_sihanouk 6vihear 3bbleton 4old 3eceville 4sall 3ilu_novads 3nton 4zlauer_berg 3scot 7t
4idente_franco 9e_hayes 9e_prudente 4nenskiy 4ov 6_region 4tatyn 5bury 5eigne 5on 7pans 7s 5wich 8k 3toria 3vost
3y_veng 2ice_town 3eska 4vidza 3lep 3mbee 4orje_gorski_kotar 6ye 3nce_albert 7edward 9ward_island 7george 7rupert
6s_hill 8risborough 8town 7s_rosethorn 6ton 8wn 6ville 5ipe 3stina 3zren 2obishtip 4olinggo 4us 3ddatur 3khladnyy
3serpine 4pect 8_vale 6rous 3vidence 5nce 4o 5st 2udhoe 3szkow 2yluky 2zemysl 1skov 5_oblast 1ubal 2callpa 3heng 3k
4apunyal 4eridge 4lechurch 2ddletown 3sey 3ucherry 4kkottai 2ebla 5o 3nte_alto 7de_vallecas 3rto_ayacucho 7barrios
8errio 7cabello 7eldorado 7la_cruz 7madryn 9ldonado 8ontt 7padre 8enasco 8lata 8rincesa 7rikas 7vallarta 6llano
6riko 2ji 2kapuka 3ekohe_east 4rua_bay 2l_e_khumri 3a 4ndian 3borough 3heim 3i 4lan 4yangudi 3lenvale
3ong_santa_cruz 2nakha 4sa 3chbowl 3e 3ing 3jab 3o 3ta_alta 7renas 6cana 8rdon 6de_mata 5renas_province 4ledge
4o_fijo 2ola 2p_makao_kina 2qi 2rbalingga 3fleet_on_thames 3i 4ficacion 4ton 3ley 3merend 3nia 3sat 3ton 3ukaria
4liya 4niti 3wakarta 4odadi 5kerto 2sad 3hkin 7o 3iaujo_gvineja 2tana 4tan 3hia 3ian 3ney 3ra_heights 5jaya 3tur
3umayo_department 2yang 6_chengguanzhen 1wani 2llheli 2rww 3y 1yapon 3tigorsk 3y 2in_oo_lwin 4mana 2le 2mble 2ongan
5yang 2rford 3mont 0qabala_district 2lyub 6ia 2mdo 2racuxur 4qash 3chak 3shi 2shqadaryo 2x 2zax 3vin 6_province 1ena
2qertalik 3qata 1ianjiang 4tang 4zhou 3oguan 4tou 2na 3cheng 3gdao 4fu 4gang 4hai 4nian 4quan 4shuping 4xichang
4yang 5uan 4zhou 3huangdao 3nan 3zhou 2onghai 6u 5shan 2pan 2qihar 2ryat_ata 2shan 2taihe 2uji 1obustan 2m
3_province 2rmi 3veh 3yooley 1rlsqrwnh 4td 1uakers_hill 3n_duc_thanh 9thinh 4g_ngai 7inh 6tri 4zhou 3rry_hill
3tre_bornes 2ba 4dli 2chan 2eanbeyan 9n_east 9n_west 3bec 4radillas 3enborough 5s 6_park 7village 6bury 6cliff 6dale
6ferry 6land 6town 9n_estate 6wood_heights 5ton 3imados 3limane 4uz 3nia 5borough 3retaro 3snel 3tta 4zaltenango
3vedo 3zon_city 2fu 2i_nhon 3bdo 4or 3che 3llacollo 5ota 4mes 4pue 3mper 3nara 4cy 4dalup 5io_department 4ns_rocks
4tana_roo 5e_west 3rguistao 4ibati 5ndi 3to 2jing 2lsary 2neitra 3ghirot 2orn 5don 2rayyat 2s 3ar_district 3hi
2thbullapur 4ing 2zhou 1wpyw 2tqh 0raa_atoll 3veli 2bak 4t 5_sale_kenitra 3kavi 3y 2ceview 3h_gia 3iborz 4ne 3kheath
2dcliffe 9_on_trent 3es 3lett 5y 3om 5ir 4vish 5ljica 3stock 3yr 2eaeveli 3bareli 2faela 4h 3sanjan 2gged_island
3hogarh 3lan 3usa 2ha 4ti 3eny 3im_yar_khan 3lstedt 3otu 2ichur 3ganj 5rh 3lway_estate 3nbow_beach 4ford 4ham 5ill
4worth 3onul_edinet 8ocnita 3piria 4ur 2j_nandgaon 3ahmundry 4npur 4palaiyam 4sthan 3biraj 3in 3kot 3pur_sonarpur 6a
3samand 4hahi 8_division 2kahanga 4ia 4puo 3e 3hine 3ousko 3usko 2leigh 2madi 4gundam 4nathapuram 4rama 4t_gan
3elton 4nki 5skoye 3ganj 5rh 4undam 3la 3nagar 4icu_valcea 3on 5a 4s_arizpe 3pur 6_hat 3sbottom 5ury 4ey 4gate
8_beach 2naghat 3cagua 4hi 5o_cordova 8ucamonga 7penasquitos 3dalstown 4burg 4ers 4fontein 4olph 4wick 3elagh
3geville 5way 6ood 4iora 5riri 4kasbitung 4pur 7_division 3i 4a 4bennur 4ganj 4pet 3kin_inlet 7park 4ovce
3ong_province 3ska 6n_guayana 8polynesia 5ill 3tauprapat 2oho 2paura 3hoe 3id_city 7reek 3lamaa 3penranta 2qqa
2rotonga 2s_al_khaimah 4di_macao 4el_oued 4macao_china 3ht 3mussen 3on 3trick 2tanakiri 5garh 3by 3chaburi 3h 4angan
4coole 6rmac 4downey 5rum 4farnham 5riland 4gar 4keale 4mines 4new 4o 5_station 4wire 3ingen 3lam 3nagiri 3oath
2umanga 5ti_beach 3nds 3punga 3reka 4kela 2venhall 5na 5sbourne 6head 7oe 6tone 6wood 2walakot 5pindi 4na 5g 3cliffe
3don 3ene 3hia 3marsh 3orth 3tenstall 2y 3achoti 4drug 3leigh 3mah 4ond 7_terrace 3ne 3ong 3side_balfour
2zavi_khorasan 3grad 3orback 1eading 2chytsa 3ife 3klinghausen 4o 3onquista 2d_cliffs 4deer 4hill 4lake 4sea 3a 4n
5ge 3bank 7_plains 4ourn 3car 6_and_cleveland 4liffe 8s 3ding 7muirhead 5tch 3encao 3fern 3head 4ill 3land_bay 7s
4ynch 3mond 3onda 6o_beach 3ruth 3wood 7_city 8park 7town 2edham 4y_creek 3pham 3t 2gatul_unit 3ency_downs 5sburg
5t_park 6s_park 3gio_calabria 3haia 3ina 6_beach 4on_of_magallanes 3no_unito 3uiba 2hovot 2id 3ga 5te 3ms
3nickendorf 4jona 4o_unido 3tz 2lizane 2mchi 3edios 3ich 4gio 3scheid 3uera 2ndlesham 3frew 7shire 3gasdengklok 3i
3mark 7_west 3nes 3o 4wn_park 3qiu 3ton 3ukut 3wick 3zhao 2panona 3entigny 3ton 3ubblica_centrafricana 9a_dominicana
5lic_of_tyva 8a_centrafricana 9_centro_africana 9_centroafricana 9_do_congo 9_dominicana 9_moldova 9n_subordination
7k_moldau 8a_poludniowej_afryki 9_srodkowoafrykanska 9_zielonego_przyladka 7que_centrafricaine 9e_dominicaine
2search 4n 5de 4rvoir 3istencia 4ta 3olven 3sano_garcia 3ton 2talhuleu 3ford 3iro 3reat 2uniao 5o 6n 4jonas 3s
3tlingen 4ov 2val 3da 3el 5stoke 4re 4sby 7_heights 2wa 4ri 2xdale_kipling 2yhanli 3kjavik 3nella 8_east 4osa 2zekne
7_municipality 3ina 1hayader 2eine 5hausen 5land_pfalz 2ine_westphalia 2ode_island 5s 3ndda 7_cynon_taf 3ose
3sllanerchrugog 4neigr 2u 3ddlan 2yl 3mney 1i_ka 2alto 3u 4_islands 2beira_brava 8grande 7o_das_neves 9pires 9preto
4ralta 3nita 2ccall 5rton 3hards_bay 8on 4elieu 4ibucto 4land 8s 4mond 8_hill 3kinghall 4mansworth 2dder 3eau_park
3gehaven 5town 5wood 3ing_of_yorkshire 3leyton 2epaya 3tumsahara 2f_dimashq 2ga 4_beach 5strand 4e 4s_iurmala
6jormalas_pilseta 7urmala 6yurmala 5trand 4ud 3e 3g_a 3o 2ia 3gaa 3ka 2ja 3eka 2ka 4ze 3enetaina 2llington 2mbey
3ini 3ouski 2ncon 3gmer 4send 5tead 4wood 8_east 9north 3shepingu 2o_branco 4claro 5uarto 4das_ostras 5e_janeiro
7mouro 5o_sul 4gallegos 5rande 4largo 4negro 9_department 4rancho 4tercero 4verde 3bamba 3hacha 3negro 3verde 2pia
3ley 3on 3ponden 6lea 2qa 2saralda_department 3ca 5ni 3don_park 9rk_south 7vale 3eley 3hikesh 4on_letsiyyon 4ra 4ton
2tchie 3to 3uania 2unione 2vas_department 6vaciamadrid 3er_cess_county 6gee_county 6heads 6nile 5a 6_department
5head 6ills 5s 6_state 6dale 6ide 6tone 9e_terraces 5ton 5vale 6iew 5wood 4tt 3iere_du_loup 9u_rempart 8rouge 3ne
5_oblast 2yadh 6_region 2ze 4_province 3hao 1oade 3noke 3vvenjarga 2baniemi 4t_karim 3e 4rtsbridge 7on 9pet 5val
3ina 5vale 3lin 2cha_department 4dale 4e 5_caiman 5dale 9_south 5lle 5rlea 5ster 9_hills 4ford 7tbridge 3k 4_forest
5hill 4bank 4cliffe_smythe 4dale 4ford 4hampton 4ingham 9m_city_centre 4lea 5in 4ville 4wood 4y_mount 9ntain_house
2dd_point 3e 4_heath 4nkirchen 3os 3rigues 8z 2ebuck 3hampton 3menie 3selare 2galand 3ers 6_park 3iet 2ha
3eneemesaared 3ini 3ri 3tak 2i_et 2keby 2landia 3eystone 3leston 2ma 4ine 4n 5ya 3e 4inia 4nia 3ford 3ney_marsh 3sey
4ley 3ulus 4nija 2n 3cesvalles 3da 4ebosch 4onia 6opolis 3gelap_atoll 4rik_atoll 3ianemi 2odepoort 3rkee 3sendaal
5velt 3tsi 4y_hill 2par 4zi_municipality 3es_crossing 2quetas_de_mar 2raima 2sa 4nna 4rio 6to 3coe 5mmon 4rea 3e_bay
5island 5park 4bank 5ery 5ud 7_west 4dale 8_moore_park 4hearty 5ill 4lands 4mead 8ow 6re 5ount 4neath 5heim
5thal_heights 4town 5ta 4ville 9_chase 4water 5ell 5ood 3ja 3kilde 3lavl 4in 4yn 3neath 3oman 3s 4_creek 5on_wye
4endale 5tt 4land 6re 5ea 5yn_park 4more 6yne 4osh 3thern 4ock 5v 6_na_donu 4revor 3well 3yth 2ta 3hbury
4erfield_peppard 6ham 7ithe 5s 6ay 8_bay 4ienorman 4ley 4well 3orua 3terdam 4ingdean 3uma 2ubaix 3en 3ge 5mont
3issat 3manie 3nd_rock 3se_hill 3yn_noranda 2vanem 5iehmi 7mi 9_linn 9s 7ni 6jemi 3igo 3nikova_guinea 3uaniemi 2wde
3hedge 3lands_gill 4edge 5tt 5y_regis 3ville 2xas_city 3burgh_park 4y_downs 2y 3al_leamington_spa 6oak 6park
6tunbridge_wells 6wootton_bassett 4ume_uni 3don 3ston 7_park 3ton 2za 4je_municipality 3elle 1uabon 3kaka 3nda
3rdean 3wai 2bi 4o 4zhne 3tsovsk 2da_slaska 3dington 3gwick 3nyy 2eil_malmaison 2fford 3ino 2gao 3by 3eley 3gell
2hia 2iru 3slip 2kban 3wa 2m_cay 3aenien 4nien 6ja 3eenia 3onge 3unia 6ja 5jska 5sko 2naway_bay 3corn 3do 4u 3ing
2otsi 6nsalmi 2pert 2ral_view 2se 3hcutters_bay 4den 4en 4worth 3ia 4ja 3kington 4o 3land 3seifa 5ll 7_island 8lea
8vale 6sheim 4ie 4land 3taq 5vi 4enburg 4hall 4ic 5ngton 3ya 2tana 3e 3herford 6glen 4in 2vuma 2wa 2yigi
3ton_xi_towns 2za 1wbnyymy 2fanyymy 2wanymy 1yazan 6_oblast 6skiy 2batskoye 3insk 3nik 2dalmere 3e 2e 2ga 3h 4a
2hall 3ill 3ope 2ja 2ssland 2ton 5_on_dunsmore 3u_timoras 2ugasaki 1zeszow 2hev 0s_hertogenbosch 2t_barthelemy
4helena 4karins 4lucia 4michel 1a_dec 3kaeo 2alomoni_saared 3nichton 3ra_ocidental 4brucken 4e 4land 3tli 2ba 4c
4dell 4e 4h 5_as_salim 4na_grande 6larga 4ragamuwa_province 3den 3ha 5_district 3inas 4rabad_district 3ratah
3t_alalayah 3ya 3zevar 2caba 4tepequez 3kville 3ramento 4e_coeur 4iston 2da 4deen 3diqabad 3leir 4iers_crossing
2fety_bay 8each 3fron_walden 3i 2ga 4ing 7_region 4r 4y 3gart 3rada_familia 3ua_la_grande 4enay 4nto 2hagun 4m
4ra_occidental 9cidentala 9cidentale 7zachodnia 6npur 5sa 4swan 3el 3ibganj 4wal 3uayo_de_morelos 2i_kung_district
3da 4pur 3jo 3nt_agnes 7lbans 8exandre 7mable 8broise 7ndre_avellin 9rew 9rew_parish 9rews 9rews_beach 8n_parish
8selme 8thony 9oine 7saph 7ugustin 6barnabe_sud 7ees 7oniface 8swells 7rieuc 8uno 6canut 8therine_parish 7esaire
7harles 7lair_shores 8ears 8oud 7olumb_major 8me_liniere 8nstant 7roix 9ix_island 7yrus 6damase 8vid_parish 9ids
7enis 9nis 6edouard 7lzear 7tienne 7ustache 6felicien 7rancis_xavier 6gabriel 8llen 7edeon 8orge 9rge_basseterre
9rge_gingerland 9rge_parish 9rges 9rgeʼs 7illes 6helena 8nri 7ippolyte 7onore 7yacinthe 6isidore 7ves 6james
9es_parish 9es_windwa 7ean_baptiste 8rome 7ohn 9n_capesterre 9n_figtree 9n_island 9n_parish 9ns 8seph 9eph_parish
7ulian 6karin 7ilda 6laurent 8wrence 8zare 7eonard 9nards 7iboire 8n_laurentides 7ouis 7ucia 9ia_estuary 9y
8ke_parish 6malo 8rc 9k_parish 9tins 9y_cayon 9y_parish 9ys_bay 8thieu 7ichael 9hel 7onans 6nazaire 7eots 7orbert
6osyth 6pacome 8scal 8trick_parish 8ul 9l_capesterre 9l_charlestown 9l_parish 7eter 9er_basseterre 9er_parish 9ers
9ersburg 7hilip 9lip_parish 7ie 9rre 7rime 6quentin 6raphael 8ymond 7emi 6sauveur 8viour 7imeon 7tephen 6thomas
9mas_island 9mas_lowland 9mas_parish 7ite 6venera 7ictor 6zotique 5e_adele 7beatrix 7catherine 8roix 7elisabeth
7julie 9lienne 7madeleine 9rie 9rtine 7sophie 7thecle 9erese 5field 3pan 3tama 2kado 4i 5decho 4kah 4rya 4ta 3ha
5lin_oblast 3i 3on_nakhon 3sa 5maa 3u 4ra 6i 2l 3aberry_de_valleyfield 4h_ad_din 4j_county 4lah 4ma 6nca 7der_bay 6t
5on_szigetek 6unovy_ostrovy 5unove_ostrovy 4qi 4spils_municipality 4tiga 4van_province 6t 3combe 3danha 4us_rajons
3e 4_al_jadida 4m 4rno 3ford 7s 3iamono_salos 4hli 5orsk 4na 6_cruz 6s 5e 4sbury 9_downs 9_east 9_heights 9_north
9_park 9_plain 3lins 4uit 4ynoggin 3mas 4o 5n_arm 3omonen 7oarna 8erne 8vi_otoci 9i_otoki 8yene 7saaret 8eilanden
3sburgh 3t_ash 5lake_city 5spring_island 4a 5ir 5sh 4coats 4er_point 4ford 4illo 4o 5_department 3ur 3vador 8a 9s
5leon_de_higuey 3wador 3yan_district 3zburg 4gitter 2malkot 5ut 4na 5gan 5nud 4ra 6_oblast 5inda 5kand 5qand_region
5ra 4stipur 4xi 3balpur 5va 4hal 4ia 4rial 4uru_county 3drup_jongkhar 3ford_valley 3mamish 3oa_americaines 9ricana
9ricane 9rykanskie 3pang 4ford_peverell 4it 3son 4un 3tse_district 5khe_javakheti 3ut_prakan 6sakhon 7ongkhram 4x
2n_andres 9s_tuxtla 6gelo 6tonio 4bartolome 5ernardino 9rdino_tlaxcalancingo 9rdo 5las_canillejas 4carlos 5lemente
5ristobal 4diego 4felipe 6rnando 5rancisco 4german 4ildefonso 5sidro 4joaquin 6se 8_department 9pinula 8cito 5uan
8_bautista 9laventille 9province 9sacatepequez 4leandro 5orenzo 5uis 8_potosi 4marcos 7inas 9o 7tin 9n_department
6teo 9_atenco 5iguel 9l_department 9lito 4pablo 5edro 9_ayampuc 9_department 9_sula 4rafael 6mon 5emo 4salvador
9dor_department 9dor_tizatlalli 5ebastian 6vero 4tan_valley 4vicente_department 3aa 5_governorate 5g 4ndaj 3caktepe
4hazi 5ez_ramirez 5uan 4ti_spiritus 9iritus_province 5uary_point 3dacho 5kan 5ohezi 5un_province 4bach 6nk 4efjord
5rstead 4ford 4gate 4hurst 4ila 4nes 4own 5y 4ringham 4stone_point 4u 5r 4well 5ich 7k 6p 4y 5_bay 7each 6ground
6hill 9ls 6springs 5ford 5mount 5s 3ford 3gamner 5reddi 4ha 6_mbaere 6r 4ju 4la_hill 5i 4melima 4rur 3he 4ui 3jo
3kt_augustin 6gallen 6karins 6michel 4uru 3liurfa 4ucar_de_barrameda 3ma 5rino 4enxia 4ing 3nat 3o 3quhar 3s_souci
4hui 3t_andreu 5marti 4a_ana 9_department 6barbara 9bara_department 6catarina 9arina_pinula 7lara 9rita 7ruz
9z_department 9z_xoxocotlan 6elena 6fe 6helena 6ines 7sabel 6lucia 9ia_cotzumalguapa 8zia 6maria 9ia_chimalhuacan
9ta 7onica 6rita 7osa 9a_department 6tecla 5na 7_de_parnaiba 9o_livramento 6der 9_de_quilichao 9_department 6gpu
5rem 4ee 5lena 4iago 8_de_compostela 9de_cuba 9de_queretaro 9de_surco 9del_estero 9metropolitan 9province 9rodriguez
9teyahualco 4o_andre 8gelo 8tonio 6domingo 9ingo_este 9ingo_oeste 9ingo_province 6tomas 9e 5l 5me_un_prinsipi 5n 5s
4s_montjuic 4utxu 3xia 3ya 4i 3zhuang 2o_bartolomeu 5orja 4carlos 5ristovao 4domingos 4filipe 4gabriel 4jose 4lazaro
5eopoldo 5ourenco 5uis 4martinho 6teus 5iguel 4paulo 4roque 4sebastiao 4tome 8_island 4vicente 3edi_arabie 2pcote
3ele 3iranga 3phire_beach 4oro 3ucaia 2qqez 3uarema 2r_e_pul 4hongkong 4macao 3aburi 4i 4jevo 4macca_district 4ndi
5sk 4pul 4sota 4toga 6v 7_oblast 4wak 3celles 3darshahr 4inia 3godha 3h 3i 4na 4shabari 4won 3kand 3nia 3ov
3pang_district 4ol_e_zahab 4sborg 3ria_sant_gervasi 3trouville 2sebo 3katchewan 6oon 3olburg 3safras 5ndra
9_marahoue 5ri 2takahoma 5unta 4ra 3kania 4hira 3na 3sumasendai 3tahip 4e 5napalle 3u_mare 9_county 4n 2uda_arabija
4i_araabia 9bien 5arabien 5jska_arabija 4o_arabija 5va_arabija 4ska_arabia 9rabie 3ghall 4or 3lkrasti_municipality
4t_ste_marie 3ndersfoot 2va 4nes 7_district 5nah 7khet 9et_province 6e 4rkundla 3e 4h 3o 4na 2wai_madhopur 4ngan
3bridgeworth 3ston 3tell 4ry 3yers_bay 2xilby 3mundham 3ony 6_anhalt 2yama 3hat 3yan 1calby 4loway 3rborough
9gh_village 4croft 4ness 3wby 2haan 4erbeek 4ffhausen 4umburg 3ellenberg 4nectady 3iedam 3leswig_holstein 3ofields
4les 4neberg 3wabisch_gmund 4eden 5infurt 6zer_reneke 5rin 6te 4yz 2ole 3ne 3resby 4ton 3tby 4land 4t 5burgh 5er
5sdale 2ranton 2ullin 3nthorpe 1eabrook 3cliff 8_park 4ombe_gardens 9heights 3field 4ord 7_meadows 8rise 6th 3ham
4olme 5uses 3scale 3ton 6_delaval 5un 4tle 3view 7_downs 2bastian 6opol 2chelt 3ret_harbour 3unda 6erabad 2dbergh
3don 3ertele 8je 5uterie 3gefield 3hiou 3rata 2eb 3nu 3r_green 2frou 3ton 6_park 2gamat 3hill 3ou 4via 3uela 2hore
2icheles 3naejoki 9i_linn 5joki 9_linn 5yoki 4ejokis 5yoki 4jogi 3seliai 6lid 6u_salas 2jnejoki 4jajoki 3ong 6_si
3seli 2kondi_takoradi 2langor 3by 3enge_province 3ibe_phikwe 3kirk 3licks_beach 3ma 3ong 3sey 3va_alegre 2maphore
9_park 9_south 4rang 3enovskoye 5yih 4y 3nan 3porna 2n_bartelemi 4martenas 3ador_canedo 3bartelmi 3d 4ai 4hwa 3egala
8s 4kal 3gkang 4lea 3martena 3nar 4eterre 3pjera_un_mikelona 3t_lusija 4a 4jur 4kitsa_un_nevisa 4lusija
4vinsenta_un_grenadinas 2ogwipo 3ngnam_si 4i 3san 3ul 2pang 4tan 3ik_province 3t_iles 2raing 4ng 3bie 6n 5ja 3ekunda
4mban 3gipe 5yev_posad 3ilingampalle 3mersooq 3opedica 4v 3pentine 4ong 4ukhov 3ra 5_leoa 6talhada 5valle 4es
3taozinho 3vie 2sto_san_giovanni 3vete 3zele 2te_lagoas 3if 3o 3tat 4le 3ubal 2utogholleum 2vastopol 9l_city
3en_hills 6mile_beach 6sisters 5oaks 5teen_mile_rocks 4rn_beach 6a_korea 9oreja 8makedonija 6e_macedonsko 9ariany
6i_korea 8makedonie 9arianski_otoki 9ariany 6yy 5odvinsk 6morsk 5sk 3illa 6e 7_grove 2won 2xsmith 2ychelle_szigetek
9n 9ne 9rna 9rne 8it 7y 3disehir 3mour 3seller 1fanta_elena 7lucia 5u_gheorghe 6l_martin 3x 4_governorate 1ha_tin
3anxi 3bqadar 4ran 4wah 3che 3doxhurst 4rinsk 4well 3ftesbury 3gamu 3h_alam 4abad 5da 4dad_kot 7pur 5ol 4echeng
4janpur 4kot 4r_e_babak 8kord 5e_jadide_andisheh 5iar 6sabz 5ud 4uwadi 4zadpur 3iler_park 3japur 3kargarh 4htarsk 6y
4i 5_city 3lvey 3mli 3n_state 4cheng 4dong 4ghai 5kou 5luo 5mei 5qiu 5rao 6i_la 5si 5yu 5zhi 4haiguan 5ecun 4i 4ji
4kill 5lin 5ou 4non 4ting 6pur 5ou 4wang 5ei 4xi 3oguan 4wu 4xing 4yang 4zhuang 3p 4ing 3rjah 4lston 4nbrook 4on
4pness 4qia 3shemene 3unavon 3viyani_atholhu 3w 4bury 4inigan 4nee 4ville 2chekino 5lkovo 4ukino 2earwater 3diac
3epshead_bay 4rness 5water 3fa 4field 5ord 3gaon 3idow_park 3khupura 4i 3lburne 5y 4don 4l_cove 5brook 5ey 5harbour
5y_beach 7park 3ndi 4field 4glilu 4jiamen 4ley 4stone 4ton_park 4yang 4zhen 3opur 3pherds_bush 9well 4ley 4parton
9n_east 5erton 4shed 4ton_mallet 3rborne 9_st_john 5rooke 5urn 8_hill 9in_elmet 4iff_hutton 5ngham 4kot 4man_oaks
4pur 4ston 4wood_park 3tland_islands 3vchenko 4ington 2ibata 4ganj 4in_al_kawm 9_qanatir 5rghan 4ukawa 5zi
3da_kartli 3el_hill 5dhill 3fnal 3ga 4uai 3hezi 3jiazhuang 3kang 5rpur 4i 4ohabad 3lbottle 4don 4in 4lingstone 8ton
5ong 4o 5ng 3ma 5da 5ne 4la 4odate 5ga 5noseki 5toda 6suke 3nyanga 3ogama 4jiri 3pdham 4ham 4ley 4pagan
4ston_on_stour 4ton_under_wychwood 3qi 5ao 7zi 4uan 3rak 6awa 5oka 5z 4bin 4ebrook 5moor 4land 5ey 4oi 4pur 4van
3selweni 3tanjing 3vaji_nagar 4puri 3wan 3xing 3yan 3zhai 4ilu 4uishan 5oka 2koder 7_county 2oal_bay 5haven_heads
5water 3reham_by_sea 5line 5well_park 4kot 4ncliffe 4tland 9s 3stka 3tley_gate 4ts 3uguang 4xian 2reveport 4wsbury
5ton 3irampur 4venham 3opshire 2tip 2uangcheng 6fengqiao 6liao 7onghu 6yang 8shan 3bra_al_khaymah 3ijiang 4kou 4zhai
3jaabad 3lan 4in 3men 3nyi 3rdington 3sh 5a 6_city 5tar 3ya 2webo 2yamnagar 3mkent 1i_racha 3sa_ket 2alkot 3uliai
4res_koreja 8makedonija 3ya_county 2bay 3enik_knin 3i 4u 5_county 3le_hedingham 3olga 3sagar 4ey 3u 2camous 3huan
3ily 2dama_region 3cup 3dhapur 6rthanagar 4ipet 3e 3hi 3i_aissa 5bel_abbes 6ouzid_governorate 5khaled 5moussa 5qacem
5slimane 3mouth 3ney 3oarjo 4n 2edlce 3gen 3m_reap 4ianowice_slaskie 3na 3ra_leone 4ra_leona 3vierodonetsk 2g 3ave
3na 3ulda_municipality 2hanoukville 3or 2irt 2jera_leone 2kandarabad 4r 4sso 3kim 2la 4ng 4o 3char 3e 4by 4sia 3i
4ana_governorate 4fke 4guri 4stra 4vri 3kstone 3la 4od 5th 3opi 3sden 4oe 3van 4er_berry 7end 7sands 8pring 6dale
6stone 8ream 6ton 6water 4i 5a 2mao 3babwe 3coe 3en 3feropol 3i_valley 4yu 3mering 3oes_filho 3pang_empat 2nagra 4h
4i 4jana 4loa 4n 3celejo 3delfingen 4h 5nur 3fin 4ra 3g_buri 4a 5pore 7ur 6ur 8a 9s 5raja 4erei 4ida 4kawang 4leton
9_heights 4osari 4rauli 3hyeon 3i 3namon_park 5r 4uris 3oe_county 4p 3t_eustatius 5niklaas 4martena 3uiju 2odertelje
3n_mills 3ux_city 6falls 6lookout 2paliwini_district 4ria_regional_corporation 3ing 3py_downs 2r_powys 3a 4cusa
4jganj 3bistan 3daryo_region 3hind 3ia 4ja 3jan 3nak 3sa 4i 5lla 3te 3van 2sak_moslavina 3hui 3li 3singhurst
3tan_and_baluchestan 4er_island 2tamarhi 4pur 3ou 3tingbourne 4we 3ubondo 2uri 2vakasi 4s 3erek 2wan 2x_bells 4mile
3milebridge 2yabuswa 3ǝzǝn 1jedinjene_americke_drzave 3rraleone 3verna_koreja 9makedonija 7omarijanski_otoci 1kane
5s 3tepark 2egness 3llingthorpe 4mersdale 5orlie 4ton 3nnars_head 3rries 2ibbereen 3dby 3en 3kda 3nningrove 3pton
2ofja_loka 3kie 3pje 2udai 2ye 1lacks_creek 3de_point 3mannan 3ne 3tina 3ve_lake 4onski_brod 4yansk_na_kubani 3wi
2eaford 3ights 3man 2igo 3nfold 3ven 2obozia 3nim 4okoscena_obala 3ugh 3vacchia 6ia 6ka 5kien 8t 7ja 6kia 6ya 5quie
5ska 4eenia 5nie 8n 7ja 6sko 6ya 4iansk 5nsko 3wacja 5kei 6ije 4enia 7en 2upsk 3tsk 1mederevo 3thwick 2ila
4tene_municipality 3thers 5field 9d_plains 5s_falls 7lake 5ton 5ʼs 2oky_lake 3lensk 8_oblast 4yan 2yrna 3thes_creek
7dale 1naith 3resbrook 2dsfal 4wal 2ells_beach 3ttisham 3zhinsk 2izhne 2odland 2ug 1oacha 2bral 2c_trang 3csksargen
3hi 3kburn 3opo 4rro 2der 5malm 7nland 5talje 3o 2edan 4eleutellie 5r 6malm 6taelje 2fala 3ia 5_capital 6gamla_stan
2gamoso 2hag 4m 4r 2io 2ja 2ka 4raja 3cho 3e 3humi 3ode 4l 4to 2lana 4pur 3danesti 4iers_hill 9point 3edad 3ihull
4kamsk 4n 5gen 3lentuna 3na 4echnogorsk 4tsevo 3ok 4la 4mon_adalari 7town 4n 4thurn 3way 2ma 4alia 4li 6e 6ja 6s
5sko 3erfield 5s 6by 6et 8_east 6ham 5ton 8_park 5ville 3ija 3ogy_county 2n_la_province 4tay 3a 4rgaon
3derverwaltungsregion_hongkong 9waltungsregion_macau 3g_cau 4cheng 4ea 4jiang 9he 4khla 4ling 5ou 4nim_ni 4we 4yang
5uan 3ipat 3ning 7_common 3ora 3sonate 9_department 5rol 2oke 3l 3me 2piste 3ron 3ur 2qatra 2r_afrika 4korea 4sudan
3an 3eang 4l_tracy 5l 3gun 3iano 3oca_district 6ba 4ng 4ti 3rento 3sogon 2snovka 6yy_bor 5wiec 2udan 6_du_sud
3friere 3gueur 3k_ahras 3ntsval 3r_el_ghozlane 4is 3ss_massa 5e 6_governorate 3th 5_abaco 7egean 7lbury 7ndros
7ustralia 7yrshire 6bathurst 7end 9fleet 7ohemian_region 8ston 8wenfels 7rent 8ighton 9sbane 7unbury
6caribbean_coast 9narvon 9olina 8ve 7erney 7hailey 7ollingham 8ogee 7roydon 6dakota 7enmark 7ublin 8nedin 6east
7leuthera 8msall 6fremantle 6gate 7ladstone 8oucestershire 7overnorate 7rafton 9nville 7uildford 6hamgyong 8rting
8yling 7edland 8tton 7ill 7obart 8lland 7uron 9stville 7wanghae 6jordan 6kalgoorlie 9imantan 8relia 7empsey
7horasan_province 7ingsville 8vu 7olan 7urzeme_municipality 6lake 8narkshire 8unceston 8wndale 7ismore 8ttleton
6mackay 9lean 7elbourne 7ilford 7olton 8rang 9avian 7urwillumbah 6norwood 8wra 7utfield 6ockendon 7strobothnia
7zone_park 6papua 8rkdale 7eabody 8nder_harbour 9rith 8rth 8therton 7lympton 7rovince 7yongan 6river 9erdale
6san_francisco 8vo 7hields 8ore 7inai 7uffolk 8lawesi 8matra 6tamworth 8ngerang 7oowoomba 8wnsville 7urramurra
7yneside 6vineland 6wentworthville 8st 9t_rocks 7hittier 7indsor 9gfield 8tham 6yarra 7underup 5all 6m 7pton 6ven
5bank 5church_village 5east_sulawesi 9ern_governorate 6nd_on_sea 6rn_ari_atoll 9darfur 9district 9governorate
9highlands_province 9kordofan 9peninsula 9province 9red_sea 9region 9river 7y 5field 5gate 5land 5minster 5owram
5port 5sea 6hore 6ide 5water 6ell 7st_finland 9_papua 6ick 6old 2wa_town 3erby_bridge 4to 2yapango 3ibug 1pagna
3lding 3nelsko 4ia 5elsko 6n 5ja 5sh_town 8wells 4je 5olska 4yolorszag 3rks 4wood 2earwood 3ers_point 3ldhurst 3nce
6r_park 4nymoor 3yer 2ijkenisse 3lsby 3rit_river 3talfields 3xworth 2lit 5_dalmatia 2offorth 3jene_arabske_emiraty
8kralovstvi 9ralovstvo 8staty 3kane 7_valley 3o 3tswood 2ratton 3eydon 5ton 3ing 6_farm 7hill 7valley 6bok 7rook
6dale 9e_heights 6field 9ld_lakes 6hill 6lands 6s 7ide 7ure 6vale 9e_south 6wood 3oatley 3uce_grove 1quamish
1ra_hongkong_chiny 4makau_chiny 3gen 2bija 3sko 2ednjeafriska_republika 6oafricka_republika 2i_jayewardenepura_kotte
3kakulam 3lanka 3nagar 3villiputhur 2odmiescie 2pska 1t_adolphe 4gnes 4lbans 9_park 6ert 4ndrew_windfields 9s 5thony
4ustell 3brelade 3catharines 4lair 5ement 3elizabeth 3george 9_ranges 9s 9s_basin 3helena 8e 8s 9_park 6ier
4uberts_island 3ives 7_chase 3james 4ohn 7s_park 4ust 3karins 4ilda_east 9west 3lawrence 4eonards 4ouis 4ucie 3marin
6tenas 7in 6y 7s 4ichel 4orris 3ouen 3paul 4eter 8_port 8s 9burg 3sampson 5viour 4tephen 3thomas 2adi 3fford
8_heights 8shire 3inburn 5drop 5es 5forth 3kahoma 4eford 3lbridge 4ham 4lingborough 4owa_wola 4ybridge 3mford
8_bridge 9hill 4ullin 3nbridge 4derton 5lake 5on 4ford 8_le_hope 4hope 8_gardens 4ley 4more 4sted_mountfitchet
4thorpe 4well 8_park 5ick 4y_zjednoczone 3plehurst 3ra_zagora 5chowice 4cross 4gard 4light_village 4o_nagorichane
4yy_oskol 3te_of_berlin 5n_island 4i_uniti 4ul_cetatii_vaticanului 3vanger 4eley 4ropol 9_kray 3well 2eeles
4ple_bumpstead 8claydon 4ton 3fan_voda 3glitz 3in 5bach 3lla 5enbosch 3nhousemuir 3phenville 9lle_crossing 4ney 4ps
3rling 8_heights 6tamak 3ttler 3venage 6ston 6ton 3wartby 7on 4kley 3yning 5ton 2ickney 3lfontein 4lington 4ton
3rling 8_north 3thians 2jokolna 2occholm 5olma 4k 5holbma 8m 5olm 5port 5sbridge 6field 5ton 8_heath 9on_tees 4olm
7a 3kahoma 4cholme 4e 5_ferry 6gabriel 7ifford 7olding 6on_trent 6poges 7rior 6sub_hamdon 5nchurch 5s_valley 6ley
4golm 4holm 8a 9s 8i 8o 4kholm 9ur 5olma 4olm 3lberg 3ne 5crest 5gate_queensway 5haven 6ouse 5sfield 5ville 5wall
5y_ground 7point 7stanton 6burn 4y_plain 5fell 3rbritannia 9nnien 4noway 4rington 3tfold 3urbridge 5port_on_severn
3wmarket 2rabane 4dbally 6roke 4lsund 4ndhill 5raer 4sbourg 5eni 4tfield_mortimer 6ord 9_upon_avon 5halbyn 7ven
6blane 6dale 6ern 6field 9ld_south 9ldsaye 6merton 7ore 9e_park 6peffer 7ine 5ton 3eaky_bay 5tham 6ley
4doafricka_republika 4et 6ly 4nsall 4tford 5ham 5ton 4ymoy 3ogino 4mness 4od 4ud 6_green 4volos 4wan 3uga 4mica 3yi
2uart 6_park 3culma 3denichani 4ley 3ng_treng 3okhuolms 3pino 3rminster_marshall 9er_newton 4ry 4t 3tterheim 5gart
2wkhwlm 3qhwlm 2xkholm 2yria 1ubang_jaya 3carpathia 3iaco 4c 3otica 2ccess 3eava 3hitepeque 3re 5_department 3umbios
2d 3_est 4ouest 4sudan 4ubangi 3aan 4frica 7ka 4n_del_sur 6poludniowy 5a 6s 5ul_de_sud 4o 5_do_sul 3brooke 4ury
3korea 3sudan 3uroy 5pashchim_pradesh 2e 3cia 3de 4ia 3z 2ffolk 7_park 2gar_land 3hd 2hbaatar 2ica 4heng 3hua 3ling
3ning 3ta 3xi 3za 4hou 2jangarh 3iatun 2kabumi 4gawa 3hothai 3kur 2lawesi 4ymaniyah 3eja 3lana 3tanah 6beyli 6gazi
6pur 2mare 4tra 3bawa_besar 7nga 4er 3edang 8_utara 4nep 3mer_hill 6hill 6land 9d_point 6side 3qayit 3y 2n_valley
3am 3bury 7_on_thames 3cheon 3derland 4re 5idge 4sval 8_fa 8i 9s 8l 4umbili 3gai_penuh 9tani 6liat 4gal 3ninghill
4ybank 9_hills 5hills 5vale 3rise 7_beach 8manor 3set 6_beach 7park 5ubal 4hine 8_bay 9beach 9north 9west 3tsuvuaru
3yani 3zha 2omija 3zhen 2paul 3han_buri 2qian 2r 3abaya 4karta 4t 5_thani 5garh 3biton 3endranagar 3fers_paradise
4side 3gut 3iapet 4gao 4n 5am 7a 8s 4ye 3prise 3rey 6_downs 7hills 4y_hills 3t 3xondaryo_region 2sono 3sex 6_inlet
2therland 3okkuhorumu 3terton 4on 6_benger 8onington 8ridge 7coldfield 9urtenay 7in_ashfield 7on_trent
2udi_arabistan 3ria 2va 4_reka 2walki 4yda 3on 2yangshan 2zaka 4no 3hou 3uka 1v_elenos_sala 2aasimaa 3jc 5iarsko
3lbard 3ta_helena 6lucia 9ie 4ini 4y_bartolomej 6martin_fr 9tin_francie 9tin_hol 9tin_nizozemsko 3y_rieng 3zilandas
2edija 4orszag 4ska 6o 3icarija 5e 4ts 6i 3nsksund 5son_heights 3rdlovsk_oblast 3ta_helena 6lucija 4i_bartolomej
6nikole 4lanovskiy 3zia 2helenas_sala 2iblovo 3ca 5rska 3zzera 2obodnyy 2ycarsko 3etlahorsk 1wabi 3dlincote 3ffham
3ins_island 3n_hill 9s 5river 5view 4age 4bourne 4ley 4more 4scombe 5ea 3rthmoor 3vesey 3y 2drtalya 3tlya 2edru
3llendam 2idnica 3etochlowice 6krzyskie 3ft_current 3llington 3ndon 4eshead 4ford 4ton 2ndswal 2ords 1ydafrika
3enham 3georgien_och_sydsandwichoarna 3korea 3ney 6_mines 7olympic_park 3sudan 2ktyvkar 2lhet 6_division 3va 5n_lake
6ia 8_waters 4ester 2mington 2najwky 4ywky 2racuse 3iam 4e 5n 2ston 2unik 2well 2ynaywky 4ywqy 3ria 2zran
1zabolcs_szatmar_bereg 3moa 3ud_arabia 2czecin 2eged 3kesfehervar 3negal 4t_ilona 3rbia 2ingapur 3ria 2lovakia 5enia
2olnok 3malia 4bathely 2tokholm 2udan 2vazifold 2wajcaria 3ecja 1ǝmkir 0ta_kercem 4hmau 3lin 3xbiex 2ani 2baco 4sco
3er 3le_top 3oao_da_serra 4ra 3riz 3uk 5_region 3y 2carigua 3heng 4ilek 5ra 3ikistan 3loban 3na 3oma 3uarembo
9o_department 4rong 2dcaster 3epallegudem 3jikistan 5quistao 4ourah 3ley 3mur 3patri 3schikistan 4jikistan 3worth
3zikija 7stan 9ana 4jikistan 4sikisztan 4ykistan 2fea 3ielah 3o 2ganrog 5skiy 5t 4wa 4ytay 3bilaran_city 3ikistan
3uig 2hara 3e 3moor 3oua 6_region 3ta 3unanui 2i_po 3bach 5i 3cang 4hung 3fu 3gum 3he 3lai 5ndas 7ia 4em_bend 4linn
3n 4an 3pa 4ei 4ing 3ranga 4ua 3shan 3ta 5_taveta 4ou 3vana 7s 3wan 6a 3xing 3yuan 3z 4eme 4hou 2jimi 3land 7ia 3ska
3ura 3van 3wan 2k 3a_atoll 4b 4ishi 4ka 4maka 6tsu 4nini 4o 5ka 4puna 4razuka 5o 4saki 4tsuki 4yama 3efu 4i 4ley 4o
4stan 3har 3iritanga 4zawa 3oradi 2l_pieta 4y_bont 3a 4gante 4ra 4s_region 4vera 3ca 5huano 3dykorgan 3eutu 3garth
3iansko 4n 5a 6s 5i 5o 5s 4pparamba 4say 4wang 3kha 3laght 5hassee 5i 5ngatta 4ebudgera 9era_valley 4idn 5n 6_osh 6a
6n 7a 8_linn 4yn 3nakh 3ofofo 4qan 3su_novads 3yn 4sarn 2m_ky 3a 4ki 4le 4n_senai 5o 5rasset 4rac 7k 6ma 6u 4ulipas
3bacounda 5ram 4orine 9_mountain 5v 6_oblast 4yry 3iami 4l_nadu 4pia 3merfors 9sia 3pa 4ele 5re 7h 4ico 4rh 3ra
3uning 3worth 2n_an 4pei_lei 4tan 3a_river_county 4be 4h_merah 5ia 4shicho 4uan 4wha 4y 3ba 3da 4il 4jile 4o_adam
7llahyar 6muhammad_khan 4ragee 4ur 3eatua 3fang 4ield 3ga 5il 5nyika 4erang 4gu 4ier 5teroria 4jiazhuang 4mere 4ping
4shan 4wu 4xiang 4zhai 7ng 3ilba_bay 4ntharyi_region 3jay 4ore 4ung_pandan 9inang 8selor 7agung 7balai 3kerton
3num_sands 3pere 3saania 5nia 4ka 4ley 3ta 4ou 3uku 4nda 3za 5nie 7ja 6ya 2oluo 3nan 3udenit 4rirt 3yuan 7_city
3zhuang 2pachula 3eroo 3ping 2quaritinga 2ra 4ba_state 4clia 4dale 4kan 4naki_region 5ganba 5to 4paca 4z 3batum 4ert
5s 4olton 3coola_beach 3ee 4n_point 3govishte 8te 5wek 4u_jiu 6mures 3huna 3iba 4ja 6_department 4le_de_jos 4n 5ga
3lac_city 4eton 3ma 3n_taran 4eit 4obrzeg 5w 6skie_gory 3oona 4udant 3porley 3rafal 5gindi 6ona 5wanna 4o 3sus
3tagal 5r_district 4to 4u 5_linn 5s 3ub 4t 5ou 3ves 4in 3xien 2s_sliema 3cott 3ek_glugor 3han 4kent 8_region
3ikmalaya 3man_district 6ia 2tabanya 4ouine 4rstan_republic 3ebayashi 4yama 3hra 3tenhall 4on 3ui 4ra 3van 2ubate
3ngdwingyi 5gyi 5oo 4ton 3piri 4o 3rage_county 5nga 2vastehus 6um 3istock 3sanli 3ush 2wa 4u 2xco_de_alarcon 2y_ninh
3ikistan 3land 4or 6_massey 6s_hill 8lakes 7ville 3port 3tay 3van 2za 1bilisi 2oung_khmum 1chad 4j_wan 3equia 7e
2zew 1e_anau 4raone 5o 4tatu_peninsula 9south 3hapara 3kauwhata 4urae_matomato 3moutere_kirihimete 9e_mana 9e_nopoke
3papapa 3tai_rei 2a_gardens 4tree_gully 3rce 2bessa 3ingtinggi 2cate 3himan 3oma 6n 3umseh 2ddington 2esdale 2gal
3ucigalpa 2hran 3uacan 2ignmouth 2jen 2kirdag 2l_aviv 3angana 4rah 3de 3emaco_borba 6rk 4nesti 4orman_county 4rghma
3ford 7_and_wrekin 3ga_australis 3ina 3licherry 3opea 3siai 3uk_intan 5naga 2ma 4ra 3bisa 4urong 3ecula 4rluh 3irtau
4scaming 5kaming_shores 4xco 3ora 4tu_province 3pe 5_junction 5lhof 4le 6_view 6combe 6more 6ogue 6patrick 6stowe
9we_lower 6ton 3uco 2nambit 3bury_wells 4y 3do 3emaka 4riffe 3gyue 3i 3kodogo 3nant_creek 4essee 4yson 8_point 3ri
3terden 6field 2o 3filo_otoni 3loyucan 2patitlan_de_morelos 3expan 3ic 3lice 2ra 4lba 4mo 4ng 3banggi_besar 5ta
3engganu 5ure 4sa 5ina 5opolis 3itoriile_palestiniene 3monfeckin 3nate 4i 4opil 3oto 3race 7_end 5nora 5ssa
7e_des_pins 4e_adelie 7ustrali_francesi 6haute 5bonne 5s_australes_francaises 4igal 5ngton_saint_john 9n_st_clement
5toires_palestiniens 7ri_palestinesi 9os_australes_franceses 9os_palestinos 4y_hills 3ytoria_palestynskie
2shi_old_town 3istan 2tbury 3e 3ney 3ouan 4vo 2wantin 3kesbury 2xas 3coco_de_mora 2ynham 2ziutlan 3pur 1ha_maka
3a_atholhu 3ba_nchu 6tseka 5zimbi 4eban 3i_binh 5nguyen 4fold 4landa 8e 8ia 4maa 3jsko 3khek 4urgaon 3llin_n 3me 5s
6_ditton 6mead 3ne 5sar 4h_hoa 9_province 3raka_nithi 4yarwady 3tcham 4on 3xted 3yetmyo 2e_basin 5eaches 5oldons
5ronx 4entrance 9nce_north 4farrington 4gap 5emfields 4hague 6mmocks 5ill 4junction 4marches 4oaks 4pas 6tch 5onds
4quarter 4range 5ock 8s 4scottish_borders 4valley 5illages 6nes 4woodlands 3ale 3barton 3nkasi 3odore 3ssalon 9iki
7y 3tford 8_mines 3unissen 3ydon_bois 2ies 5_nones 3ka 3mphu 7_district 3rlmere 4roul 4sk 4uvananthapuram 7rur
3stletown_beaumond_heights 2ohoyandou 3i_lai 3mastown 5zeau 4pson 4son 3ngwa 3othukudi 3rnaby_on_tees 5bury
5cliffe_park 5e 6r 6side 6y 5gumbald 5hill 5lands 6eigh 7y 6ie 8bank 5ton 8_cleveleys 9dale 9heath 4old 4p_arch 5e
6_hamlet 7le_soken 3t_not 3usand_oaks 2rapston 3ee_crosses 6hills 6kings 6legged_cross 6rivers 3issur 2u_dau_mot
3an_an 3lamahashi 3nder_bay 3rgau 5el 5oona 4ingia 4lby 5es 5ton 4sday_island 5o 5ton 1iamana 3na 4chang 4fu 4jin
4liu 4peng 4shui 4zhuang 3ret 2besti 4t 3shelf 2cehurst 3ino 3khill 4ton 2deswell 3worth 2ebo 3fu 3kia 3li 5ng 3ri
4ra_del_fuego 2flet 2gard 3hes_hill 3ray 3wav 2juana 2kamgarh 3horetsk 4vin 3ipunga 3o 2lburg 6y 3har 3laberi_region
4icoultry 2ma 4ru 4shyovsk 3boon 3imoun 4s_county 5oara 3mins 3on 4r_est 6oriental 6wschodni 4teo 3perley 3sbury
3uwawe 2n_can_bay 4shui_wai 3ana 4quillo 3divanam 4ouf 3galpa 4ewick 4ira_heights 4o_maria 3ian 4roto 3ley_park
3onee 5gan 3sukia 3tagel 3wald 2orangi 2paza 3itapa 3perary 3ton 4ree 4ur 3uti 2quipaya 2rana 4spol 3hanimine 3i
4naki_topako 4s_zemmour 3miz 3uchengode 6irappalli 4nelveli 4pati 5pur 4r 4ttangal 4valla 6nnamalai 5ottiyur 2sbury
3dale 3semsilt 2tagarh 4hi_bay 3chfield 3irangi 2uris 2vat 3erton 3oli 2wi 2zi_ouzou 3nit 1jeckien 3kkiet 2uri 5_osh
1lahuac 3lnepantla 4pan 3quepaque 3xcala 2emcen 1mprh 1oa_alta 4baja 3masina 2ba_tek_singh 4go 3ercurry 5mory 3olsk
3ruk 2cantins 3higi 3umen 5wal 2ddington 3morden 3wick 2field 4no 2gane 4s 3dheer 2hana 2kamachi 4t 5_province
3elauoarna 6v 4rau 3i 3mok 3o 4roa 6zawa 3ushima 4yama 3yo 2lanaro 3edo 6_district 3ga 3iara 4ma_department 3land
4esbury 6hunt_knights 3na_county 3uca 3worth 3yatti 2m_price 3akin 5omai 4szow_mazowiecki 3bali 4ouctou 3e 4rong
3igusuku 4nika 4ya 3s_river 4k 5_oblast 2nala 3bridge 3dabayashicho 3gala 5tapu 4chuan 9shi 4hae 5ua 4liao 6ng 4ren
4sa 5han 4zhou 3k 3o 3ya 4pandy 4refail 2odyay 3goolawah 6m 3ngabbie 3radin 5k 6_gardens 4makeady 5ina 3tgarook 4ing
3wong 5omba 2peka 3sham 2rba 5li 5t_e_heydariyeh 9jam 5y 3dher 3ehe 3faen_county_borough 3gel 3i 4_kommune 5parish
5vald 4de 3okorszag 4nto 3phins 4oint 3quay 3rance 4e_del_greco 5jon_de_ardoz 5lavega 5molinos 5ns 7_park 7ville 6t
5on 5vieja 3teval 3un 2su 2tara_park 3land 3nes 3onicapan 3tenham 9_hale 5ridge 4ington 4on 5ri 2uba 3ggourt 3kley
3lon 5use 3rcoing 4kou 4nai 4s 4uku 2vuz 5_district 2w_law 3ada 3cester 3er 3n_n_country 5row 4hill 4sville 4view
3radgi 3son 2yama 3ohashi 4kawa 4naka 4oka 4ta 2zeur_governorate 1ra_mhor 4vinh 3bzon 3cadie_sheila 4y 3falgar 4ford
8_park 3il 3lee 3nent 4g 5ie 4i 4mere 4s_nzoia 5nistria 3pani 3ralgon 4za 3shi_yangste 6gang_district 3t 3vancore
2ebnje 3degar 3eton 3garon 6th 4ear 3harris 3lawny_parish 4ew 3ncin 7_region 4tham 5ino_alto_adige 5o 6n 3orchy
3s_coracoes 5lagoas 5rios 3uddyn 3vallyn 4iso 2i_cities 3er 4sen 7berg 5te 3gg 3kala 3m 4don 7_grange 4saran
3ncomalee 4dade 4g 4idad 8_a_tobago 9e_tobago 9en_tobago 9es_tobago 9i_tobago 9in_tobago 9ja_tobago 9och_tobago
9og_tobago 9si_tobago 9und_tobago 9ve_tobago 9y_tobago 8a_un_tobago 9s_ir_tobagas 5te_et_tobago 6y 7_bay_north 9each
9ellwoods 8gardens 8palmetto_point 9ark 3poli 4ura 3stan_da_cunha 3yuga 2kw 2nava 6_region 2ois_rivieres 5dorf 4tsk
3ms 5o 3ndelag 5heim 3on 3parevo 3tt_park 3wbridge 3y 4es 2tw 2uganina 3jillo 8_alto 3mann 3nding 3ro
2ynidad_i_tobago 1saad 3d 3ritsyno 3wwassen 2chad 4echien 2ehhi 3kki 3ung_kwan_o 3vie 2hikapa 3opo 3uapa 2iili
3ng_yi_town 5oni 3rang_district 2jaad 4d 3echie 4kkia 2u 3bame 3en_wan 3kuba 3ruga 5oka 5saki 3shima 3yama 1u_er_ku
3rku 2al 3m 4asaga 4otu_gambier_islands 3nbao 3pse 3rt_hill 2ban 4rao 3ingen 2cson 3uman 4pita 4rui 2dora 2en_mun
3ri 2ggerawong 3uegarao 4n 2i 2kh 4olma 3umanatanga 5s_municipality 2la 4_oblast 4ncingo 5gan_utara 4re 3can 4ea
6_county 3euku 3lamarine 6ore 4ibody 4ow 4y 5allen 3sa 3tepec 3ua 4n 5gagung 2maco 3barumba 4es 4i_vmbi 4le 6r_ridge
4y_bay 3en 3kur 3ut 3xuk 2napuna_piarco 3celi 4urry 3dla 3eesia 4sie 7n 4z 5ia 5ja 3g_chung 4i 5para
4urahua_province 3i 4hia 4s 5_governorate 5as 5ie 7n 6ja 5ko 4zija 3ja 3stall 3us 2pa 2ra 4_beach 4ngi 3baco 5t 4o
3chia 4ia 5ja 4ja 4omenistao 4u 3da 3ecko 3gel 4i 4utlu 3hal 3i 4n 3kan 6a_county 4ei 5stan 4iet 5ja 6e 5stan 5ye
4ki 4menabat 7basy 7istana 9tanas 9ztan 7sko 4s_a_caicos 6en_caicoseilanden 6i_caicos 6ja_caicos 9caicossaaret
6och_caicosoarna 7g_caicosoerne 9caicosoyene 6und_caicosinseln 4u 3lock 3mero 3ner 6s_beach 3oss_head 3pan 3quia 6e
3ramurra 4ella 4iff 3ska 3u 3vey_park 2scaloosa 5ny 3more 3tin 2tong 2waru 2xford 3tepec 4la 2y_hoa 3en_quang 3mazy
3tepa 2z_khurmatu 3i_municipality 3la 1ver 4_oblast 1wechar 3ed 5_heads 9ds_south 9ds_west 5bank 2in_waters 3zel
2o_hills 4rocks 4wells 2rkw 3qw 3y_astwny 2yford 1yabb 2chy 3roes 2ldesley 3er 2nemouth 4side 2oply_stan 2re 3kia
5et 3ol 4ne 2skland 2umen 6_oblast 3ri 2wyn 1zaneen 0uaboe_district 2log 2sin_gishu_county 1ba 3tuba 2e 3raba
4landia 2mi 2on_ratchathani 2sala 5la 2ud 1car 3yali 2cle 2kfield 2luelet 2raina 4nia 1daipur 2dingston 2gir 2hampur
2ine 2murtiya_republic 2on_thani 2umalaippettai 3pi 1eda 2no_ebisumachi 1fa 2fculme 1ga 2ep 2helli 1hendkuningriik
5riikide_hajasaared 2ipeketane 1ige 2jeongbu_si 3u 2tenhage 1j_kaledonia 3zeland 2ae_atoll 2edinjeni_arapski_emirati
9o_kraljevstvo 3lang 2hani 2i 2jain 1kanga 3reinga 2hta 2i 2raina 4jina 5na 4yna 1laanbaatar 3n_bator 5ude 4hot
2ceby 3inj 2eaborg 3oborg 2hasnagar 2ladulla 4l 4pool 2m 2oa 2san 3ter 2timo 2u_tiram 3ndi 2verston 9e 2yanovsk
3sses 3tau_region 1ma 3n 3tac 2bria 2e_o 3a 3o 2ina_beach 2m_al_quwain 4el_fahm 4qasr 4ruwaba 4salal 3an 2raniye 3ed
2uahia 4rama 1na 3i 3nderra 2derdale 5wood 3y 2garan 5i 6a 6ja 5n 3ern 3heni 5ria 3sang 2ion 5_city 3ty 3versal_city
7ity 2jha 2kari 2ley 5_park 2na 4o 2tolovo 2y_lelant 3e 1pata 2cala 3hurch 2fala 2ington 2land 3eta 2minster
2pal_kalan 3er_austria 6basildon 7urnie 6caboolture 7oomera 6demerara_berbice 6east 6hutt 6island_cove 6kedron
6langwith 6matsiatra 7ount_gravatt 6nile 7orwood 6poppleton 6riccarton 8ver 6west 3ingham 3sal 6a 7e 6ir 2sala 5ia
5o 2ton 5_upon_severn 4wn 2usara 2well 4y 1ralla 3ngan 3yasu 2daneta 3un 2ena 2ganch 2i 3angato 3tsk 2lingford
2mston 2omi 2raween 2synow 2uapan 3guai 7ana 6j 4vaj 7a 7us 4waj 3koi 3mqi 3nga 1sa_neitsisaared 3k 3s_ytre_oyer
2bekistan 2era 2haw_moor 3er 3iku 4rombo 3uaia 2k 3udar 2suriysk 2t_ilimsk 4kamenogorsk 3i_nad_labem 2ulutan 1ta 3h
3karra 2ena 2hai_thani 2ica 2recht 4ra 3ik_atoll 2sunomiya 2tar_pradesh 5adit 6khand 3oxeter 2uado 1umaja
2s_kaledoonia 4meremaa 3i_kaledonia 5seelanti 4maa 1va_province 2ea 2ira 2s_province 1wajima 1xbridge 1yo 3vu
1zbegisztan 4kistana 9nas 4quistao 2hgorod 2ice 2lovaya 0vaasa 3vu_atholhu 2caria 4ville 3ija 3oas 2da 3odara 3uz
2einaenlinna 6linn 3steras 3xjoe 2gar 3onoremont 2inalinn 5nlinna 3sigano 3tupu 2kaga 4ru_sachara 3inankaratra
2l_david 5es_monts 4morin 3ais 4ka 4ndovo 3cea_county 4ourt 3demoro 4ivia 4osta 3e 4_of_glamorgan 8leven 5park 4nca
6e 6ia 5tine 4ra 3ga 5maa 4evene 3inhos 3jevo 3k 4a 5s 4o_venaja 3la_beach 5dolid 4e_de_santiago 8partment 5dupar
5e_jonction 5jo 5tta 5y 6_east 7glen 7heights 7view 6mount 6view 3miera 3parai 8so 3sad 3vedditturai 5rde_province
2n 3_nuys 4wyksvlei 3adzor 3couver 3da 4erbijlpark 6hoof 3ier 4yambadi 3nes 3ocni_ostrov 3ta 5a 5nia 2pi
2raklani_municipality 4min 4nasi 4zdin 3ennes 4se 3gas 4inha 3mland 3na 3sity_lakes 3zea_grande 7paulista 2s
3_county 3a 4staden 7n 3co_da_gama 3ilevo 3lui 6_county 3se 3teras 6botten 6norrland 4manland 4ra_gotaland 4sahara
2ticaanstad 4kaani 6n 7o_miesto_valstybe 7s 8tadt 9aten 3ovavy_region 3utino 2ucluse 3d 4reuil_dorion 3ghan 3pes
3xhall 2vau 3uniya 2xjo 2yots_dzor 1eenendaal 3rle 2ga_alta 5baja 3reville 2jalpur 3le 2kse 4he 6h 5jo 2lbert 3es
4z_malaga 3ikiy_novgorod 7e_luki 5o_tarnovo 8urnovo 3letri 4ore 3sen_zuid 2nado_tuerto 4ja 3ecuela 4maa 4suela 4to
3grija 3ice 4se_en_quebec 5sieux 3lo 3tersburg 4nor 4spils 9_municipality 4ura 3ustiano_carranza 2ra 4cruz
4guas_province 4val 3cheres 3eeniging 4inigte_arabische_emirate 9e_staaten 9es_konigreich 4nigd_koninkrijk
8e_arabische_emiraten 9_staten 3khnyaya_pyshma 3milion 4ont 7_south 3non 3ona 3sailles 3viers 3wood 2shnyaki
3pasiano 3t_sahara 4ehros 5ros 8a 9s 4fold 4land 4sahara 3zprem 2vchani 2xio 5e 5nia 1hanta 1iacha 3mao 3na
5_do_castelo 4den 4ocny_ostrov 3reggio 2c 3alvaro 3enza 3hada_department 3osa 3tor_harbor 6ia 8_de_durango 9park
9point 9village 8s 8ville 6ville 2din 4sha 3noye 2enna 4tiane 9_prefecture 3ques 3rsen 3t_nam 5tri 4na 6mas 3ux_fort
3wbank 4park 2f 2gevano 3o 2hari 3iga_county 2jayawada 3etnam 2king 2la_real 5velha 4decans 3hena 3jandimaa
4oenskroon 3la_alemana 6bruzual 6canales 8rlos_paz 7lara_province 6de_cura 9vallecas 8l_rosario 6elisa 6francisca
6hayes 6lugano 6maria 7ercedes 6nueva 6vicente_guerrero 5ch 5hermosa 5lba 5verde 6icencio 5wood 4e_marie 5urbanne
4iers 5ngen_schwenningen 4manstrand 4upuram 3nius 2na_del_mar 3cent 7ia 3eland 4yard 3h 4_chau 5long 5thanh 4edo
3ica 3nytsia 7ya 3to 3ukonda 2ola 2queque 2ransehir 4r 3den 3gil 5nia 8_beach 9water 3o 4vitica_podravina 3udunagar
2sakhapatnam 4lia 3eu 3nagar 3ta 2tali 3ebsk 3o 4ria 7_da_conquista 3ry_sur_seine 3toria 2veash 2zianagaram 1jetnama
1laardingen 3dikavkaz 5mir 8_oblast 5vostok 2ore 5_county 1ogeltown 2jvodina 2kietija 2lgodonsk 5grad 9_oblast
3isas_ir_futuna 3ksrust 3ogda 7_oblast 4s 3ta 5_redonda 3yn 3zhsk 7y 2rarlberg 3kuta 3onezh 8_oblast 3umaa
2skresensk 3tochnoe_degunino 2tkinsk 3orantim 3uporanga 2yager_point 1rancea 4je 3pchishte 3tsa 2ede 5fort 5nburg
6dal 2iddhachalam 3ndavan 2yburg 3heid 1uanta 3ruka 3sa 2esuterosu 2kovar_srijem 2lcan 2ng_tau 1yborg 2chodni_timor
7y_timor 2khino_zhulebino 3sa 2ronas 2shniy_volochek 3ocina 0wa_er_ka 3sa 2bana 3u 2cheng_neighborhood 3o 4l
2d_medani 3alba 3desdon 4ington 3ebridge 4na 4ye 3hurst 3i_al_hayat 6s_sir 7h_shati 5fira 3worth 2fangdian 2gaman
3ga_wagga 4rakine 3in 2haroa 3gunyah 3roonga 2iatarua 3blingen 3hi 5_beach 3kanae 5to_region 5wa 4erie 4iki 5wi
4owhai 3ma 5iri_beach 5te 7_north 3nfleet_all_saints 4oni 4ui 6omata 4wright 3pawa 4u 3rau_valley 4oa 3takere
5ngirua 5ra 4oa 3uku 3whetu 2jir 5_county 2kari 4yama 3e_island 4field 4ley 4rley 3o 2lberton 4rzych 3cha 3dorf 3es
3gett 3k 4a 4den 4ern 6ston 6vale 4ington 6stown 4ley_heights 3laceville 6ia 5long 5n 5roo 5sey 4erawang 4ingford
7ton 5s_a_futuna 7e_futuna 8n_futuna 8s_futuna 8t_futuna 7i_futuna 8n_futuna 7ja_futuna 7och_futunaoarna 8g_futuna
7si_futuna 7und_futuna 7ve_futuna 7y_futuna 4onia 5on 4send 3nut_creek 7grove 3pole_island 3sall 4den 3tham 7_abbey
8cross 7stow 4on 6_on_thames 3vis_bay 2mberal 4oin 3uran 2n_chai 4ta 3aka 3borough 3chaq 3da 5l 5na_heights 4i
5n_north 6a 4oan 5ng 4sbek 3garatta 4di_phodrang 4gou 4i_wangi 4ji 4kui 4qing 4uri 3i 4ca_district 3ju 3nanup 4eroo
4iassa 5ng 3parti 3sheng 4tead 3ta 5ge 4irna 8_south 3xian 3zhou 2rabrook 4manga 4na 5gal 4tah 7_west 3boys 4urton
3dha 4le 3e 4emba 4ham 3grave 3ialda 4hi_me_whutuna 4lla 4ngstown 3kworth 3lingham 3man 4ia_masuria 5nster 3nbro 4er
6_robins 6s_bay 4ham 3oona 3racknabeal 5dale 5gamba 6ul 5ndyte 6e 6wood 5p 5wee 6ong 4en 6point 6ton 4i 5ewood 5moo
5ngton 4nambool 3saw 4op 3ton 3wick 7_farm 7shire 2sa 4ga_beach 3hdyke 4im 5ngborough 7ton 9n_heights 4wood_heath
3it 3kaganish 3wanipi 2tampone 4nobbi 3chet 3er_eaton 6orton 5beach 6ury 5foot 7rd 9_west 5grasshill 5ingbury 5loo
8_corner 8ville 5mans_bay 5view 9_heights 5ways 3ford 3h_upon_dearne 3lington 3rous 3son 6_lake 6ia 8_north 6ville
3tisham 4le_downs 7grove 7park 8onds 6glen 4on 6_at_stone 3ykan 2u 3chope 3kegan 5sha 3rn_ponds 2vell_heights 4rley
5ton 2wa 3er 2yaobu 3ne 3ville 2zirabad 1eaverham 2dding 3i 3more 3nesbury 6field 2e_waa 3don_beck 7centre 3tangera
4ing 2gry 2i_ke_she 3fang 3hai 4nachtsinsel 3mar 4iao 3nan 4ing 3pa 2k_chex 2lbourn 3come_beach 3e_nzas 4ri 3ford
3kom 3land 5rd 4esbourne 9rne_mountford 6ley 9_islands 4ing 7borough 7ton 9n_central 9n_point 9n_region 4s 5ford
3shpool 3wyn 6_garden_city 2m 3bley 7_downs 4ury 3yss_bay 2nchang 3dell 4ouree 5ver 3ezuela 3jiang 3ling 3shan_city
7g 3tworth 9_falls 9_point 9ville 3voe 3xing 3zhou 2obley 2rribee 8_south 5ngton 9n_county 9n_downs 5s_creek 3u
2s_te_ros 3burn 3el 3selsbron 3t 4_albany 8ury 7lis 6zerbaijan 5ballina 7nk 7thurst 7y 6each 7ngal 7rgholt 8kshire
6loomfield_township 6ridgford 7omwich 6usselton 6yfleet 5calder 6landon 6oast 7ker 7on_rapids 7rnforth 7vina 6roydon
5des_moines 6rayton 6unbartonshire 5end 6yreton 5footscray 5gladstone 6osford 6rand_bahama 7eece 6ulfport 5haddon
7llam 7m 7rbour 8tford 7ven 6ill 7ndmarsh 6obart 7llywood 7rsley 7xton 6umber_clairville 5java 6erusalem 6ordan
5kalimantan 7zakhstan 6elowna 7mpsey 6ilbride 7ngsdown 7rby 6ordofan 5lakes 9s_shore 7mington 7unceston 6eederville
6inton 6orne 7thian 6ynchburg 5macedonia 8kay 7lling 6elbourne 8ton 7rsea 6olesey 7onah 5new_york 6orthamptonshire
7wra 6usa_tenggara 5palm_beach 7pua 6ennant_hills 7rth 6okot_county 7merania 6ymble 5rainton 7leigh 6idge
6ockhampton 6yde 5sacramento 6ulawesi 7matra 7ssex 5tamworth 6hurrock 6own 5ulverstone 5valley_city 7ncouver
6irginia 5wallsend 8ton 6ellow 6ickham 6odonga 7llongong 7ombye 6yalong 4bourne_park 5rook 5ury 4cliff_on_sea 5ott
6urt 4dale 4elijke_sahara 5rgate 6ham 6n 7_area 9ustralia 8cape 8darfur 9istrict 8equatoria 8heights
9ighlands_province 8north 8province 8region 8visayas 4fjords 4gate_on_sea 4hill 5oughton 4lake 6nd 5eigh 5ock 4mead
8ows 6re 5inster 9er_branson 5oreland 6unt 4on 6_pellam_park 7super_mare 7turville 6aria 6ing 6zoyland 5wn 4port
4quarter 4sahara 4ville 4wood 2taskiwin 3heral 6by 6ill_park 3zlar 2xford 7_maryvale 2ybridge 4urn 3montachie 5uth
1hakaora 5rongo 5tane 3lan 4ey_bridge 4ley 3ngamata 6nui 6rei 9_heads 3plode 3taupoko 2eathampstead 5ley 5on 7_aston
3eler_heights 7s_hill 3ldrake 3nua_kanaki 6kariki 6tu 2ickham 3mple 3narana 3stler 3tburn 5y 4church 4e_city
6gum_valley 6hills 6nile 6plains 6river 7ock 5bridge 5chapel 6ourt 6raig 5field 5gate 5haven 6ead 6ills 6orse
5parish 4field 5ord 4i 5anga 5namu 4land 5ey 7_bay 4stable 5undays 4tier 6ngton 5lesea 9y 8ford 4well 5orth 2yalla
7_jenkins 8norrie 8playford 8stuart 3teleafe 1ichita 7_falls 3k 4ford 4ham 7_bishops 8market 4low 4war 2deopen 3nes
2elka_brytania 3sbaden 3tnam 2gan 3ram 3ston_magna 3ton 2lberforce 8ss 4urton 3d_rose 3ey_park 3helmsburg 8haven
3kie 3lagee 5nd 5rd 5ston 4emstad 5nhall 5sden 5tton 4iams_lake 9landing 8town 9own_north 7town 5ch 5ngham 7ton 5ton
4mot 4oughby 9y_east 5w_vale 6bank 6dale 9e_east 9e_west 6more 6ridge_martingrove_richview 4unga 3mcote 4ersdorf
4ington 4slow 3sden 4on 6ton 9_heights 4tead 5on 3ton 4shire 4z 3una 2mbledon 9_park 5ington 4orne_minster 2nburg
3canton 4hburgh 5combe 5elsea 9a_beach 6ster 3dale 5ng 5roo 4ermere 4hoek 4lesham 4radyne 4sor 7_downs 8gardens
4ygates 3ejok 3ford 3g 4ate 4erworth 4ham 4rave 3kleigh 6r 3malee 3nipeg 3ona 3scombe 4ford 4low 4ton 7_hills 8salem
3terbourne 6hude 6ingham 6thur 7on 4hrop 4on 3wick 2ri 3ksworth 2sbech 3consin 3hart 5w 2tchford 3ham 4cott 4eridge
6lea 6nsea 6s 3ley 3ney 3ta 4en 5ring 4on_gilbert 2veliscombe 5sfield_green 4nhoe 2wi 1kfw 1lochy 4lawek 1nth 1oburn
6_sands 2donga 2kha 3ing 6ham 2la 3dingham 3eu_ntem 3fenbuttel 4sburg 4ville 3laston 4ert 4i_creek 4ongbar 7ong
9g_city_centre 4stonecraft 3maransstad 3singham 4ton 3uwe_saint_lambert 3vercote 6hampton 2mbourn 4well 2ndai 4unna
3ga_park 5ling_beach 5wallan 3ju 3osari 5obo 3san 3thaggi 5ella 2od_green 5street_village 4berry 5ine 8_corridor
9lumsden 5ridge 5ury 4church 5ote 5roft 4end 4ford 8_green 4gate 4hall_spa 4land 8_hills 8s 9_park 4park 4ridge
6sing 5offe 6w 4setts 5ide 5tock 4vale 5ille 9_gardens 9_north 9_park 9_south 9_west 4y_point 3l 4avington 4er
4goolga 4lahra 5oomooloo 7ngabba 4ooware 7in 4pit 4ston 3mbye 3ngarrah 4ona 3ri_yallock 5m 4oloo 4ree 3tton
2qooyi_galbeed 2rcester 9_park 9shire 3ee 3kington 4sop 3mley 4s 3oba 4ngary 5ora 8_heights 3rigee 3thing 2tho_atoll
3je_atoll 3ton_under_edge 2uldham 2y_woy 1qsh 1ragby 3wby 2ea_green 3xham 2ight 3ngton 3ttle 2oclaw 3tham 3ughton
3xall 1strws 1uchang 4eng 4uan 2da 2feng 2gang 2hai 4n 3u 2jing 2kari 2lagi 3guru 3ingyuan 3kuraka 3ong 2m 2ndowie
2ppertal 2rruk 5miyanga 3tulla 3zburg 2shan 3u 2wei 2xi 3ue 2yang 3ishan 2zhen 4ishan 4ou 1y_yung 2chbold 4wood 2e
3e 4_point 2kyw 2lam 2meswold 2ndham_vale 3n_vale 4e 4um 6_west 3yard 2oming 3ng 5ah 2reema 2spa_bouveta
8zego_narodzenia 6man 6swietej_heleny 4y_alandzkie 6cooka 6kokosowe 6marshalla 6owcze 6salomona 3tyrws 0xacmaz
2i_xai 3somboun 2lapa_de_enriquez 2nkandi 4ǝndi 1ekong 2lsinki 2nia 2x_re_bru 1i_xing_bao 2agnabouli 3men 3ngcheng
9g_chengguanzhen 5jiaba 5khoang 5tan 5xiang 5yang 5zhou 4ju 4ning 5u 4shuigu 4tao 4yang 3ogan 7g 4lingwei 4shan 6i
4weizhai 3zhen 5uang 2chang 3o 2ema 2feng 2gang 2he 2lin_hot 2meicun 2ncheng 3di 5an 3gcheng 4guo 4hua 4longshan
4ning 4ren 4tai 4yi 3he 3ing 3ji 5ang 3le 3min 3qing 3shi 3tai 3xiang 5ng 3yang 4i 4u 5an 3zhai 5i 5ou 2ongzhou
2shan 2ugu 3lin 3yan 4ing 2va 2xiang 2zhi 3i 1ochimilco 2razm_region 2w_lu 1u_me_xo 2anhua 4tan 4zhou 2chang 4eng
2jiang 2nchang 3yang 2p_sx_la 2yong 2zhou 4uang 0y_felinheli 1abucoa 2chimata 3kandandah 3uiba 2dgir 2fran 2goona
4ua 2iza 4u 2kamia 3eshi 3ima 3utsk 2la 3ding 3lambie 4ingup 4ourn_north 3ova 3ta 3yalup 2machiche 4gata 5uchi
4lo_nenets 4nashi 5to 4to 3ba 4ol 3ethin 3oussoukro 3unanagar 2n_xue_ping 3bu 3cheng 6p 3dina 3gcheng 6un 5un 4ebup
4gang_do 5u 4he 4iyul 4jiang 5u 4liuqing 4on 4quan 4san 5huo 4tun 4zhou 3ji 5a 3liang 3ta 5i 4ongshan 3zhou 2o 3ji
3unde 3wan 2p_state 3ton 2ra 4cuy 3dimli_district 3en_district 3itagua 3m 4outh 3nton 3oomba 4slavl 9_oblast 8skiy
3ra_glen 6junction 5bah 6ilba 5gon 5lumla 5m 6an 6bat 5vel 6ille 5warrah 6onga 3tsevo 2senevo 3han 4io 3othon 3s 3u
4j 2tala 3e 4ley 3ou 3ton 2uco 2vatmal 2wata 2xing 3ley 2zd 4_province 1blh 1e_fu_lei 2a 3don 3lmpton 2baishou
3eulle 2erongpilly 2fle 2i 3n_chex_ping 2katerinburg 2labuga 4hanka 3ets 3gava 3lowknife 3verton 2n_bai 4vinh
3akiieve 4ngyaung 3da 3i_kaledonya 5zelanda 3nora 3syeping 2ongam 3su 3vil 2ppoon 7_city_centre 2rba_buena 3evan
3onga 3rinbool 2ssentuki 2teboli 3minster 2vlakh 5x 6_city 3patoriya 2ysk 3uan 2zhou 1flh 1hdysvallat
8tain_erillissaaret 9ain_neitsytsaaret 1ibin 3uti 2chang 4eng 4un 2du 2go 4u 2lan 3i 2ma 2n_jia 3chuan 3gchuan 4ge
4jiang 4kou 4li 4qiu 4shang_chengguanzhen 4tan 3ma 3tai 3zhu 2shan 4ui 2wu 2xing 2yang 2zhou 1nysybwl 1obe_state
2ensu 2gyakarta 2hateborya 2kine 3kaichi 3o 4hama 4suka 2la 2na 4go 3ezawa 3gbei 4chuan 4e_eglinton 6st_clair 4feng
4jian 4kang 4ning 4qing 4zhou 3kers 3o 3shopingu_shi 2ogali 2pal 2rba_linda 3k 4_university_heights 4dale_glen_park
4eys_knob 4shire 4ton 3o_department 2shikawa 4kar_ola 2tebori 3sukaido 2ughal 3hao 3lgreave 3ng 5stown 5town
3ssoufia 4uo 3xi 2wie_bay 2xall 2zgat 1stalyfera 1u_mo_ao 2anlin 4ping 4shang 2ba_city 2caipa 4tan 3heng 3i 2dong
2e_en_su 3n_long 3yang 2ki 3on 3sekova 3tae_dong 3uhashi 2lara 3in 5shi 2ma 3bo 2nanistan 3cheng 3fu 3gaburra 3jin
3long 3men 6g_chengguanzhen 3nan 6yi 3shan 3yang 2omala 2rev 3ga 3ihonjo 3mala 2shu 2tan 2vuasukyura 2xi 4a 2yao
2zhno_sakhalinsk 1waskwla 2faskwla 2lh 2nshwbyngh 6png 7yn 9g 2tbry 2ynsw 1ybsqylh 2waskyla 0zaandam 4stad
2baykalskiy_transbaikal_kray 3id 3ol 3rze 3ul 2capa 5u 4tecas 3hary 2dar 2gazig 3houan_governorate 3reb 6_county
2hedan 3le 3odna_sahara 2ida 3re 2karpattia 2la_county 4egerszeg 4mana_salas 4u 3iasis_kysulys 2ma 3bezi_region
7a_province 4ie 5ja 5ya 4oanga 9_peninsula 3fara_state 3ora 6_chinchipe 4sc 2ne 3gilan_district 3jan 3zan_district
4ibar 8_central_south 9north 9urban_west 2oyang 3zhuang 2padna_sahara 6i_sahara 3opan 4rizhzhia 9hya
2qatala_district 2ra 4goza 4nd 4te 4za 3dab 3echnyy 3ia 4nsk 3qa 3zis 2stron 2wiercie 4ya 2xo 2yed_city
1druzene_drzave_amerike 7i_arabski_emirati 7o_kraljestvo 1ealand 2eland 3rust 2fta 2hlendorf 2ist 2lenikovo 5odolsk
6gorsk 7rad 6rtska_republika 9ki_otoki 2mun 2nica 3tralafrikanische_republik 2pu 2ta 3land 2ytinburnu 1gierz 1habei
3lantun 3mbyl 3naozen 4gfeng 5ji 7achuan 8gang 8jie 8kou 5ye 5zhai 7ou 7uang 4jiang 3obaoshan 4dong 5un 4gezhuang
4qing 4tong 4yuan 4zhou 6uang 3wa 2efang 3jiang 3leznodorozhnyy 8gorsk 4ino 3mgang_district 3ngding 5zhou 4jiang
4lai 4ping_chengguanzhen 4xi 4zhou 3tysu_region 3zqazghan 2icheng 3gulevsk 3jiang 2lobin 2ob 3ngduo 5gulou 5he 5shan
7u 5xiang 7n 8g 3ucheng 5un 4jiaba 4kou 4shan 2u_cheng_city 3anghe 6yuan 3cheng 3hai 3ji 5ajiao 3kovskiy 3lebino
3madian 3tuo 3yi 3zhai 5ou 2ytomyr 8_oblast 1ibihu 3o 2elona_gora 3melkoreja 6makedonija 6u_marianas_salas
4svetku_sala 2gong 3uinchor 2le 3ina 6_region 3lmere 3zie 2mbabue 6ve 2nacantepec 3der 6_region 2on 2paquira 2tong
2yang 2zhuang 1jednoczone_emiraty_arabskie 1latoust 2in 3ten 1oar 2etermeer 2grafos 2ld_foki_koztarsasag 3iborz 2mba
2nguldak 9_province 2ry 2u 3cheng 1renjanin 2novci 1uccoli 2g 3lo 2id_afrika 5korea 5soedan 2lia 2mpango 2nyi 2rich
2shi 1viedrija 3shavane 1weden 2ickau 3tserland 2olle 1yablikovo 2pern 2uzino 0ħal_għargħur 7xaq 2z_zabbar 5ebbug
1elsinki 0ʻeua 0αγια_ελενη 5λουκια 3οσ_βαρθολομαιοσ 6μαρινοσ 2κολα 1ζερμπαιτζαν 1θηνα 1ιγυπτοσ 2θιοπια 2τη
1κτη_ελεφαντοστου 1λβανια 2γερια 1μερικανικεσ_παρθενεσ_νησοι 9κη_σαμοα 1νγκουιλα 2δορα 2ταρκτικη
3ιγκουα_και_μπαρμπουντα 1πομακρυσμενεσ_νησιδεσ_ηπα 1ργεντινη 2μενια 2ουμπα 1υστραλια 5ια 1φγανισταν 0βαασα 2λκα
2νουατου 3ταα 2τικανο 1ελγιο 2νεζουελα 2ρμουδεσ 2στεροσ 1ιετναμ 1ολιβια 2ρεια_κορεα 7μακεδονια 2σνια_ερζεγοβινη
2υλγαρια 1ραζιλια 2ετανικεσ_παρθενεσ_νησοι 0γαλλια 5κα_νοτια_εδαφη 6η_γουιανα 8πολυνησια 1ερμανια 2ωργια 1ιβραλταρ
1καμπια 5ον 3να 2ερνζι 3τεμποργκ 2ουαμ 1ουαδελουπη 4λισ_και_φουτουνα 4τεμαλα 3ιανα 4νεα 7_μπισαου 1ρεναδα 2οιλανδια
1υβασκυλα 0δανια 1ομινικανη_δημοκρατια 1υτικη_σαχαρα 0ελ_σαλβαδορ 2βετια 2λαδα 2σινκι 1ρεμπρο 2υθραια 1σθονια
2κιλστουνα 2ουατινι 2ποο 0ζαμπια 1ιμπαμπουε 0ηνωμενα_αραβικα_εμιρατα 6εσ_πολιτειεσ 6ο_βασιλειο 0ιαπωνια 1νδια
3ονησια 1ορδανια 1ρακ 3ν 2λανδια 1σημερινη_γουινεα 8οσ 2λανδια 2πανια 2ραηλ 1ταλια 0καζακσταν 2μερουν 3ποτζη 2ναδασ
2ταρ 3ω_χωρεσ 1εντροαφρικανικη_δημοκρατια 3υα 1ινα 2ργισταν 3ιμπατι 1ολομβια 2μορεσ 2νγκο_κινσασα 7μπραζαβιλ
2σσυφοπεδιο 3τα_ρικα 2τκα 2υβα 4ειτ 3οπιο 3ρασαο 1ροατια 1υπροσ 0λαοσ 2πεενραντα 2χτι 1εσοτο 2τονια 2υκορωσια
1ιβανοσ 3ερια 3υη 2επαγια 2θουανια 2νκοπινγκ 2χτενσταιν 1ουντ 3ξεμβουργο 0μαγιοτ 2δαγασκαρη 2καο_εδπ_κινασ 2λαισια
4ουι 3διβεσ 3ι 3τα 2ροκο 3τινικα 2υρικιοσ 5τανια 4οβουνιο 1εξικο 1ιανμαρ_βιρμανια 2κρονησια 1ογγολια 2ζαμβικη
2λδαβια 2νακο 3σερατ 1πανγκλαντεσ 3ρμπειντοσ 3χαμεσ 4ρειν 2ελιζ 3νιν 2οτσουανα 3υρκινα_φασο 5ουντι 4ταν 2ρουνει
0ναμιμπια 2ουρου 2ρβα 1εα_ζηλανδια 4καληδονια 2παλ 1ησοι_βορειεσ_μαριανεσ 6κειμαν 7οκοσ_κιλινγκ 8υκ 6μαρσαλ 6ολαντ
6πιτκερν 6σολομωντοσ 6φεροεσ 7οκλαντ 4σ_μπουβε 6νορφολκ 6του_μαν 7ων_χριστουγεννων 1ιγηρασ 5ια 2καραγουα 2ουε
1ορβηγια 2τια_αφρικη 6κορεα 4ο_σουδαν 1ταουγκαβπιλσ 2ομινικα 0ολλανδια_καραιβικησ 1μαν 1νδουρα 1ουλου 1υγγαρια
3καντα 2ζμπεκισταν 2κρανια 2μεο 2ρουγουαη 2ψαλα 0πακισταν 2λαιστινιακα_εδαφη 4ου 2ναμασ 2πουα_νεα_γουινεα 2ραγουαη
1ερου 1ολωνια 2ρι 3τογαλια 2υερτο_ρικο 1ρασινο_ακρωτηριο 0ρεινιον 1ιγα 1οβανιεμι 2υαντα 3μανια 1ωσια 0σαμοα
2ουδικη_αραβια 1ενεγαλη 2ρβια 2υχελλεσ 1ιγκαπουρη 2ερα_λεονε 1λοβακια 4ενια 1ομαλια 2υδαν 3ηδια 3ντσβαλ 3ριναμ
1ρι_λανκα 1τοκχολμη 1υρια 0ταιβαν 3λανδη 2λιν 3λιν 2μπερε 2νζανια 2τζικισταν 1ζαμαικα 2ερζι 2ιμπουτι 1ιμορ_λεστε
1ογκο 2κελαου 2νγκα 2υβαλου 3ρκια 5μενισταν 5ου 1ρινινταντ_και_τομπαγκο 1σαντ 2εχια 1υνησια 0υεμενη 0φιλιππινεσ
2νλανδια 2τζι 0χελσινγκμποργκ 1ιλη 0австралия 7ія 5ия 5ія 1да 2риан 1зербаиджан 1ландские_о_ва 6ькі_острови 4ия
2бания 5ія 2жир 1мериканское_самоа 9ьке_самоа 2ос 1нгилья 3ола 3ілья 2дорра 2на 2тарктида 8ка 3игуа_и_барбуда
8і_барбуда 3онина 1ргентина 2кадия 2мения 2тем 2уба 1тина 1урора 1фганистан 5істан 0багамські_острови 5ы 2лина
2нгладеш 2рбадос 2хреин 1еатрис 2ла 4русь 3из 3ьгия 5ія 3із 2нин 3ін 2рмудские_о_ва 7ькі_острови 1огуслав 2лгария
6ія 3ивия 3івія 2рисоглебск 3ос 2сния_и_герцеговина 4ія_і_герцеговина 2тсвана 1разилия 6ія
2итанські_віргінські_острови 2унеи 1урас 3кина_фасо 4іна_фасо 3ос 3унди 6і 2тан 1ілорусь 0вааса 2лка 2нта 5а 3уату
2са 2тикан 1екше 4ьо 4э 2лика_британія 5обритания 2нгрия 3есуела 6эла 4ция 2стерос 4эрос 1иго 2ктория 1ладимир
1олодимир 2сточныи_тимор 1ьетнам 1єтнам 1іддалені_острови_сша 2кторія 2ргінські_острови_сша 3менія 0габон 2иана 3ти
2льмстад 2мбия 4ія 2на 2яна 2іті 1ваделупа 3темала 2инея 6_бисау 2інея 6_бісау 1ельсінборг 7кі 2рмания 3нси 5і 3о
2теборг 3эбарг 1ибралтар 1ондурас 3конг_оар_китаю 8сар 1ренада 4ландия 8ія 3ция 4ія 2узия 4ія 1уам 1ьотеборг
1ямеенлінна 1ібралтар 0давид 2ния 3ія 2угавпилс 7ілс 5упілс 3ґавпілс 1жерси 5і 2ибути 6і 1оброслав 2миника
8нская_республика 3ініка 8нська_республіка 0евле 1гипет 1квадор 4торіальна_гвінея 1лва 2гава 2ена 2изабет 2та 2ґава
1нчэпінг 1ребро 5у 2итрея 1сватіні 2ен 2килстюна 3ільстуна 2по 4о 2тонія 1уле 1фіопія 1шилструна 1энсу 0замбия 4ія
2падная_сахара 2хідна_сахара 1имбабве 1імбабве 0иевле 2мен 2нчепинг 3ьшөпин 1змаил 2раиль 1ндия 3онезия 2ґо 1оенсуу
2ншьопинг 2рдания 6ія 3ебру 2энсу_ош 6у 1рак 3н 2ландия 1сландия 2пания 1талия 1уваскула 1ювяскюля 0каарина
2бо_верде 2захстан 2иманові_острови 2лмар 3ьмар 2мбоджа 3ерун 2нада 2рибські_нідерланди 3лскруна 5тад 4ьскруна 6тад
3мен 2тар 3ерина 1ения 3ія 2ри 1ипр 2ргизия 6стан 3ибати 2т 3аи 3о 1лара 1ндр 1оввола 2косовые_о_ва
7і_кілінг_острови 2лумбия 6ія 2мори 5ы 2нго_браззавиль 9ззавіль 6киншаса 7іншаса 3стантина 2сово 3та_рика 2т_дивуар
5івуар 3ка 2увола 1сения 1уба 2веит 2опио 4іо 1юрасао 1іпр 2рибаті 0лаос 2пенранта 4энранта 3пеенранта 5нранта
5энранта 2риса 2твия 4ія 2хти 4ы 4і 1ев 2он 3польд 2сото 2тисия 1ибава 3ерия 2ван 3ия 2епая 2мон 2нда 3чепинг
3шепинг 4ьопинг 3ьшөпин 3ћепинг 2тва 2хтенштеин 2јепаја 1овииса 2зана 2рена 1удвика 2ка 2нд 1юксембург 1іберія 2ван
3ія 2епая 2нчепінг 4эпінг 2хтенштеин 2єпая 1өнд 0маврикии 6іи 5тания 8ія 2дагаскар 2иотта 2као_оар_китаю 6сар 2лави
5і 4изия 6ія 3и 3ме 4ьо 3ьдивы 5іви 4ме 4та 3і 2ргит 3ина 3окко 3тин 6ика 6іка 3шалловы_о_ва 9і_острови 1ексика
2лндал 3ьндаль 9ская_коммуна 1иккели 2ла 4н 2на 2тава 1озамбик 6ік 2лдова 2нако 3голия 6ія 3тсеррат 1ьолндал
2янма_бирма 1янма_бірма 1ікронезія 0наарва 2дежда 2мибия 3ібія 2рва 5_ош 4е 2уру 1евгин 2пал 1игер 5ия 2дерланды
2карагуа 2на 2уэ 1ова_зеландія 5каледонія 4я_зеландия 6каледония 2рвегия 6ія 3рчепинг 7інг 4шепин 3чэпінг 3шепинг
4ьопинг 3ћепинг 1ігер 5ія 2дерланди 2карагуа 2меччина 2уе 0о_в_буве 4мэн 4норфолк 4рождества 3а_каиман 6ука 5питкэрн
1бєднані_арабські_емірати 1влу 1лимпи 1ман 2ол 4ь 1строви_кука 8піткерн 4ів_буве 7мен 7норфолк 7різдва 7святоі_єлени
1улу 0пакистан 2лау 3естинские_территории 9ькі_територіі 2нама 2пуа_нова_гвінея 9ая_гвинея 2рагваи 2ско 1еру 1ольша
4ща 2рва 4о 5о 3и 3тугалия 8ія 3ы 3і 1уерто_рико 2эрто_рико 1івденна_корея 7ии_судан 7о_африканська_республіка
3нічна_корея 9македонія 7і_маріанські_острови 0ратибор 1еспублика_корея 2юньион 5он 1игae 3а 1ованиеми 6эми 6јеми
5іемі 2за 3ета 2ман 3ул 2ссия 3ія 1уанда 2мунія 3ыния 1ыга 1іґа 0салина 3ьвадор 2моа 2н_марино 2удовская_аравия
4івська_аравія 1вартхольм 1еверная_македония 2дертелье 9є 8је 7ље 3эртэлье 2иняеки 5иоки 8і 3шельские_о_ва
8ькі_острови 2н_бартелеми 9лемі 4мартен 3егал 3т_люсия 8ія 2рбия 4ія 2јнејоки 1иена 2лвестър 2нгапур 3т_мартен 2рия
3ія 1ловакия 5ччина 4ения 6ія 1мирна 1оединенные_штаты 2ломоновы_о_ва 9і_острови 3ьна 2мали 5і 2фия 4ја 3ія
1получені_штати 1такгольм 2еколна 2окгольм 9_ош 4нольм 4ольма 4холм 4ҳолм 1удан 2ндсвал 8ль 8ь 2ринам 1ьерра_леоне
2одертале 7еле 9ие 2єрра_леоне 1інгапур 3т_мартен 0таджикистан 2ивань 3ланд 2лин 3лин 6_ош 6н 4інн 3ін 2мпере 6э
2нзания 6ія 3я 2рту 2іланд 1ереза 3кс_и_каикос 1имон 4р_лешті 2но 1ого 2келау 2на 3га 2ри 3і 1ринидад_и_тобаго
4ідад_і_тобаго 1увалу 2нис 3іс 2реччина 3и 3кменистан 7істан 4у 3ция 1юри 4_ош 1јури 0убсала 1ганда 2орщина
1збекистан 1краина 4іна 1меа 3о 1оллис_и_футуна 4іс_і_футуна 1ппсалae 6а 2сала 2фала 1ругваи 0фарерские_о_ва
6ькі_острови 1едеративные_штаты_микронезии 1иджи 2ли 4ппины 2нляндия 1лорин 1олклендские_о_ва 9ькі_острови 1ранция
5узская_гвиана 9ая_полинезия 9ие_южные_территории 7ька_гвіана 9а_полінезія 9і_південні_територіі 5ія 1іджі 2ліппіни
2нляндія 0халмстад 3ьмстад 2меэнлинна 2на 2сан 1елзинки 3сингборг 9ри 6ки 3ьсинборг 7гборг 7ки 9_ош 5інгбарг 7кі
2менлина 1ино 1орватия 6ія 1яменлинна 4энлинна 0центрально_африканская_республика 9оафриканська_республіка
0черногория 2хия 3ія 1ико 2ли 3і 1орногорія 0швеицария 7ія 3ция 4ія 1еки 1ри_ланка 2і_ланка 0эквадор
4ториальная_гвинея 1лва 4_ош 1ребру 2итрея 2эбру 1сватини 2кильстуна 3ільстуна 2поо 2тония 1фиопия 0ювяскюля
1жно_африканская_республика 3ыи_судан 1рмала 0ямаика 1нина 1пония 4ія 1рослав 0євле 1гипет 1мен 1нчепінг 0ізраіль
1ндонезія 3ія 1рак 3н 2ландія 1сландія 2панія 1талія 0јевле 2ншепинг 3ћепинг 1ивескиле 1оенсу 0ҳелсинки 0һельсинки
0өпсала 0էլվա 0հելսինկի 0նառվա 0ումեո 2փսալա 0պոռի 2րվոո 0ռիգա 0սունդսվալ_ֆա 1տոկհոլմ 0տալլին 2մպերե 1յուռի 1ոռի
2ւրկու 0אואולו 2מאו 2פסאלא 4לה 2ראל 1ילת 1נה 1רברו 2ד 2יאל 0בארי 1ורוס 0גטבורג 1עטעבארג 0דאוגבפילס 1ענענבורג
0האלמסטד 1לסינגבורג 5קי 1מנלינה 1עלסינקי 0ואסה 1ועסטעראס 1נטה 1סטרוס 1קשה 0טאלין 1ורקו 1מפרה 1רטו 0יבלה 1ואנסואו
1יבסקילה 0לאה 3טי 2ון 2פנראנטה 1יאן 2יפאיה 2נשעפינג 0מאלמה 1וריה 0נארשעפינג 1ורשפינג 1רבה 0סארי 1ונדסוואל 2פיה
1טוקהולם 1ייניוקי 0עדן 1ומר 1רעברו 0פורי 0צור 0קוטקה 2פיו 1רלסטד 4קרונה 2ן 0רובניימי 1יגה 3ע 1ני 1עות 0שטאקהאלם
0תמרה 0اریبرو 1ستکهلم 2كيلستونا 2کلستونا 3یلستونا 1لتا 2وا_استونی 1مال 2یہ 1وبسالا 2ربرو 3یبرو 2لو 4_فنلاند 2مول 3يو
3یو 2ولو 2پسالا 1پسالا 0بوراس 3فو 3وس 3ي 0تاللىن 3ين 3ین 2مبيري 3پره 4یرے 2ڵین 1رکو 1وركو 3کو 3ی_استونی 0جمال
1وتنبرج 2نکومنگ 2ينسو 1یواسکیلا 0داوغافبيلس 1وگاپیلس 0رشيد 1وفانييمي 2وانیمی 1ىگا 1ياض 2جا 2غا 1یگا 0سارة 2لم
1توكهولم 2ۆکھۆڵم 1ندسفال 4وال 1هيل 1ودتلیا 3رتاليا 7یا 8ے 2ندسوال 1ينايوكي 1ٹاکہوم 1یناجوکی 2ينایوکی 0شيراز 0صوفيا
0عمران 0غالي 1وتنبرغ 0فاسا 2طمة 2كسيو 2لكا 2نتا 1يستيروس 0كارلستاد 5كرونا 2لمار 1وتكا 2فولا 2وبيو 0لابينرنتا 2ختی
2هتي 2پرنتا 3ینرانتا 2ہتی 1فيف 1نشوپنگ 2ڈ 2کومنگ 1ودویکه 2رين 2ند 3ڈ 1ينشوبينغ 1پین_رنتا 1ینشوپینگ 0مونس 1ياس 0نارفا
3وا 1ورشوبينغ 5پینگ 3کوپنگ 0هالمستاد 2مينلينا 1لسنكي 4ڪي 3ينغبورغ 3ینکی 5گبورگ 1يلسينكى 1یلسینکی 0واسا 3ٹیراس 2لکا
2نتا 1ستروس 1کفو 1یستیروس 2کوہ 3یو 0يفله 1وفاسكولا 2نشوبينغ 2ينسو 0ٹالن 1یمپیر 0پوروو 3ی 0کارلستا 5ٹاڈ 5کرونا 4شته
2لمار 1لسکرونا 2مار 3ر 1وتکا 2ولا 3وولا 3پیو 0گاولے 1ووتھنبرگ 0ھێلسینکی 0ہالمستا 5ٹاڈ 1لسنکی 4گبورگ 1مین_لننا
1یلسنکی 2مینلنا 0یاولہ 1واسکولا 2تبری 2له 2نشوپنگ 6ینگ 2ينسو 1یواسکیلا 0ܗܠܣܢܩܝ 0ܝܘܢܫܘܦܝܢ 0ܣܛܘܩܗܘܠܡ 0उपस_ल 0ऊम_ओ
0क_रलसकर_न 0त_प_र 2रक 2ल_न 3ल_न 0ल_प_य 0वह_ट 0सट_कह_म 2कह_म 1तकह_म 0ह_लस_क 5नक 0আমব_র 0ট_রক 0ত_লল_ন 0ল_নড 0সটকহ_ম
0হ_লস_ঙক 0ਊਮ_ਓ 0ਤ_ਲ_ਨ 0ਵ_ਲਕ 0ਸਟ_ਕਹ_ਮ 0ਹ_ਲਸ_ਕ 0உபச_ல 0எலச_ஙக 0த_ல_ன 0ல_ணட 0ஸட_கஹ_ம 0సట_కహ_మ 0ಸಟ_ಕಹ_ಮ 0ಹ_ಲಸ_ಕ 0ട_ല_ൻ
0സററ_കകഹ 0ഹ_ൽസ_ങക 0กอเทนเบ_ร_ก 0คาร_ลสกรนา 2ลมาร 0ต_มเปเร 1รก 0ทาลล_นน 0นอร_เชอป_ง 1าร_วา 0บโรส 0ยแวสกแล 0ร_กา
0ล_นเชอป_ง 1นด 1าห_ต 0วาซา 0สตอกโฮล_ม 0อปซอลา 1เมโอ 0ฮาล_มสตา 0เซอเดอร_เตลเย 1ย_นเชอป_ง 2ฟเล 1วกเชอ 2สเตโรส 1ออเรบร
1ฮลซ_งก 6บอรย 0โกเป_ยว 1อวล 0ཏལ_ལན 0ཧལ_སན_ཀ 0တ_က_မ 0ဟယလဆငက_မ 0ბუროსი 0გეტებორგი 0დაუგავპილსი 0ევლე 1ლვა 1რებრე
1სკილსტუნა 2პოო 0ვანტაა 1ესტეროსი 2ქშე 0იენჩეპინგი 0კალმარი 2რლსკრონა 5ტადი 1უოპიო 0ლაპეენრანტა 1იდა 2ეპაია 2ლი
2ნჩეპინგი 1უნდი 0მარი 0ნარვა 1ორჩეპინგი 0რიგა 0სედერტელიე 1ოფია 1ტოკჰოლმი 1უნდსვალი 0ტალინი 2მპერე 2რტუ 1იური
1ორის_მუნიციპალიტეტი 1ურკუ 0უმეო 1ფსალა 0ჰალმსტადი 1ელსინგბორგი 6კი 0나르바 1ᅩ르셰핑 0다우가프필스 0라티 2펜란타
1ᅩ바니에미 1ᅮᆫ드 1ᅵ가 2예파야 2ᆫ셰핑 0바사 2ᆫ타 2ᆯ카 1ᅦ스테로스 2ᆨ셰 1ᅩ로스 0세이네요키 1ᅬ데르텔리에 1ᅮᆫ스발
1ᅳ톡홀름 0에스킬스투나 2ᆯ바 1ᅨ블레 2테보리 2ᆫ셰핑 1ᅩ울루 1ᅬ레브로 1ᅭ엔수 1ᅮ메오 2ᆸ살라 1ᅵ위베스퀼레
0칼마르 3스크로나 5타드 1ᅩ우볼라 2ᆺ카 1ᅮ오피오 0타르투 2ᆯ린 2ᆷ페레 1ᅮ르쿠 0포르보 3ᅵ 0할름스타드 1ᅦ멘린나
2ᆯ싱보리 6키 0ሄልሲንኪ 0ሜልንዳል 0ስቶኮልም 0ቱርኩ 0ታሊን 0ካርልስታድ 0ዬተቦርይ 0ᐃᐅᑕᐳᕆ 0ᐆᑉᓴᓚ_uupsala 0ᑲᕐᓪᔅᑕᑦ 0ᒧᓪᓐᑕᓪ_molndal
0ᔅᑑᒃᓱᓪᒻ_stuukhulm 0イェウレ 0ウァルカ 2ンター 2ーサ 1ェステロース 1フサラ 1メオ 0エシルストゥーナ 1スホー 1レフルー 0オウル 0カルマル市 1ールスクルーナ 4タート 0クオヒオ 0コウウォラ
1トカ 0ストックホルム 1ンツウァル 0セイナヨキ 1ーテルテリエ 0タウカフヒルス 1リン 1ルトゥ 1ンヘレ 0トゥルク 0ナルウァ 0ノーショーヒンク 0ハメーンリンナ 1ルムスタット 0ヘクショー 1ルシンキ 4ホリ
0ホルウォー 1ロース 0マルメ 0ミッケリ 0ユウァスキュラ 0ヨエンスー 1ンショーヒンク市 1ーテホリ 0ラッヘーンランタ 1ハティ 0リエハーヤ 1ンシェーヒンク 0ルント 0ロウァニエミ 0乌普萨拉 0于韦斯屈莱 1默奧
0利耶帕亚 0北雪平 0南泰利耶 0卡尔斯克鲁纳 3塔德 1爾馬 0厄勒布鲁 0哈尔姆斯塔德 0哥德堡 0图尔库 0圖爾庫 0坦佩雷 0埃尔瓦 1斯基尔斯蒂纳 2波 0塞伊奈约基 0奧莫爾 0布羅斯 0希星堡 0庫奧皮奧 0延雪平
0拉彭兰塔 1普兰大 1赫蒂 0斯德哥尔摩 3爾摩 0松茲瓦爾 0林雪平 0波爾沃 0海门林纳 0瓦爾卡 0盧德維卡 0科沃拉 1特卡 0米凱利 0约恩苏 0纳尔瓦 0罗瓦涅米 0耶夫勒 0赫尔辛基 3堡 1爾辛基 0陶格夫匹尔斯
0韦克舍 1斯特罗斯 0马尔莫 2默 0𐌳𐌰𐍅𐌲𐌰𐍅𐍀𐌹𐌻𐍃 0𐍃𐍄𐌿𐌺𐌺𐌰𐌷𐌿𐌻𐌼𐍃
"""
"""Places, and the larger parts of countries."""

MAKES = """
0alfa 1ston 1udi 0bentley 1mw 1ugatti 1yd 0cadillac 1hevrolet 2rysler 1itroen 1upra 0dacia 0ferrari 1ord 0honda
1yundai 0jaguar 0kia 0lamborghini 1exus 0mahindra 2ruti 2serati 2zda 1ercedes 1ini 2tsubishi 0nio 2ssan 0opel
0peugeot 1olestar 2rsche 0renault 1ivian 1olls 0skoda 1ubaru 2zuki 0tata 1esla 1oyota 0vauxhall 1olkswagen 3vo
"""
"""Makes of cars."""

FAMOUS = """
0aalto 1bdias 2elard 3naki 2khas 6ian 5z 6ian 2naki 2o 3riginal 1cadian 2haean 4ian 3eson 3illes 3omawi 1dad 3pa
2enauer 2iti 4ya 2ventist 1egisthus 2neas 3gus 2olian 4us 2schylus 4ulapius 3ir 3op 2ther 1fghanistani 2rican
4kander 7er 1gamemnon 3ssiz 2distis 2ee 2geus 2laia 2ricola 4ppa 6ina 1hab 2riman 2ura 1ides 3oneus 2ken 1jax
1khenaten 7on 1labama 7n 6ian 3ddin 3ric 3skan 2banian 3ers 5ti 2caeus 3ibiades 4des 3ott 3yone 2ecto 3ut 5ian
3xandrian 2ger 5ian 3onkian 7n 5quian 8n 3ren 2hacen 4zen 2i 2lah 2mighty 3oravid 2onso 2satian 2taic 1maethon
3terasu 4i 3zon 2brose 2en 3rican 5ndian 2hara 2ish 2on 3r 2un 4dsen 1nabaptist 3nias 3purna 3sazi 3xagoras 4imander
6enes 2dorran 3romeda 3vari 2gevin 7e 3lican 3olan 5ese 3uillan 4s 2namese 4purna 2ouilh 2pu 2selm 3har 2tichrist
4gone 7us 5uan 3oninus 6us 5y 3um 2ubis 3nnaki 2zac 1phrodite 2ollinaire 5o 3stle 2palachian 3leton 2su 1quarius
3inas 1rab 4ian 5st 3gon 3maean 4ean 3paho 7e 3wak 6an 4n 2cadian 3himedes 2endt 3opagite 3s 2gentinian 3ive 3onaut
3us 2hant 4t 2iadne 4nrhod 6od 3cara 3es 3kara 3starchus 5ophanes 6telean 9ian 7le 3us 3zonan 6ian 2juna 2kansan
7wyer 2menian 3in 5ian 6us 2ouet 2p 2rhenius 2taxerxes 3emis 2uru 2yan 1sanga 2ch 3lepius 2hir 3kenazi 3ton 5reth
3ur 5banipal 2ian 4tic 3mov 2klepios 2samese 3urbanipal 3yrian 2taire 4rte 3erope 3or 2ura 4banipal 2vins 1takapa
3turk 2e 3n 2habascan 7kan 4nasius 4pascan 7kan 3elstan 4na 5e 5ian 2lantides 4s 2on 2reus 3opos 2sugewi 2tacapan
3ila 3lee 1uchincloss 2den 3ubon 2geas 3ustine 8ian 6us 2relius 3ora 2ssie 3ten 4ralian 5ian 5onesian
1valokiteshvara 9svara 2erroes 2icenna 2ogadro 1wol 1zerbaijani 2tec 0baal 2bar 3ylonian 2cchus 3h 2daga 2eda 4eker
2hai 4mian 3raini 4eini 2irava 2kunin 2lanchine 4rama 3boa 3der 4r 3enciaga 3four 3kan 3thasar 6zar 3zac 2ngladeshi
3khead 3ting 4u 2ptist 2rany 3badian 5rossa 3deen 3kley 3num 3rie 4ymore 3t 4h 5oldi 7in 4ok 3uch 2sil 3otho 3que 3t
2thsheba 3swana 2udelaire 3m 2varian 2yard 1eaumont 4voir 3ver 6brook 2chuana 3ket 6t 3querel 2de 3ouin 3uin 2echer
3lzebub 3rbohm 3thoven 2guine 2hmen 3rens 4ing 2l 3gian 3isarius 3larmine 9o 4erophon 4ini 4oc 3orussian 3shazzar
2nchley 3edict 8ine 4t 3gali 3inese 3tham 2owulf 2rber 3gman 4son 3ia 4ng 3keley 3lage 4iner 5oz 3mudan 6ian 3nhardt
4ini 4oulli 4stein 3ra 3tillon 3zelius 2ssel 5mer 2the 4une 2veridge 3in 1haga 2utanese 6i 1ierce 2gfoot 2loxi 2net
2sayan 3marck 2zet 1lackbeard 5foot 6riar 5shirt 2eriot 2igh 3mp 3tzstein 3xen 2och 3k 3omfield 2ucher 3ebeard 1oann
2ccaccio 3he 2ddhisatva 3hisattva 3oni 2ehm 5e 3ll 3r 3thius 2gart 2hemian 3me 3r 2leyn 3ingbroke 4var 5ian 3shevik
8st 3tzmann 2naparte 3hoeffer 3iface 3ney 3temps 2ole 2reas 3ges 4ia 3nean 3odin 2sch 3e 3tonian 3well 2tticelli
2ugainville 3lez 2wditch 4ler 3ie 1radbury 4street 3ge 4g 4i 3he 4ma 5s 4ui 3ille 3mante 3ncusi 3que 3zilian 2echt
3ton 3uer 4ghel 3zhnev 2igid 5t 3haspati 3nton 3tish 7er 4on 4s 4ten 2oca 4khouse 3glie 3nte 3wne 5ie 5shirt 2uch
4kner 3egel 5hel 3le 3mmell 5ie 5y 3neian 5lleschi 4hild 4nhilde 4o 3tus 2ynhild 1uber 2chner 3keye 2ddha 5ist
2kharin 2lgarian 3lfinch 3tmann 2nche 3sen 3uel 3yan 2rbage 5nk 3ger 4oyne 3k 3mese 3nham 4side 3roughs 3undian
2shman 4nell 2tterfield 1yelorussian 2zantine 0cabalist 3ell 3ot 2ddo 3mus 2esar 2gliostro 3ney 2hita 2irene 2jun
2kchiquel 2lapooya 5uya 3der 3ifornian 4gula 3las 4iope 3vinist 6o 3ypso 2mbodian 4rian 3eroonian 3us 2naanite 4dian
4rese 3etti 3tabrigian 3uck 4te 2pek 4t 5ian 3one 3ra 4icorn 2ravaggio 3ducci 3elian 4w 3ib 4oca 3lovingian 4yle
3melite 4ichael 3negie 4ot 3olingian 7ian 5us 4thers 3rel 5re 3tesian 4haginian 5usian 4ier 4wright 3uso 2sals 4nova
3par 3siopeia 5rer 5te 5us 3tillian 2talan 4wba 3her 4olic 8os 3tell 3ullus 2ucasian 2valier 3ell 4ndish 2xton 2yuga
1ebuan 2llini 3sius 3t 2o 2pheus 2rberus 3es 2wa 2zanne 1fo 1hadian 3gall 3ldaean 5ean 6e 3mplain 5ollion 3ncellor
4di 3plin 3rcot 4lemagne 4on 4tist 3sid 4sid 3teaubriand 3ucer 2echen 3ever 3khov 4ov 3ops 3remis 8s 4okee 4ubini
3sterfield 7ton 3valier 3wa 3yenne 2icano 4hewa 4kasaw 4o 3lean 4uba 3maera 5kum 5riko 4era 3naman 4ese 4ook 3pewyan
4pendale 6wa 3rico 4on 2octaw 3pin 2ristie 2ukchi 3rchill 3vash 1iardi 2cero 2mabue 2ncinnatus 3derella 2rcassian 4e
2stercian 1laudius 4sewitz 2eanthes 3menceau 6s 3opatra 2inton 3o 3ve 2otho 3vis 2ytemnestra 1nut 1o 2ca 3himi 5se
3kcroft 4ney 3opa 6h 3teau 3us 2dy 2han 3n 2leridge 3ombian 4radan 4ssian 3umbus 2manche 3enius 3stock 3te 2ndorcet
3fucian 9ist 7us 3golese 4regationalist 6ve 3necticuter 3oy 3stantine 3tra 3verso 2olidge 2pernicus 3land 4ey 3t
2rday 4oba 3elli 3inthian 3neille 5ll 4husker 4ishman 7woman 4wallis 3ot 3reggio 3tes 2ssack 3tanoan 2ue 3lomb
3perin 3rbet 3steau 2wper 1pa 1raigie 2ee 3ole 4n 3tan 2ichton 4k 3spin 3us 2oat 5ian 3ckett 3esus 3hn 3mwell 3nus
4yn 3okes 3use 2usader 1uban 2lbertson 2mberland 2pid 2rie 3rier 3tiss 2shing 3ter 2vier 1ybele 2clops 2mry 2newulf
3wulf 2prian 5ot 7e 2ril 3us 2therea 1zech 5oslovak 9vakian 3rny 0da 2edal 6us 2gan 3da 3on 3uerre 2imler 2kota 2li
3matian 2mascene 3galnunna 3kina 3ocles 2ne 3te 4on 3u 2rdan 6ian 6us 3row 3winian 2umier 2vys 2wes 2yan 1ci 1ebs
3ussy 2catur 3ius 2ere 2foe 2kker 2lacroix 4ware 8an 7ian 3bruck 3ibes 4lah 4us 4verer 3orme 2meter 3ille 3ocritus
4gorgon 4sthenes 3psey 2rain 2scartes 3poina 2vi 2war 1harma 2egiha 1iaghilev 3s 2ckinson 2derot 3o 3rikson 2egueno
3sel 3trich 2maggio 2ndymene 3esen 2ocletian 3genes 3nysius 6us 3phantus 3r 2rac 2sney 3raeli 2x 1jiboutian 1odgson
2lby 2minican 4tian 2nar 4tello 5ist 5us 3izetti 3kin 3ne 2olittle 2ppler 2rian 2stoevski 9y 5yevsky 2uglass 2wding
4y 3land 1p 1r 2aco 4ula 3vidian 2eiser 3yfus 2uid 3se 3ze 2yden 1ubliner 2champ 2fy 2kas 2lles 2mas 3uzi 2nkard 4er
2rant 6e 3er 3ga 3kheim 3rell 2se 2tch 5man 2valier 1vorak 1yaus 0ea 2dwig 2mes 2rhart 2stman 1bionite 1ccles 2khart
2uadoran 7ian 1ddington 2erle 2ison 2o 2wardian 3y 1gbert 2levsky 2yptian 5ologist 1hrenberg 3lich 1ichmann 2ffel
2jkman 2nstein 3thoven 2senhower 5staedt 7ein 1kman 1lectra 2gar 2iot 3zabethan 2lington 3sworth 1mile 2pedocles
1ndecott 3icott 2esco 2gels 3lishman 7woman 2ki 4du 2lil 2uki 1olian 2s 1phesian 2ictetus 4urus 3metheus 3scopalian
2ona 2stein 1rasmus 3to 5sthenes 2ebus 3shkigal 8el 2ie 3nyes 3s 3trean 2lenmeyer 2nst 2os 1saki 3u 2kimo 2q 3uimau
5re 2selen 4ne 1thelbert 5red 3iopian 2onian 2ruscan 1uclid 2ler 2menides 2phrosyne 2rafrican 4sian 3ipides 3opean
3yale 4dice 2sebius 3tachio 2terpe 1venk 5i 3rs 1we 3nki 1xcellency 1yck 2eish 2senck 1zechiel 3kias 5el 0faberge
3ian 2fnir 2gin 2hd 3renheit 2irbanks 3sal 2lkner 3la 4opio 7us 5t 3staff 2raday 3ragut 3si 2therhood 3ima 6h
2untleroy 4us 3st 5us 3ve 2wkes 1dr 1echner 2d 3eralist 2llata 4ini 2nrir 2rber 3dinand 3mat 4i 2ynman 1iedler 2jian
2lipino 3lmore 2rth 1laminius 3ubert 2inders 2orentine 5y 4idian 5o 4y 1o 2mor 5ian 2nda 3tanne 4eyn 2rester 3seti
3tuna 2ucault 3rier 1ragonard 3nce 5iscan 5k 5ophil 9le 8obe 4kenstein 3zer 2eemason 3mont 3nchman 6woman 3snel 3ud
5ian 3y 4a 4ja 4r 2ick 3edan 3gg 5a 3sch 4ian 2obisher 3ebel 1uchs 2la 4h 4ni 3be 4right 2nk 2rnivall 0gabonese 4r
5iau 2daba 2ea 2insborough 3seric 3us 2lahad 4tea 5ian 3braith 3en 3ilaean 5ean 6o 3laudet 3ois 3sworthy 3ton 3vani
2mbian 3ow 2napati 3dhi 3esa 5h 6a 3ymede 2rbo 3diner 3field 3gantua 3ibaldi 3nier 3rick 3uda 2skell 3par 2tling
2udi 3guin 3l 3ri 3tama 2wain 1e 2b 2hrig 2iger 3sel 2mini 2net 4van 3oese 3seric 2ordie 4gian 2raint 3bert 3man
6ist 3onimo 3shwin 3yon 2sell 3ner 1hanian 1iacometti 2bbon 3raltarian 5n 2de 2elgud 2lgamesh 6ish 3lette 3man 4er
2otto 2psy 2rard 4udoux 3ondin 7st 3ru 2sh 1jellerup 1ladstone 3swegian 2endower 2inka 2uck 1nostic 1oddard 3el
3head 3iva 3unov 2ebbels 3ring 3thals 5e 2gh 3ol 2ldberg 4ing 4man 6rk 4oni 4wyn 3gi 3iath 2mbrowicz 3pers 2ncourt
3d 3gora 6ist 3ne 2odyear 3fy 2pher 2rdimer 5us 3gas 4on 3ing 3ki 4y 2th 2udy 3nod 2ya 1p 1raecophile 3hame 3inger
3ppelli 2ecian 4o 3ek 4ley 4nberg 3nadian 3sham 2ieg 3mm 3s 2omyko 3pius 3tius 3ucho 1uarani 4neri 8us 5ieri
3temalan 2enevere 2ggenheim 2inea 6n 5vere 4ness 2jarati 3erati 2la 3liver 2rkha 2stavus 2tenberg 2yanese 1wydion 3n
4n 1ynne 2psy 2wn 0habakkuk 3er 2chiman 2des 3rian 2eckel 2ggai 2ida 3tian 2kka 2lchidhoma 4yon 3dane 3evy 3ley 3s
2man 3marskjold 4erstein 5tt 4urabi 7pi 3sun 2ndel 3nibal 3overian 3uman 2refoot 3greaves 3ijan 3low 3msworth 3po 4y
3riman 4od 3te 3vard 2sdrubal 3ek 3id 3sam 4el 4id 2thaway 2usa 4sa 2vasupai 2waiian 3kyns 3orth 3thorne 2ydn 3ek
3wood 2zlitt 1earst 3viside 2bbel 3e 3raist 4ew 2cate 3ht 2gel 5ian 2idegger 3mdal 7l 8r 3nlein 4z 3senberg 2l 3ios
3lene 5r 4man 3mholtz 3oise 2ming 6way 3minge 2pburn 3haestus 5istos 3worth 2racles 6itus 4kles 3bart 3cules 6ius
3der 3ero 3mann 5phroditus 4es 3od 5otus 4n 3r 4ick 3schel 4hey 3tha 4z 3zberg 2siod 3perides 3se 3tia 2vesy
2yerdahl 3rovsky 3se 3ward 2zekiah 1iawatha 2ckock 2datsa 2eronymus 2gginson 3hlander 2lbert 3debrand 3lel 2mmler
2nayanist 3demith 5nburg 4oo 4u 5stani 2pparchus 4ocrates 2rohito 3schfeld 6sprung 2spanic 2tchcock 5ings 6ti 3ler
3tite 1mong 1oagland 2bbes 2der 3gkin 3r 3ur 2enir 2ffa 4mann 8sthal 2garth 3g 2ka 4n 3usai 2lbein 3lander 4erith
3ofernes 2nduran 3egger 2oke 5r 3sier 2pi 3kinson 2rney 3owitz 3ta 3us 2sea 2tei 3h 4r 3spur 2udini 3ghton 3sman
3yhnhnm 2wells 2yle 1rolf 1ualapai 4pai 2bble 2ggins 3uenot 2mboldt 3e 3perdinck 2n 3garian 3kpapa 3tington 2pa 2rok
2s 3s 4erl 4ite 3ton 2tton 3u 2xley 2ygens 1yades 2dra 2geia 2men 2patia 3erborean 5ion 3nos 0iago 2petus 1berian 4t
2rahim 2sen 1carus 2elander 1dahoan 1gbo 2igi 2natius 1khanaton 1llinois 8an 1nanna 2ca 4n 2dian 6an 3onesian 3ra
2ger 5man 3res 4ian 2jun 2uit 1o 2nesco 3ian 2wa 4n 4y 1phigenia 1raki 3ni 5an 3qi 2elander 3naeus 2ish 5man 5woman
2onsides 3quois 2ving 1sabella 2eult 2herwood 3mael 3tar 2lamist 2maili 7an 2ocrates 3lde 2raeli 7te 2sachar 1talian
2hunn 1vanov 2es 1zanagi 5mi 0jack 4sonian 3obean 5i 6n 6te 3quard 2gannath 9a 3ganath 2hvey 3weh 2inist 2kobson
2maican 2nsen 6ist 3us 2p 3anese 3heth 2rrell 2spers 2t 2van 5ese 2y 1effers 7onian 2hovah 2nner 2roboam 2spersen
3uit 2vons 2w 3ess 2zebel 1fk 1hvh 1ihadist 2nnah 1nr 1oachim 2casta 2ffre 2liet 4ot 3liet 3son 2nah 3son 2plin
2rdanian 2sephus 2tun 5n 2ule 2ve 2wett 1r 1udah 4s 2ggernaut 3oslav 8ian 2ng 4ian 3ker 6s 3o 2piter 2ssieu 3tinian
2te 2venal 0ka 2bbalist 2chaturian 2fir 3ka 2hn 2iser 2lapooia 5uya 3inin 3ka 4i 2ma 3ia 3puchean 2narese 3dinski 8y
3sa 5n 5s 3t 2rakalpak 3elian 3lfeldt 4off 3ok 3savina 3tikeya 4tikeya 2shmiri 3site 3tler 2tari 2unda 2zak 5h
6stani 4n 1ean 3ton 4s 2b 3le 2chua 2kchi 3ule 2llogg 3t 2ndrew 3nan 4elly 3tuckian 3yan 5ta 2okuk 2pler 2rensky 3n
3ouac 2ttering 2ynes 6ian 1hachaturian 3lka 5ha 3ma 3nty 2edive 3pera 2irghiz 2mer 2omeini 2rushchev 2ufu 1i 2chai
3kapoo 2erkegaard 2liwa 5i 3roy 2ngmaker 3sey 2owa 2pling 2rchhoff 5ner 3ghiz 4iz 2shar 3singer 2tchener 2wi
1lansman 3proth 2ee 3ist 2imt 3nefelter 2opstock 3tho 2uxer 1oasati 2estler 2lam 2mi 2ngfuze 3oe 4ye 2opmans 2rda 3e
4an 3zybski 2sciusko 7zko 2ta 4r 2ussevitzky 1p 1rasner 3ut 5head 2ebs 3isler 2ishna 2oeber 3necker 3potkin 2uger
3pp 1shatriya 1uhn 2i 3per 2rd 3osawa 2san 2tuzov 2waiti 2znets 1wakiutl 3nnon 1yd 0laban 3ourite 3rouste 2chaise
4esis 3onian 2ertes 2fayette 3fite 3itte 2ius 2kota 3shmi 2maist 4rck 7ian 2ncastrian 4elot 3dau 4owska 4steiner 3ey
3ge 4muir 4obard 4try 2o 3coon 3tian 2place 3p 4lander 2rdner 3ousse 2salle 3so 2tin 5ist 5o 3ona 3robe 3vian 2uder
3ghton 3rens 6tius 2voisier 2zarus 1bj 1eacock 3dbelly 3key 3nder 3r 4y 2banese 2dbetter 2euwenhoek 2ger 3ionnaire
2har 2ibnitz 6z 3gh 2maitre 3mon 2nard 3in 2onidas 4tief 2rmontov 3ner 2sbian 3seps 4ing 2to 2uwenhoek 2vantine 3ite
1ibby 3erian 3ra 3yan 2chtenstein 2echtensteiner 2lith 4uokalani 3liputian 2ncoln 3d 4bergh 3naeus 2pchitz 3mann 3pi
4mann 3scomb 2r 2ster 3zt 2thuanian 3tre 2vermore 5pudlian 3ingstone 3onian 3y 1lud 2yr 1obachevsky 2cke 2eb 3we 4i
2gos 2lita 2mbard 2ndon 6er 3gfellow 2os 2rca 3elei 4ntz 5z 3re 2thario 2uisianan 8ian 2velace 5l 2well 3lander 3ry
2yola 2zier 1pn 1uba 4vitcher 3itsch 2ce 3retius 3ullus 5us 2ddite 2gh 3osi 2lli 4y 2nt 2theran 3yens 2xembourger
6urger 1yly 2sander 3enko 3imachus 4ppus 2tton 0macarthur 4ulay 3beth 3dowell 3edonian 3gregor 3h 4iavelli 9lian
3kem 5nzie 3leish 5od 2dagascan 3onna 2eterlinck 2gellan 3inot 3ritte 3yar 2ha 4n 4yanist 3di 5st 3ican 3ler 3omet
4und 3ratta 2idu 3ler 4lol 3monides 3ner 4tenon 3tland 2kataimeshekiakiak 2lachi 7as 4mud 4wian 4y 5an 5sian 3divan
6ian 3ebranche 4cite 4vich 3ian 4nowski 3larme 4on 3ory 3pighi 3raux 3tese 4hus 7ian 4o 2m 3mon 2nannan 4wydan 7dan
3chu 4unian 3daean 4ean 5la 6brot 6shtam 7tam 3et 3ichaean 6ean 7e 3sart 4field 4i 4on 3tegna 5ll 3zoni 2o 3ist
2quis 6ard 2ra 4co 4t 5ha 3ceau 4iano 4oni 4use 3duk 3icopa 4ni 5o 3koff 5v 6a 3lowe 3quand 5ette 5is 3rano 3s 4tan
3ti 5an 3ut 3vell 3x 4ist 3ylander 2sefield 3orete 5ite 3sachuset 9etts 5soit 4enet 4ine 4orete 3ters 2tisse 3oaka
3tole 2ugham 3ldin 3passant 3riac 5tanian 6ian 4ois 3ser 2ximian 2ya 4kovski 4n 2zzini 1ccauley 3ullers 2graw 3uffey
2kim 4nley 2luhan 2master 1d 1ead 4e 3ny 2dawar 3ea 3usa 2gaera 2ir 3ssner 3tner 2lanchthon 3chior 6te 3kite 3lon
3pomene 3ville 2nander 3cken 3del 6eev 7yev 6ian 6sohn 7sohn 3elaus 3iere 3ninger 4onite 3ominee 7i 4tti 3shevik
3uhin 2phistopheles 2rcator 4ouri 3edith 3genthaler 3lin 3man 3odach 4vingian 3ton 2smer 3oamerican 3siah 2tchnikoff
9v 3hodist 4uselah 3is 3ternich 2xican 7o 2yerbeer 5hof 1iami 3o 2cawber 3heas 5langelo 6son 5ner 4igander 3mac 2das
2kmaq 2lady 4nese 3haud 3lais 5y 4et 4ikan 3ne 3quetoast 3tiades 2mir 2niconju 3kowski 3nesotan 5wit 3oan 4s 4taur
3uit 4teman 2rabeau 3o 2ssissippian 4ouri 8an 2tchum 3ford 3hra 6ist 6s 5idates 3ra 3terrand 2wok 1nemosyne 1obius
2digliani 2ghul 3ul 2hammad 6ed 8an 4ve 4wk 3ican 3orovicic 2irae 5i 2jave 2lech 3iere 3lah 3nar 3och 4tov 2mmsen
3os 3us 2n 3acan 3drian 3egasque 4t 3gol 6ian 6oid 3net 3od 4phthalmos 6ysite 3sieur 5gnor 3tagu 5igne 5nan 4espan
6quieu 6sori 5verdi 5z 4fort 4golfier 4serratian 2onie 3r 2rdva 5in 7ian 3ley 3mon 3o 4ccan 3pheus 3rigan 6u 3s
3timer 2sander 3lem 2therwell 3t 2untie 3ssorgsky 2zambican 4rt 1p 1ugwump 2hammad 8an 6edan 2ir 2lla 5h 4er
2nchausen 5hausen 3ro 2rdoch 3illo 3row 2scovite 3ial 3khogean 4ogean 7e 3lim 6ah 3set 4olini 5rgsky 2tsuhito
2ybridge 1vp 1ycenaen 2litta 2rdal 3midon 0nabokov 3u 2huatl 4m 2ismith 2mibian 3mu 3tar 6u 2nak 3na 3sen 3ticoke
2pier 3oleon 2rcissus 2sser 3t 2tta 2uruan 2vaho 4jo 2zarene 3imova 1eapolitan 2bo 3raskan 3uchadnezzar 8rezzar
2fertiti 2gress 2hru 2oplatonist 4olitan 2palese 5i 3hthys 3tune 2reid 4us 3gal 3nst 3o 3thus 3uda 3va 4i 2ssie 3tor
6ian 7us 2therlander 2umann 2vadan 3elson 2wcomb 3tonian 2y 1ganasan 1ibelung 2caraguan 3olson 2ebuhr 3tzsche
2gerian 6en 2jinsky 2ke 2lsson 2mby 3itz 3rod 2ngal 4irsu 5shzida 3hursag 3ib 4gi 3kharsag 5ursag 3too 4u 3urta 2obe
2pponese 2sei 1jord 4th 1obel 5ist 2c 2ether 2guchi 2otka 2rn 3rish 3se 5man 3therner 5man 5rop 3wegian 2stradamus
2x 2yes 1p 1ubian 2ffield 2midian 2sku 1yx 0oakley 1badiah 2erson 1ccam 3idental 2eanid 5us 2hs 2kham 2tavian 1dets
2in 2o 3acer 3vacar 5kar 2ysseus 1edipus 2ngus 2rsted 1ffenbach 2o 1galala 2den 2lala 1hioan 2m 1jibwa 6y 1ken 4fuss
2lahoman 1ldfield 2ivier 2mec 3sted 2ympian 1maha 3ni 1neida 2ondaga 2sager 1ort 1pel 2penheimer 2s 1rangeman 2cus
3zy 2ead 3gonian 3stes 2ff 2iental 3gen 3on 3ya 2leanist 2mandy 4zd 3uzd 2pheus 2well 1sage 2can 2iris 2manli
2trogoth 3wald 3yak 1thello 3o 2oe 2tawa 3oman 1uranos 1vid 1xonian 0paddy 3erewski 3re 2ganini 3et 2hlavi 4evi 2ine
3ute 2kistani 2lestinian 6rina 3grave 3ladio 5s 2mlico 2nacea 4manian 3dora 3gloss 3ini 3jabi 3ofsky 3taloon 2puan
2racelsus 5lete 4guayan 4shurama 3cae 3eto 3is 5ian 6enne 3janya 3kinson 3liamentarian 3menides 3nell 3r 3see 4i
3thian 3vati 2scal 3htoon 5un 3iphae 3samaquody 3ternak 5ur 2terson 3han 3on 3roclus 3win 2uli 5ng 2vlov 6a 2wnee
2xton 1cp 1eabody 3ry 2gasus 2i 3rce 2lagius 3eus 2nn 4sylvanian 3obscot 3tecostal 9alist 3utian 2pin 3ys 2ricles
4patetic 3on 3sephone 5us 4hing 4ian 3utz 4vian 2trarca 7h 4onius 1haethon 3raoh 4isee 2eidias 2idias 3lemon 4ippian
5stine 3ntias 3z 2oebe 5us 4nician 3tius 2rygian 1i 2af 3get 2casso 3kford 2errot 2gmy 2late 2ma 2ncus 3dar
2randello 2sces 3ton 2tman 3ot 3t 2ute 2zarro 1lanck 3to 5nist 3utus 2eiades 2iny 2otinus 2utarch 4o 1m 1o 2cahontas
2e 2llock 3o 3ycarp 4hymnia 4nesian 2mo 3padour 4ey 2nca 3ka 3s 4elle 3tiac 4os 4us 2pper 2rtuguese 2seidon
3timpressionist 2tawatomi 3emkin 3yokin 2ulenc 3ssin 2w 3hatan 3ys 1raetorian 3japati 3xiteles 2esbyterian 3tender
2iam 4pus 3estley 2ocrustes 3khorov 4ofiev 3metheus 3serpina 9e 3testant 5us 3udhon 4st 2ussian 1tah 2olemy 1uccini
2eblo 2gin 2litzer 2njabi 2rcell 3itan 3kinje 2sey 3han 4kin 4tun 1ygmalion 4y 2le 2rrhus 2thagoras 4ia 6s 5us
4oness 0qatari 1uapaw 2ebecois 3chua 3tzalcoatl 2iche 3ncy 4e 0ra 2belais 2chmaninoff 9ov 3ine 2dhakrishnan 2ffles
2hu 2jpoot 4ut 2legh 4igh 2ma 4chandra 3eau 4ses 5ses 3man 3ses 2nd 3ger 2sk 4olnikov 3putin 3ta 5farian 2ttigan
2vel 2yleigh 1e 2agan 3ltor 3per 3umur 2b 2deemer 3skin 2giomontanus 2hnquist 2ich 5stein 3ter 2mbrandt 3us 2noir
2spighi 1hadamanthus 2ibhus 3ne 1ibhus 2chelieu 3kenbacker 4over 2emann 3sman 2ff 4ian 2lke 2mbaud 2ngling
2ttenhouse 3z 1n 1obeson 5pierre 2chambeau 3kefeller 4ingham 4well 2din 2ebling 3ntgen 2get 2llo 2mani 6an 5off 6v
5y 3berg 3eo 3many 4el 3ulus 2ntgen 2sicrucian 3setti 4ini 3tand 2tarian 3hko 4schild 2undhead 3s 4seau 2yalist
1ubens 3instein 2dra 2manian 3pelstiltskin 2ndstedt 3yon 2pert 2ritanian 2skin 3sian 1wandan 1yukyuan 0saame 4i
3rinen 2bahan 3batarian 3in 5e 2c 3agawea 4jawea 3co 2dat 3ducee 3e 2gittarius 2haptin 8o 2kharov 3i 3ti 2ladin 3ian
4nger 4sh 3k 3macis 3ome 5on 3vadoran 8ean 8ian 2maritan 3i 3nite 3oan 4yed 3son 2ndburg 3ger 3ta 4ee 2pir 3pho
2racen 4svati 4wakian 4zen 3dinian 3noff 3oyan 3panitu 4edon 3tre 2squatch 3senach 2tan 5ist 3chmo 3ie 3urn 2udi 3k
3ssure 2vara 3iour 4tar 3onarola 4yard 2x 3e 3on 2yers 1candinavian 3ramouch 9he 4face 2heele 3iaparelli 4ller
3leiden 5singer 4iemann 3nabel 3oenberg 4nbein 7rg 4olcraft 6man 4penhauer 3rodinger 3ubert 4lz 4mann 5peter 3wann
4eitzer 2ipio 2orpio 7n 3tchman 6woman 4sman 5woman 3user 2po 2riabin 4pps 2ylla 3thian 1eaborg 2eger 2gal 3ovia
2khet 2lcraig 3ene 4ucus 3kirk 4up 3znick 2minole 4te 2neca 4felder 4galese 3hor 3nacherib 4ett 2phardi 2quoya 7h
2rb 4ian 3kin 3ra 2th 3on 2urat 2ward 2ychellois 1hah 4aptian 4n 3ker 5speare 9rean 9rian 4spere 4ti 6st 3mash 3nkar
3pley 3sta 3vian 3wnee 2em 3ridan 4pa 4rington 4wood 3vchenko 2iite 3ntoist 3rer 3va 5ist 2ockley 3na 3shone 7i
4takovich 2udra 3te 2ylock 1ibelius 4rian 2cilian 2ddhartha 4ons 2egfried 3mens 2gurd 3yn 2hasapa 2kh 3orsky 2lenus
3vanus 2menon 4on 2natra 3bad 3dhi 3gaporean 4halese 3halese 3ologist 2ouan 4x 2queiros 2ren 2syphus 2tter 3well 2va
1kagit 3nda 2eat 2innerian 2uld 1lav 2ovak 4ene 6ian 1metana 2ollett 2sgt 2uts 1nead 3llen 2oopy 1ocinian 5us 3rates
2l 3vay 3zhenitsyn 2ma 4li 6an 2phist 4ocles 5nias 2rbian 3ensen 2tho 2ufflot 3sa 3therner 6y 4ine 1pallanzani
3niard 5sh 3rtan 2eer 3ke 3nder 4gler 4ser 3rry 2hinx 2illane 3noza 2ock 3de 1tael 3lin 6ist 3ndish 4ford 4islavsky
2een 3ffens 3ichen 4nbeck 7rg 5er 5man 6etz 5way 3ller 3ndhal 4gel 4tor 3rne 4ope 3uben 2heno 2ieglitz 3lwell
2ockton 3ker 4owski 3pes 3we 2rachey 4divari 9ius 4sberg 4uss 4vinsky 3indberg 3oheim 2ubbs 3yvesant 2yron 1uckling
2danese 3ra 2fi 2harto 2karno 2lla 4y 2matran 3erian 3ner 2nday 3ni 5te 2rya 1vedberg 3ngali 3rdrup 1wammerdam 3zi
2edenborg 2inburne 3ss 1ydenham 2lvanus 2monds 5s 2nge 2rian 1zell 2ilard 0tacitus 2dzhik 2ft 2galog 3ore 2hitian 2i
3wanese 2jik 2kelma 2lbot 3lchief 4eyrand 4is 2mburlaine 3erlane 3il 3m 4uz 2ncred 3dy 3ey 3ge 4uy 3talus 4rist
3zanian 2o 3ist 3s 2ppan 2racahitian 4humara 3bell 3heel 3quin 7ius 3tar 4ufe 6fe 3zan 2shmit 7um 3man 3so 2tar 3i
2urus 2wney 1chaikovsky 1easdale 2baldi 2cumseh 5tha 2lemann 3ler 4us 3ugu 2mplar 3ujin 2nnessean 4iel 4yson
2rpsichore 3tullian 2sla 2thys 3on 2uton 6ist 2xan 1hackeray 3ddaeus 3i 3les 4ia 3natos 3tcher 8ite 2eban 3ia 3mis
6tocles 3odosius 4phrastus 3seus 4pis 4salian 7onian 3tis 2omson 3reau 4ndike 4pe 3th 2racian 2ucydides 3nderer
3rber 1iamat 2berius 4tan 2epolo 2lden 3lich 2morese 3ur 2nbergen 3dal 6e 3toretto 2resias 2siphone 2tan 5ess 5ia
3ian 3us 2u 1lingit 1obagonian 3ey 3in 2cqueville 2da 2golese 2jo 2klas 2lkien 3stoy 3tec 2mbaugh 2ngan 2rquemada
3ricelli 2scanini 2urette 2wnes 2ynbee 1ractarian 3descant 3jan 3ppist 3ubel 2evelyan 4ithick 2ilby 4ling 3nidadian
5tarian 6y 3stan 5ram 3ton 2ojan 3llope 3tsky 7ist 8te 2uman 4bo 5ull 1simshian 2wana 1uareg 2bman 2chman 2dor 2lly
3u 2ngus 6ic 3isian 3ker 3ney 2pi 2rcoman 3genev 4ot 3ing 3k 4i 4men 4oman 3pin 2scan 5rora 3saud 2tankhamen 3elo
3si 1yche 2ke 2ndale 6l 2phoeus 5n 2rolean 3r 1zara 0ubermensch 1dmurt 1gandan 1hland 1ighur 3ur 1kranian 1lanova
2fila 6s 2l 3r 2ysses 1ma 1ndset 2iat 5e 3tarian 2termeyer 1pjohn 1rania 4us 2d 2ey 2iah 2th 2uguayan 1sbeg 4k 2has
2sher 2tinov 1tahan 2napishtim 2rillo 2u 3g 1ygur 1zbak 3eg 4k 0vaishnava 4ya 2jra 2li 3kyrie 2nbrugh 3couver
3derbilt 4yke 3ir 3zetti 2rese 3ro 3una 2sarely 5i 2ux 2yu 1eblen 2dist 2netian 4zuelan 3n 3turi 3us 2ps 4e 4ian
2rdandi 4i 3gil 3laine 3meer 4onter 3ne 5r 4ier 3onese 3razano 6zano 3thandi 3woerd 2salius 3ey 3pasian 4ucci 3ta
4ris 1ictoria 8n 2dal 4r 2etnamese 2king 2llard 4on 2nogradoff 2p 2rchow 3ginian 4o 2sayan 3conti 3hnu 3igoth 2thar
6r 3us 2valdi 2zcaino 1laminck 1ogul 2lta 5ire 3und 2nnegut 2tyak 1uillard 2lcan 0wac 2gnerian 2habi 3habi
3unsonacock 3vey 2in 3te 2kashan 2lapai 3dheim 3lenstein 4oon 3pole 2mpanoag 2namaker 2rburg 3wick 2shingtonian 3p
3sermann 2tteau 3usi 4tsi 2ugh 2vell 2yland 1edgwood 2gener 2il 4l 3smann 3zmann 2lles 4ington 3sh 5man 3ty 2rfel
3nicke 2sleyan 3tinghouse 4on 1harton 2eatley 5stone 2ig 3stler 3tman 4tier 5le 1iccan 3hita 3kliffe 3lif 2eland
3ner 3senthal 2gner 2lde 3kes 3lebrand 2nckelmann 3daus 3fred 3nebago 3slow 3tun 2sconsinite 3ter 2therspoon
3tgenstein 1odan 3ehouse 4n 2lff 3laston 4stonecraft 3verine 2odbury 4hull 3lf 4lcott 5ey 4worth 2rcester 3dsworth
2tan 2uk 1ulfila 2rlitzer 1yat 2cherley 3lif 6fe 2eth 2keham 7ist 2ler 3ie 2nfrith 2omingite 2rd 2szynski
0xenophanes 6on 1hosa 0yahi 3oo 3ve 5h 3we 5h 2kut 2le 2ma 4moto 2nkee 2vapai 1eats 2meni 2niseian 2rkes 3sin
1gdrasil 2gdrasil 1hvh 2wh 1ogi 2kuts 2ruba 1ucatec 7o 2goslav 8ian 2kawa 2ma 0zacharias 2harias 2irean 5se 2mbian
2ngwill 3uck 2pata 3otec 7an 2rathustra 3panit 1ealander 4ot 2chariah 2eman 2phaniah 4yr 3pelin 4o 2us 1hukov
1iegfeld 4ler 2mbabwean 5list 2nnemann 3sser 3zendorf 2onist 2rbanit 1ola 2roaster 7rian 1sigmondy 1u 2bird 2lu 2ni
2rvan 1weig 2ingli 2orykin
"""
"""Of one word, whom all know."""

GIVEN_ELSEWHERE = """
0αβρααμ 1γαθαγγελοσ 4η 4οκλησ 5νικοσ 3μεμνων 3πη 5τοσ 4ιοσ 2γελησ 5ικη 5οσ 2ησιλαοσ 2λαια 2νη 2ορω 1δαμ 4αντια 8οσ
1ηδονα 1θανασια 7οσ 2ηνα 5γορασ 4οδωρα 8οσ 1ιασ 2κατερινη 2μιλια 7νοσ 6οσ 1κριβη 5οσ 4τασ 1λεξανδρα 8οσ 4ια 5οσ 2ικη
2κηστισ 3ιβιαδησ 4νοη 3μηνη 1μαλια 2βροσια 7οσ 2φιθεα 4τριτη 1ναγνωστησ 3νιασ 3ξαγορασ 3ργυρη 7οσ 3στασια 8οσ 3τολη
2δρεασ 4ιανη 4οκλησ 5μαχη 6εδα 5νικη 8οσ 2εστησ 2θη 3ιμοσ 3ουλα 6ησ 2να 3ικα 2τιγονη 7οσ 4πατροσ 3υπασ 3ωνια 6οσ
1πολλων 7ια 3στολια 7οσ 1ργυριοσ 5ουλα 5ω 2εθα 3τη 2ησ 2ιαδνη 3σταρχοσ 5εα 6ιδησ 5οβουλοσ 6μενησ 6σ 6τελησ 6φανησ
2τεμησ 5ιοσ 6σ 7ια 2χελαοσ 3ιμηδησ 3οντια 1σημακησ 4ησ 4ινα 4ουλα 2κληπιοσ 2πασια 2τεριοσ 5ω 1ταλαντη 1υγερησ 3η
3ουστινα 7οσ 2ξεντιοσ 1φεντησ 5ρα 2ροδιτη 1χιλλεασ 6ια 0βαγια 5νη 2ιοσ 2λαντησ 6ω 3εντινα 8οσ 4ρια 6οσ 2ρβαρα 3δησ
3θολομαιοσ 3σαμια 6οσ 2σιλεια 7οσ 5ησ 5ικη 1εατρικη 2λισσαρια 9οσ 2νετια 6οσ 3ιαμιν 4ζελοσ 2ρα 3ονικα 7η 1ησσαρια
7ων 1ικεντια 7οσ 3τορια 4ωρια 2ολετα 2ργινια 1λαδιμηροσ 3σησ 4ια 5οσ 1ρασιδασ 2υσηισ 1υρων 0γαβριελλα 5ηλ 2λατεια
5ιοσ 3ηνη 5οσ 2ρυφαλλια 8οσ 1ενοβεφα 2ρακινα 4σιμοσ 8υλα 2σθημανη 2ωργια 6οσ 1ιαννησ 5ουλα 3σεμη 2ολαντα 2ωργοσ
1κικασ 2ολφω 1λαυκη 2υκερια 1ραμματικη 2ηγοριοσ 0δαβιδουλα 2μασκηνη 8οσ 3ιανη 6οσ 2ναη 3ιηλ 2φνη 1εσποινα 1ημητρα
6ησ 6ιοσ 3οκρατησ 6ιτοσ 4σ 5θενησ 4υλα 1ιαλεκτη 3μαντησ 7ουλα 7ω 2δω 2καια 5οσ 2ογενησ 3μηδησ 3νυσια 7οσ 1ομηνικοσ
3να 2υκισσα 1ρακων 2οσια 4οσ 1ωροθεα 6οσ 0ειρηναιοσ 5η 1κτορασ 1λενη 3ονορα 3σσα 3υθερια 8οσ 2ισαβετ 4σαιοσ 2λη
2πιδα 4σ 1μμανουελα 7ηλ 1ξαρχοσ 1παμεινωνδασ 2ιστημη 1ρασμια 3τω 2ιετα 3φυλη 2μησ 3ιονη 3ολαοσ 2ρικοσ 2ωτοκριτοσ
3φιλη 1υα 3γγελια 7οσ 3νθια 2γενια 6οσ 2δοκια 4ξια 6οσ 2θαλια 3υμια 6οσ 2κλεια 6δησ 2λαμπια 2μενιοσ 3ορφια 2πραξια
2ριπιδησ 3υδικη 4κλεια 2σεβεια 5ια 6οσ 3ταθια 7οσ 4ρατια 8οσ 2τερπη 3υχια 6οσ 2φροσυνη 1φραιμ 0ζαμπετα 4ια 2φειρησ
6ια 7οσ 2χαρενια 5ιασ 5ουλα 1ηναισ 3οβια 6οσ 3ων 2σουλα 1ωη 0ηβη 1λεκτρα 2ια 4να 4σ 1ρα 3κλεια 5ησ 2οδοτοσ 1σαιασ 1ω
0θαλασσινη 3εια 3ησ 1εανω 2κλα 2μησ 3ισ 5τοκλεια 9ησ 2οδοσησ 6ια 7οσ 5τη 5υλη 7οσ 4ωρα 6οσ 3κλεια 5ητοσ 3λογια 6οσ
3πιστη 7οσ 3τοκησ 3φανησ 6ια 4ιλη 6οσ 4ραστοσ 4υλακτη 9οσ 3χαρησ 6ουλα 2τισ 2ωνη 1ηρεσια 2σευσ 1ουκυδιδησ
1ρασυβουλοσ 1ωμαισ 4σ 0ιακωβινα 5οσ 2σονασ 3ων 1γνατια 6οσ 1ερεμιασ 3οθεοσ 3ωνυμοσ 1καροσ 1νω 1οκαστη 2ρδανησ 6ια
2υλια 6νη 7οσ 5οσ 1πποκρατησ 4λυτη 7οσ 1ρισ 1σαακ 3βελλα 2ιδωρα 6οσ 2μηνη 1φιγενεια 1ωακειμ 3ννα 5ησ 2ν 3ασ 2σηφ
5ινα 0καλη 3λινικη 8οσ 5οπη 5ροη 6ροη 3ομοιρα 3υψω 2νελλα 2ρολοσ 3υοφυλλια 2σσανδρα 4ιανη 2τερινα 1ερασια 1ηρυκοσ
1ικιλια 2μων 1λαιρη 2εανθησ 4ρχοσ 3ιω 3οβουλοσ 4μενησ 4νικη 4πασ 6τρα 2ημεντινη 4ησ 2υταιμνηστρα 1οκκωνα 2μνηνη 6οσ
2νδυλια 2ραλια 3νηλια 7οσ 2σμασ 4ια 1ρινιω 2υσταλλενια 8ησ 1υβελη 2δωνια 2παρισσια 3ριανη 7οσ 2ρατσα 3ιαζησ 5κη 6οσ
3οσ 1ωνσταντια 9να 9νοσ 2στασ 4ουλα 0λαερτησ 2ζαρια 5οσ 2μπρινη 5οσ 2οκρατησ 2σκαρησ 6ινα 2υρεντια 8οσ 1εανδροσ
2μονησ 5ια 2οναρδοσ 2υκοθεα 2ων 4η 4ιδασ 6ια 1ηδα 2τω 1ογοθετησ 2υδοβικοσ 3ιζα 3κασ 4ια 6νοσ 3λουδενια 1υγερη 2δια
2κουργοσ 2σανδροσ 0μαγδαληνη 8οσ 2καριοσ 3ρινα 2λαματενια 7η 3βινα 2νθα 3τω 2ργαριτα 4ιεττα 3θα 3ια 5νθη 6να 4γω
4λενα 4να 5οσ 4οσ 3κελλα 4οσ 3τινοσ 3ωτεσα 2τθαιοσ 4ιλδη 3ινα 3ρωνη 2υρα 4ικιοσ 4οειδησ 5σ 5υδησ 1εγακλησ 2θοδιοσ
2λενια 4τια 6οσ 3ινα 3πομενη 2νανδροσ 3ελαοσ 2ρκουριοσ 3οπη 2ταξια 1ηλια 2νασ 1ικεσ 2λτιαδησ 2νερβα 3ωασ 2ραντα
2χαελα 4ηλ 4λησ 1οσχα 1υρσινη 3τω 0ναθαναηλ 2πολεων 2ταλια 6να 2υσικα 1εαρχοσ 2κταρια 7οσ 2οκλεια 5ησ 3φυτοσ 2ρατζια
2φελη 1ικανδροσ 3η 4τασ 5ια 4φοροσ 3οδημοσ 4λαοσ 5ετα 5ιτσα 4σ 3ων 1ομικη 1ταιζη 3νιελα 0ξανθη 4ιππη 4οσ 1ενη 3οφων
0οδυσσεασ 6ια 6υσ 1θων 1λγα 2υμπια 1μηροσ 1ρεστησ 2φεασ 1υρανια 0παγωνα 2ναγησ 5ια 6ωτα 8ησ 3δωρα 3ορμιτησ 3ταζησ
4ελεημων 6ησ 6ια 4ουλα 3ωραια 2ρασκευασ 8η 5χοσ 3εσσα 3θενα 3ισ 2σχαλησ 6ια 2ταπια 3ροκλοσ 2υλινα 4οσ 3σανιασ
1ελαγια 3οπιδασ 2ρικλεια 6ησ 4στερα 3σεφονη 2τρα 4οσ 1ηγη 2νελοπη 1ιερρινα 2νδαροσ 1λατων 2ουταρχοσ 1οθητη 2λυβια
6οσ 4δωρα 7οσ 4ζωησ 4καρποσ 5ρατησ 4μνια 4νικη 4ξενη 4τιμη 4χρονια 9οσ 2υλια 4χερια 1ραξιτελησ 2οδρομια 7οσ 3κοπιοσ
3μηθεασ 1υθαγορασ 2ρροσ 1ωλινα 0ραλλησ 4ια 2φαηλ 2χηλ 1εα 2βεκα 5κα 2γγινα 1ηγασ 3ουλα 1ιζοσ 1οδαμανθη 4νθη 3ια
3οκλεια 4φλοσ 2ζα 2υμπινη 3σα 1ωμανοσ 2ξανη 0σαββασ 4ουλα 2λωμη 2μουηλ 2πφω 2ραντησ 3ρα 1εβαστη 6ιανη 9οσ 2ληνη
2μινα 2ραφεια 7μ 3γιοσ 1ιρανουσ 1μαραγδα 1ολομων 3ων 2υλτανα 3μελα 2φια 3οκλησ 1παρτη 2ηλιοσ 2υραννα 4ιδουλα 6ων
1ταματησ 6ινα 7οσ 3υροσ 6υλα 2ελλα 5ιοσ 3ργιανη 8νω 6οσ 3φανια 6οσ 2υλιανη 7οσ 1υμελα 4ων 6η 6ια 1ωζουσα 3ων 2κρατησ
2τηρησ 5ια 6οσ 2φρονια 0ταξιαρχησ 7ια 7οσ 2τιανα 1ερψιχορη 1ζανετοσ 2ενη 1ηλεμαχοσ 1ιμοθεα 6οσ 4λεων 3ων 2τοσ
1ριανταφυλλη 9λλια 9λλοσ 3σευγενη 2υφων 6ια 1σαμπικα 7οσ 0υακινθη 6οσ 1βοννη 1παπαντη 0φαιδρα 4ων 2νη 3ουρια 7οσ
1εβρωνια 2ρενικη 1ιλαρετη 3ημων 3ιππα 6ια 6οσ 4ω 3οθεη 4μηλα 1λοριαντ 2ωρα 4εντια 4ινα 1οιβη 4οσ 1ραγκισκοσ 3ντζεσκα
2ειδερικη 9οσ 2ιξοσ 2υνη 1ωκασ 3ιων 2τεινη 6οσ 3ιοσ 0χαιδω 2ρα 4λαμπια 8οσ 3η 3ικλεια 4λαοσ 4σ 4τοσ 1ιονια 1λοη
1ρηστοσ 2ιστιαν 8α 6να 5οδουλα 9λοσ 6σ 6φιλη 7ορα 9οσ 2υσανθη 7οσ 5υγη 5φενια 4η 4οβαλαντιοσ 9ντου 9ντω 5στομη 9οσ
5υλα 0аарон 1блен 1вгия 3уст 6иан 7н 2деи 2ел 3р 4кии 4но 4ьян 2игея 2ксентии 2о 2рам 3ели 6и 5іи 3ор 2тоном 4рка
1гап 4и 5и 3та 4опод 3фон 4ья 2геи 2ент 2лаи 4я 3оида 2нен 4ш 5ка 2оп 2ъци 1да 3лберт 3м 4ина 2еан 3лин 3м 2ра 3иан
6иа 4ян 1ела 2розол 1залия 3р 4ии 1идемир 2рен 1кашия 2им 2сакусти 3ентия 3идан 4нтия 2улина 1лания 2берт 3ина 4яна
2дин 2евандър 4тин 7а 3г 3к 4зандриян 4сандар 8р 9а 9ина 5еи 6ј 5иа 3нка 2иана 3на 3сия 2ла 2тая 2ьберт 4іна 2іна
1малія 2бър 2вросии 6іи 2ория 3с 1на 3мария 3нии 3стасия 7ія 3толии 7я 2гела 5ина 5ка 2дика 3реи 5ј 4иана 4он 6ик
4іи 2елина 3та 2жела 5ика 2за 2икеи 4ита 3мира 3сим 3та 3ца 2на 2омалия 2тип 3оалина 4н 5ела 5ин 7а 2уша 2іта
1полинария 4линарии 5он 1ралия 2ефии 2истарх 2кадии 6я 5іи 2сен 5а 5ии 2тем 5ии 2хип 1селина 2ифа 2кольд 2тромерия
1танас 2ина 1урора 1фанасии 2иноген 0багра 2жен 2лина 2цислава 1еатрис 2ла 3исима 3омира 2нелена 2римир 4н 4слава 4я
3о 4слав 2тина 5о 2чо 2я 1илена 3ян 3јана 2нко 3ьо 2сенти 4р 5а 2янка 1лагица 4о 5вест 5датка 5и 5мир 5свет 9а 5ј
3же 1ог 3далина 5н 6на 3иня 3одар 4и 4люб 4мил 4родка 4слав 3услав 8а 2дромир 3урка 2жан 3идар 4к 4мир 4н 5ел 7а 3ко
3о 3ур 5ка 2ико 3л 4а 3чо 2лен 4слав 2не 3ислав 4фация 3ко 3о 2рена 3ис 5ка 5лав 3че 3янка 2ца 2ян 2јан 1ранко
2игита 2онислав 9а 1удимир 2на 2ча 1ързана 0вʼячеслав 1адим 2клина 2лентин 8а 4рии 6я 5ьян 5іи 3я 2нгелия 3ухи
2рвара 3лаам 3та 3фоломеи 8іи 2сенка 3ил 5ии 6на 6са 5ка 5ь 3ка 2цлав 2шиля 1ежда 2лиана 4мир 4нна 4янка 2нда 3едикт
4ция 3иамин 4слава 3числава 3іямин 2ра 3ена 3ислава 3оника 2са 3елин 7ка 3ислав 3на 3о 3пасиян 2тко 2ца 2чко 1игалот
3о 2делин 4н 3има 4н 3ое 4слав 3ю 2кенти 7и 3тор 6ин 7я 2лиан 4зар 7а 4слав 4я 5н 3хема 2нету 3ко 3о 3сънт 3ченцо
2олет 6а 4ин 2ржиния 2сарион 3сарион 2талии 3ко 3лян 3омир 7а 4ш 2хрен 4они 3ър 2чо 2ша 3етин 3ка 3ню 1лад 4илен 8а
5мер 6ир 5слав 4лен 7а 3с 3тко 1одица 2инка 2лодимир 9а 1севолод 3мил 3слав 1ула 1ъзкресения 2льо 2рбунка 2ца
1ышеслав 1ячеслав 1іктор 6ія 2олетта 2ра 2таліи 0габи 2врила 6о 2лактион 3ена 5тин 3иен 4мир 4на 4ян 3я 2ни 4слав
3на 3уца 3цомир 3чо 3ьо 2ро 2тьо 2цо 1вардиана 2оздеика 1едеон 2лемир 2на 4ди 6валериев 6и 3ислав 3ко 3надии 6іи 3о
3чо 2о 3дим 3мил 3ргелена 5и 6и 6ца 5іи 2расим 3га 5н 4еи 5люб 4ин 3дан 6а 3ман 3о 4и 3труда 3чо 2тислав 3ко 3о 2цо
2чо 2шо 1ивеза 2здален 5на 2ко 2лдрои 2чка 1лафира 2еб 2іб 1оран 3ги 3дана 4еи 4іи 3ия 3че 2стомысл 2ца 3е 1рафица
2емислав 3та 2игории 6іи 3мяна 2оздинка 1уна 2рии 1ъда 2лъбица 1югра 2ргя 0давид 3ыд 2кота 2мяна 3јан 2н 3елина 3иел
4ла 5о 4мира 4ца 3ка 3на 3че 2рданела 3ина 4я 4ја 3ко 3ья 2финка 1еа 2ви 2лиана 3чо 3я 4н 5а 2мʼян 3ентии 3ид 4р
5ела 3ьян 3ян 2ниандра 4з 4ка 4мир 4с 5лав 8ена 4ян 3ница 3чо 2рдидас 2силиан 4миляна 6р 4слав 4яна 3лав 3пин 6ка
4от 2телин 2флорина 2чко 3о 3ю 2шо 2я 3н 2јан 1жана 4ер 4ко 2иневра 3хад 2улия 1иаманди 6тина 3н 2визие 6я 4л 2да
3ко 2его 2ко 2лмана 3ян 2митар 5ра 3ка 2нна 1митрии 5о 1обрина 4омысл 5слав 2ика 2меника 2не 3ика 2рина 3офеи 2ста
2ча 1раган 6а 4ица 2енка 1уда 2шан 3ка 1юкяна 0евангелина 2гении 6я 3раф 2доким 6я 2лампии 2праксия 2ридика 2сеи
3тати 7и 5фии 5хии 4игнеи 2тим 2фросиния 1гор 1двин 2ит 4а 2рю 2уард 1катерина 2им 2тар 3ор 1л 2вис 2дора 2еан
3ктрон 3маг 3на 4ица 4ко 3онета 2и 3ан 4с 3езер 3з 4абет 8а 5вета 5р 3н 4а 3са 4еи 4ия 3ца 2ко 2ма 2фида 2ьо 1маноил
4уел 5ил 7а 2ельян 2ил 4иан 5ян 5ја 2ма 2ілія 1ндо 2ица 2чо 2ьо 2ю 1пифан 1рвин 2гана 2един 3меи 4ия 2ик 3на 2мил 5я
3олаи 2ол 3феи 2сен 2іка 1сен 2тела 1тиен 1фим 4ена 2ка 2рем 3осиния 0жаклин 2нин 3на 2ра 3ко 1еина 2лязка 2нимира
1ива 3омира 2чка 1орка 1улиана 0заварин 3ен 2ека 2мфир 2нго 3ка 4о 2прян 2рко 2фа 3ер 3ир 2хар 5и 6н 7ка 3о 1вездан
5емира 5ин 6слав 6ян 5олет 6мир 1гура 1дравелин 9а 6ц 5ко 5чо 2ухостина 1енгин 1ика 2наида 3ко 3ови 6и 5іи 1латан
4ея 4и 5л 5мир 5ян 4ка 5о 4огор 5зар 5мир 8а 5слав 9а 5цвет 4ьо 1оичка 2лтан 2ран 3ка 3ян 2сима 2я 1узичка 0ивалена
3мина 3н 4еса 4ичка 4ка 4на 2елиана 2инка 1глика 2натии 2ор 4ь 1ено 2ремия 1зидора 2маил 2от 2яслав 1ларион 2еана
2ианна 3нда 3омар 3ч 3я 4н 3ја 2ка 3о 2чо 2ья 1милиан 1нан 2гемунд 2еса 2ко 2нокентии 2чо 1оан 4а 4на 2ван 5ка 3ица
3ко 3о 3ро 3цо 3чо 2жи 2ил 2ко 2лина 4ян 3ко 2на 3ика 2рданка 2сип 4ф 2ханна 1пат 4ии 2олит 2полит 1ра 3ида 3клии
2иан 3н 4а 4еи 5ус 3ян 2ко 2ла 2ма 2ник 1саи 3к 2идор 3хия 2крен 3ър 2перих 2тан 4тко 3илияна 5ян 2ус 1тко 1хтиандър
1цо 1чо 1я 0кадифеика 2зимир 2лея 3ина 4са 3листрат 3уда 2мея 3ілла 2нуша 2питон 2рамелита 3ен 3им 4н 5а 3л 4о 3мен
3олин 3п 3чо 2сиди 3ьян 2такомб 4линка 4строфа 3ерин 7а 3инка 2унка 1ветослава 1евин 3орк 2ранка 3и 2ти 1ибер 2м 3ба
4о 3он 3чо 2н 3ка 3о 3та 2прислав 5ян 2р 3а 3иен 4л 5л 5о 3ка 3чо 3як 5и 5о 2с 2т 3о 4дар 4мир 3чица 1лавдии 6я 5ія
3ра 2еуна 2им 4ент 2оя 1нут 1озма 2ино 3о 3чо 2кимира 3о 2ле 3чо 3ьо 3ю 2мара 3нин 2ндрат 7ии 3он 3стантин 9на
2рнелия 4ил 2ста 5динка 4янтин 1ралина 3сидара 5яна 2иси 4табела 5иана 6на 6я 2сте 2ъстанка 1сандриния 2ения 1узман
3ьма 2нка 2приян 1ьнина 0лавр 4ентии 2да 3имир 4слав 2зар 5ь 3ура 2лка 4о 3о 3ьо 2мби 4о 4ю 2нселот 2риса 2скал 5р
3тър 2тин 3ко 3ьо 3ю 2ца 1еандър 2в 3ент 3ко 3чо 2ка 3о 2нин 3ко 3че 2он 4ид 4тии 5іи 4ід 3польд 2се 3ь 2тисия 2фтер
2чо 1иберта 2диика 4я 2ка 2лия 3ко 3о 3чо 3ян 5ка 3јана 2мон 2на 3да 2пе 2хия 2чо 2я 1овчо 2зан 5а 5ка 3ен 2нгин 2ра
4нс 3ена 2ти 1укʼян 3а 4н 3ия 3о 3ьян 2ли 3чо 2на 2сио 4я 2чезар 1ъчезарка 1юбим 4на 3лина 3ов 5ь 4мир 4слава 5мысл
2дмила 2ляна 2сила 1янка 1іза 2лія 0магдалена 2длен 2ия 2кар 3сим 6илияна 8ьян 2лена 3тина 2ноел 4л 5ина 5о 3тас
3уил 4ш 3честърюнаитед 4о 3ьо 3ю 2рʼяна 3ангони 3гарит 8а 4ит 3ек 4н 3иан 4и 5ка 4н 5а 5ел 6та 5чо 4о 5ллита 5тка
4тна 4я 5н 4ја 3к 4о 4ус 3лена 3та 4ен 4ин 6а 6иян 4ын 4ьян 3уся 4ш 3фа 3чело 3ія 3јан 2са 3лина 2твеи 3еи 3ка 3ьо
3ю 2хно 2ша 3о 2ја 1едиан 4ха 2лания 3ъди 2но 2рилин 3опа 2сак 2такса 3оди 2фодии 2числав 1иглена 2кита 3олаи 2ла 4н
4ра 3дия 3ен 5а 3иана 4и 4ца 3ован 4ст 2моза 2на 3ка 2р 3анза 3ена 3он 4па 4слав 3јана 2сла 2тко 3офан 4шка 2хаил
6ена 6ина 6о 3еи 2шка 1ладлена 1одест 2исеи 2кеи 2мера 3чило 2ника 2ртадела 1стислав 1ушана 1ілена 0наводненка
2дежда 3ица 3ка 3ія 2зар 2ида 3на 3о 3чо 2ке 3о 2ни 3ко 3о 3симир 3чо 3ю 2ркис 3цислав 2ско 3тимир 5я 4радин 2талья
5ія 4н 5аил 4ша 3ко 2ум 2фисат 3тали 2цко 3о 2чиян 3ко 3о 1евен 5а 5ко 3илиян 3ян 2гослав 3рита 2делин 5чо 5яна
3ислав 3ко 3ьо 3ю 3ялко 2ика 4о 3чо 2лида 3ко 3ла 3чо 2не 3ко 3сислав 3чо 2окли 3лина 2рес 2стор 2шка 1игрита 2кандр
5ор 3ита 4фор 3одим 4ела 4ла 6и 5ина 4н 2на 3ель 2онила 2фонт 1она 3на 2рка 1урета 0обретим 1ванес 1гин 2немир 4н 5а
1дарка 1кеан 2сана 3енія 2тавия 3ябрина 1лег 3к 4са 6ндр 3на 3сь 2ивера 3мпи 6ада 6и 2ьга 1мана 3р 2елян 2уртаг 1ник
3сим 2уфри 6и 2чо 1панас 1рест 2ина 3ся 2леана 3ин 2тодокси 2феи 2хидеи 6я 4п 2це 1сип 2кар 2тап 3ромир 1ханес 2рім
0павел 5ин 3илия 3ко 3ле 4ик 5н 6а 6чо 4о 5мир 2исии 2ко 2лвира 3ми 5ро 3омина 2наи 5от 4с 3да 4е 5лис 3е 3крат 7ии
5тииян 3о 3талеи 4елеи 8мон 5ра 4о 4ю 3фил 3чо 2олина 2рамон 4скев 4ход 4шкев 8ан 8ица 3мен 3унка 4ш 3фен 2ско
3панахил 2то 3рик 5отка 3ьо 2улин 6а 3н 2хом 2ца 3о 2чо 1еико 3о 4дон 4лина 3тан 3чин 4о 2ко 2лагея 4и 3е 3ина 2нко
3чин 4о 3ьо 3ю 2о 2пелота 3ино 4слав 3о 2риана 4къл 3сиана 5ян 3уна 3чо 2тар 3иконгрес 4нка 3кан 4о 3о 3р 4аки 5на
4е 4иика 5нел 4о 5зар 5мил 7ра 4ушка 2шка 1илип 2мен 1ламена 3тон 2одовитка 1олексина 3икарп 4н 5а 2рфирии 2тап
1равда 3сковья 2еса 2ина 2ов 3кл 4офии 3летина 3стисвета 3хор 4ір 2іска 1упи 1ърволетка 0рада 3иа 4м 5ира 4слав 3ка
3ован 4света 5тка 2иничка 4ка 3са 2мина 2нгел 3дю 3чо 2сате 2тибор 3мир 2фаил 2чко 3о 2шко 3о 2ю 2ян 1еан 2вка 2гина
2м 2нгия 1иана 2мма 2налдо 2с 3то 4я 2чард 3ерд 2я 1оберт 6о 3ин 3ърт 2гелина 4на 2дан 3ион 2за 4лин 5ія 4на 3ета
3ин 3ка 3оцвет 2ио 2ксан 6а 4олана 2ман 3ел 5ина 4н 4о 3ил 3олета 3ул 2селина 4н 5ка 3имир 4слава 3ка 4о 3тиана 5мир
5слав 9а 1убен 2жка 2мислава 2салия 3ка 3лан 1юрик 0сабина 2вва 5тии 3елии 4та 2лина 2мсон 3уил 2нка 2ра 4я 2хория
2шо 2ња 1вежа 3тла 6на 5омир 9а 5ю 4озар 5слав 2идна 2ободка 2ятополк 5слав 9а 2ітлана 1ебастиан 4хтин 2ван 4р 4стин
6ьян 3да 5лин 5н 4елина 3елин 4рин 4та 2деф 5чо 2лен 5а 3иван 5ерст 2мен 5арка 2нко 2рафим 3геи 5линка 4іи 2слав
1ибила 2ви 2гизмунд 2дер 3ония 4р 2ен 4а 2ла 4ги 4н 5тии 3вестър 4и 5о 5ян 3ьвестр 3ян 5а 2меон 3о 4н 5а 2нклитикия
3тия 2рман 2соя 2фоня 1какалка 2орбут 1лав 4до 4е 5ико 5н 5я 4и 5л 4ка 3доледка 2ободан 1мехотерапия 2ирна 1нежана
4инка 2іжана 1ократ 2ломон 5ія 2фиика 4я 4ја 3он 3рон 3ія 2ња 1партак 3с 4ена 4ияна 2ирела 4идон 1тависара 3матка
3ниела 5мир 8ка 5слав 4іслав 3ша 2елина 3пан 3фан 6и 7ја 3яна 2оимена 3летка 3ян 5ка 3јан 1узана 3и 1ъвестина
2рменка 0таисия 2мара 2ня 2рас 2тьяна 2шимира 2ња 1вердислав 2оримир 1еа 2лефонка 2мира 2одор 6а 5си 7и 6лав 6тин
3фан 3хар 2рвел 3еза 4нтии 2са 2тяна 1игрони 2лиана 3о 3ьо 2мо 4н 4теи 4феи 5іи 3ур 3чо 2но 3чо 2т 2ха 3о 4л 4мир 4н
2шо 2јана 1оанета 2де 3омирка 4р 5аки 5ин 7а 2кимир 2лек 3иана 3ю 2ма 4с 3е 4н 3инка 4слав 3о 2на 3е 3и 4мир 4слав
4цвета 3ко 3чо 2палко 3олко 2ска 2тко 3ьо 3ю 2цо 2шка 1рајан 4че 2ендафила 2ифон 6ка 2офим 3хим 3ша 2уфана 2ъпка
1уфка 0улиана 2ьян 5а 1рима 1стим 4н 0фабияна 2деи 2ина 2тиме 1еврония 2дор 4сии 4т 3ір 2кла 2ликс 2ня 2октист 3фан
2рапонт 1икия 2ларет 4теи 3и 4дан 4мон 4он 4п 5ас 5ини 5опол 5п 3ко 3омир 3чо 3ьо 2мка 2ндо 2ро 3с 3чо 2чо 1лавия
2орентин 4и 5ан 5ка 5н 4о 1ока 2ма 2ри 3тунат 2сил 2тии 4нка 1ранк 4ц 5ислав 3цил 2еди 2одо 3л 3нка 1уга 3о 2ко
1ъстък 1ьодор 0хавтелин 2на 3ко 2раламби 7пи 6н 3бингър 3и 4зан 4тон 7ия 3лампии 2сан 4тин 2чо 1воине 1ебър 2ктор
2нриета 2раклит 3нани 2фестион 1иминаи 2нка 4о 3о 2тко 1оли 2ма 2роз 1рабрин 4ър 3нимир 5слава 2елко 4ьо 2исанка 4им
6ир 4о 4та 6лин 5ела 5ивилин 6ела 6лиан 8яна 6на 6ян 5о 6дор 6елена 6зар 7орнициан 9ницомил 6мил 8р 6слав 6фор 5я
4чо 2ондел 2усан 1убав 5елка 6н 4н 3ен 0цанета 2ревна 1вета 5н 6а 6ка 4елина 4илена 4лина 4олилия 4яна 1еца 1ола 2ню
3я 2цо 2чо 1ъки 0чавдар 2на 3кете 4о 3о 3ьо 2рдафон 8а 3одеи 2уш 2чия 3о 1вор 1едо 4мир 2нко 3ю 2по 2реша 3норизец
4ьо 2слав 2твърта 1иио 2ко 2ло 1она 4р 3и 3о 3ю 2чо 4мир 1убрик 5на 2де 3о 4мир 4слав 2к 0шабан 2на 3ко 3оу 2ро
1еина 2ки 2на 3ко 3ол 2херезада 1ибил 2дер 2нка 4о 3о 2пчан 2рко 2шман 1кодри 1мильо 2улю 1пилко 1ушо 0щедра 4ин 3ю
2ки 2но 3ю 2риана 4он 4ян 3ко 3ьо 3ю 2фания 1илиян 3ян 5ка 2рян 1оно 1тилка 2ърбан 4кан 1урк 1ърбан 3кан 0ъглен 5ка
1лен 1рнест 2уин 2чо 1чка 0ьобирдар 0эдуард 1леонора 1милия 4ь 2мануил 1раст 2нест 3ст 0ювеналии 1ги 1лиан 3ена 3и
3я 4н 1нона 1рдан 2и 3и 3та 1стианна 4м 4н 5а 5иан 1хим 0яблен 5ка 1вор 4а 1го 3да 4ин 1зо 1ким 2о 3б 3в 3слав 2уб
2ів 1лислава 1н 2адин 3ки 5н 3чко 2е 3г 3дин 3к 2и 3ел 3к 3мир 3на 3с 4лав 7ия 3чко 2ка 3о 3ул 2о 3мил 2тар 2уарии
3ш 2цислав 2че 3о 1рема 2ина 2ка 2но 2омир 3полк 3слав 7а 2це 2чо 2ъм 2ю 1сен 4а 3р 2треб 1тан 4а 1цо 1чо 1шар 2ка
2о 3н 0єва 2ген 1лисавета 4еи 1фрем 0іван 1гнат 2ор 1лля 1рена 2ина 0јане 2смина 1ован 5а 3че 0աբել 2իգ 2րահամ 1գապի
1դամ 1զատ 1իդա 1լբերտ 2եքսանդր 9ա 2ինա 3սա 2լա 2վարդ 1հարոն 1ղասի 1մալյա 1նահիտ 3ստասիա 2գելինա 2դրանիկ 4եաս 2ժելա
2ի 3տա 2յա 2նա 2ուշ 2տոնինա 1շոտ 1ռաքել 2ուշան 1ստղիկ 1վետիս 5ք 1տոմ 1րամ 4ազդ 3քսյա 2գամ 3իշտի 2եգ 3ւիկ 2թուր
2իստակես 2ման 3են 5ակ 5ուհի 3ինե 2շակ 4վիր 2սեն 2տակ 4շես 4վազդ 3եմ 3ուշ 5ր 2փինե 0բաբկեն 2գրատ 2ղդասար 3իշ 3րամ
2րբարա 3խուդար 3սեղ 1եթի 2լլա 2ռնար 1որիս 1րիժիտ 3ջիտ 0գաբրիել 7լա 2գիկ 2լուստ 2յանե 2ռնիկ 2սպար 2րեգին 3սեւան 3րի
1եղամ 2ւորգ 1յուլնարա 1ոհար 2ռ 2ւրգեն 1րետա 2իգոր 0դանիել 6լա 2վիթ 1ենիս 2րենիկ 1իանա 2նա 1ոմինիկ 0ելենա 1ղիշ 1վա
2գինե 1րանուհի 2վանդ 0զավեն 2րուհի 1ոհրաբ 5պ 2րի 0էդգար 2ուարդ 1լեն 2իզա 3նա 1միլիա 2մա 1վելինա 1րիկա 0թագուհի
2դեւոս 2թոս 4ւլ 2մարա 1եհմինե 2րեզա 1ինա 1որգոմ 3ոս 0ժաննա 2քլին 1իրայր 0իզաբելլա 1նգա 2եսա 2նա 1րինա 0լալա 2ուրա
2ռա 2րիսա 1եյլա 2նա 2ւոն 1իա 3նա 2դա 2զա 2լիթ 1ուիզա 3սինե 0խոսրով 2րեն 0ծովինար 0կասանդրա 2րեն 3ինե 3լ 3ոլին 1իկոս
2րա 4կոս 1լարա 2ոդ 1որյուն 0հակոբ 2մազասպ 2յկ 4ազ 4ուհի 2սմիկ 2րություն 1եղինե 2նրի 2րմինե 1իլդա 1մայակ 1ովիկ
3հաննես 2ւնան 3սիկ 1ռիփսիմե 1րանտ 3չուհի 0մագդա 2միկոն 2նե 3վել 2րգար 6իտա 3թա 3իա 5մ 5ննա 4նե 3կոս 2քսիմ 1ելանյա
3ինե 3քոն 5ւմ 2խակ 2սրոպ 2րի 1իլենա 2հրան 2նաս 1խիթար 1հեր 1ոնիկա 2ւշեղ 3րադ 0յուրի 0նազելի 2իրա 4ի 2նա 3ե 2տաշա 2րե
4կ 3ինե 1ելլի 2րսես 1ինա 1շան 1ոննա 2րա 4յր 2ւբար 3նե 1վարդ 0շահանե 3են 2վարշ 1մավոն 1ուշանիկ 0ուիլյամ 0չարլի
0պատվական 3րիսիա 2րգեւ 3թեւ 3ույր 1ետրոս 1ողոս 0ջեմմա 2յն 2սիկա 1իվան 1ոն 2րջ 2ւլիետա 0ռաիսա 2ֆայել 1եբեկա 1իմա
2չարդ 2տա 1ոբերտ 2ման 2ւբեն 3դոլֆ 3զան 0սաթենիկ 2հակ 2ղաթել 2նասար 2ռա 2սուն 2րգիս 1եդա 2յրան 2սիլիա 2րգեյ 3ոբ 1իլվա
2մոն 2րարփի 1մբատ 1յուզաննա 1ոնա 2ւսաննա 3րեն 3քիաս 2ֆյա 1պարտակ 1վետլանա 1տելլա 3փան 3ֆան 0վազգեն 2խթանգ 2հագն 4ն
3ե 3րամ 2ղարշակ 2սակ 2րուժան 1երոնիկա 1իկտոր 6յա 2ոլետա 1լադիմիր 0տաթեւիկ 2րոն 1իգրան 1րդատ 0րաֆֆի 0ցոլակ 0փայլակ
2նոս 0քիմ 1նարիկ 1րիստինե 5ոֆեր 0օլգա 2եգ 1հան 1վսաննա 1ֆելյա 0ֆելիքս 1իլիպ 1լորա 1րիդա 0אביאל 3ב 3גיל 3ה 4ו 3חי 3טל
3נועם 3עד 3שג 4י 3תר 2ראהים 3הם 1גם 1דוה 2יר 2ל 2ם 2ר 1הובה 2רון 1ודיה 3ל 4יה 2הד 2וה 2פיר 3ל 3ק 2ר 3אל 3ה 3ון 3טל
3י 4אל 5ן 4ה 4ן 3ן 2שר 4י 1חיה 3נועם 2מד 1יאן 2ה 3אם 2טה 2ידל 3ל 4ה 4ת 3מי 2לון 3יי 4ן 3ן 3ת 2מאן 3רי 2תי 4אל 3מר 3ן
1לדר 2ה 2ומה 3ן 3נה 2חנן 2טע 2י 3אב 4ור 4ל 4ן 4נה 4ס 3ה 4ו 3מלך 3ן 3נור 3ס 4ה 3עזר 4נה 3רז 4ן 3שבע 4ע 2כס 4נדר 2מא
3ה 3וג 2עד 3זר 2קנה 2רואי 4עי 1מה 2ונה 3ר 2י 3לי 5ה 3ר 3תי 2ל 3י 2רי 1ן 1נאבל 3ל 2ה 2יל 1סיל 2נת 2ף 2תר 1פק 2רים 3ת
1ראל 2בל 2ד 2ז 2י 3אל 3ה 1שר 0בארי 1ועז 1יאן 2לא 2סאן 1לומה 1ן 1ניה 4ו 3מין 1צלאל 1ר 2וך 2כה 2ק 1ת 2יה 0גאיה 1בע
2ריאל 1וד 2לדה 2ני 2ר 3י 1זל 1יא 2טל 2ל 3ה 3י 1ל 2י 3ה 2עד 1פן 0דב 2ורה 2יר 1וד 2לב 2ר 3ון 3ין 1ילן 2מא 2ן 2נה 1ן
1נה 2י 3אל 5ה 1פנה 1רור 2יה 0הדס 3ה 2ר 1ודיה 1יילי 2לה 3י 3ל 2נדא 1לל 3י 1ניה 1ענא 1ראל 0ורד 0זאב 1הבה 1ואי 2הר 1יו
2ין 2נב 3ה 0חגי 3ת 1וה 2סין 1יה 2ים 1לא 1מזה 1ן 1נה 2וך 1סן 0טובה 3יה 2הר 2ם 2מי 1ל 2י 3ה 0יאיר 2מן 2ן 2סין 2רא 1גל
1דידיה 1הב 2ודה 4ית 3נתן 3שע 2ל 3י 1ואב 3ל 2בל 2גב 2חאי 3נן 2טא 2כבד 2לי 2נתן 2סף 2תם 1זן 1חזקאל 2יא 4ל 1ם 1נאי 2ון
2יב 1סכה 2מין 1על 3ה 2קב 2רה 1פה 2תח 1צחק 1קיר 1רדן 2ין 1שי 2כר 2עיה 2ראל 2שכר 0כליל 1נרת 1פיר 1רים 3סטיאן 2ם 2מל
0לאה 2ון 2רא 1ביא 1וטם 2י 2ר 3ן 1י 2אב 3ה 3ו 4ר 5ה 3ל 3ם 3ן 2ב 3א 3י 2דור 2ה 3י 4א 2טל 2יה 3ת 2לי 3ך 2ן 2נוי 2עד 3ם
2רוי 4ן 3ז 3י 3ן 1מאר 1נא 2י 0מאור 4י 2י 3ה 3ר 1וחמד 2סא 3טפא 2ר 3יה 1חמוד 1יאל 3ר 2טל 2יה 2כאל 5ה 3ל 2לא 4ן 3ה 3י
2קה 2רא 4ל 3יל 2של 2תר 1לאכי 3ק 2כה 1נוחה 3ר 2חם 1עיין 1רגלית 2דכי 2ום 2יה 3ם 1שה 2י 1תן 2נאל 3יה 0נאוה 3ר 2י 3א 3ה
1בו 1גה 1דב 1הוראי 1וה 2י 3ה 2עה 3ם 2פר 2ר 1ח 2מה 3ן 1טלי 2ע 1יב 2ל 3י 2נה 2סים 2צן 2קה 3ול 2ר 2תאי 1עמה 3י 1פתלי
1ריה 1תן 2נאל 0סאלח 2רה 3י 1הר 1ול 3ימאן 2פי 4ה 1יון 2לא 3ין 2מה 2ני 1למא 1מא 2יר 1ער 1פיר 1תיו 0עבד 3אללה 2רי 1די
3אל 3ה 3נה 2ן 1ובדיה 2ז 2מר 4י 2פר 4י 1טרה 3ת 1ידו 3ן 2לאי 3י 1לי 2מה 1מיחי 3ת 2ליה 2נואל 1נאל 2בל 3ר 2האל 1קיבא 1רן
1תי 0פאטמה 2ר 1יגא 1לג 1נחס 2ינה 1ערל 1רח 2יאל 3ידא 0צבי 3ה 1ופיה 2ר 1פורה 0קארין 1דם 1וסאי 2רל 3ן 1ים 1רן 2ני
0ראובן 2ם 2שית 1ביד 2קה 1הף 1ואי 2חמה 2י 2ם 2מי 2ן 2נה 3י 2עי 2ת 3ם 1ז 1חל 1יאן 2יזל 2ם 2מא 4ס 2נה 2ף 2תאג 4ל 1ם 1ן
1ני 2נה 1עות 2י 3ה 1פאל 2יף 0שאול 2ם 1גב 2יא 1הד 1ובל 2הם 2למית 2ן 2שנה 1חר 1טערנא 1י 2ינא 4דל 2לה 3ת 2ר 3אל 3ה 3י
1לו 3ם 2י 3ו 2מה 1מואל 2חה 2עון 1ני 3אור 1פרה 1קד 1רבל 2ה 0תאיר 2לא 3ין 1בור 2ל 1הילה 2ל 3ה 1ולין 2ם 2מר 1יא 2ים
1מיר 2ר 3ה 1פארת 0اباء 2تسام 3كار 3هاج 5ل 2راهيم 2والفضل 1تنا 1جوان 1حسان 2لام 2مد 1خلاص 1دم 1راد 2تين 3ین 2زقي 2ش
2مين 3ین 2وى 2يا 3ج 3ن 2یا 3ن 1زهار 1سامة 2را 4ر 2ما 4ء 2يل 1صيل 1عتكاف 3ماد 1غاريد 1فتكار 2راح 2نان 1كرام 3م 1لاء
2نا 4ز 2ياس 3ن 4ا 2ینا 1ماني 2ل 2ير 4ة 4حسين 4رضا 4عباس 5لي 4محمد 5هدي 3ن 4ة 2یرحسین 4رضا 4عباس 4محمد 5هدی 1ناهيد
3ييس 2يس 4ة 1وا 1يات 2ة 2دا 2ليا 4ن 2مان 3ن 2ناز 4س 2وب 1یدا 2لیا 4ن 2ناز 0باران 3عة 2سمة 2هرة 1تلاء 2ول 1ثينة
1درالدجى 1شرى 1لسم 2قيس 2ماء 2ند 1نان 2فسج 2يامين 2یامین 1هاء 3ر 2جة 2ية 1وران 1يسان 2لسان 0تاج 2لا 3يا 2مر 1حسين
1رانيم 2ف 1قي 1مام 2يم 1وفيق 2لين 1ينهينان 0ثابت 2قب 2مر 2ير 1روت 1قيف 1نا 0جابر 2د 2سم 2لا 1دير 1راح 2ير 1سور 1عفر
1لاء 3ل 2نار 2يل 1مال 3ن 2يل 4ة 1نى 1هاد 2راء 1وان 4ا 3هر 2د 3ي 2رية 2ليا 2ين 1يلان 0حاتم 2رث 2زم 2فظ 2مد 1باب 1دیث
1سام 2ن 3ا 3ي 4ن 2يب 3ن 2ین 1فيظ 1قي 1كيم 1لا 2ما 2يم 1ماد 2دان 3ي 2زة 2ود 2يد 1نانه 2بل 2في 1ياة 3ن 2در 0خاشعة 2طر
2فق 2لد 4ي 1ديجة 1ضر 1طيب 1لدون 2ف 2وصي 2يفة 3ل 1ميس 1يري 0دارين 2ليا 2نة 3ي 4ال 4ة 3یال 2هي 2وود 1ريد 1عاء 1ليل
1نيا 1همان 1ووب 1يسم 2مه 0ذريع 1كي 1يب 0رابح 2تب 2جح 3ي 2زي 2سم 2شد 2ضي 2غب 2فع 2ما 3ح 3ز 3ي 2ني 4ة 2وي 2يد 3ف 1باح
2ى 2يع 1جاء 3يي 2ب 1حيب 1خاء 1زين 1ستم 2مي 1شا 3د 2دي 2يد 1ضا 2وان 2ي 1فيق 1قيه 2یه 1محي 2زي 2ضان 1ها 2يف 1واء 2با
3ين 2حي 2ز 2عة 2فيدا 2وف 1ياض 3ن 2تاج 4ل 2حانه 2ف 3ال 2م 3ا 4ن 2ناد 2يس 1یحانه 0زاخر 2كي 2هر 3ي 2يد 1بير 1غلول 1كريا
2ي 3ة 1هدي 2را 4ن 3ة 2ير 1ياد 2د 3ان 2ن 3ب 3ة 1ینب 0ساجد 3ي 2را 3ة 3ینا 2طع 2لم 2مح 3ر 3ي 4ار 2هد 3ر 2يد 1با 2حان
1تايش 3یش 1جا 3د 2ى 1خاء 1ديم 1راج 2حان 2ور 2ين 1عاد 2د 3ون 3ي 2ود 2يد 1فيان 3ر 1لاف 3م 2سبيل 2طان 2مان 3ى 2يم 4ان
4ة 1موح 2ير 4ة 1نام 3ن 1هل 2وان 2يل 1ومية 2گند 1يد 2ليا 4ن 2نا 1ینا 0شادن 3ي 2طر 2فع 2كر 2مخ 3ل 1بلي 2يب 1جاع 1داد
1ريف 1عبان 2لان 2يب 1فيع 1كري 2يب 1هاب 2ب 2د 2م 2ير 1وقي 1يراز 2ق 0صابر 2حب 2دح 3ق 2رم 2في 2لح 2مد 2يب 1باح 2حي 2ري
4نة 2ور 2يح 1خر 1داح 3م 2قي 1عب 1فية 1قر 1لاح 1نديد 1هيب 1وفيا 0ضاحك 3ي 1حاك 2ى 1رغام 1ياء 3يي 0طارق 2لب 2مح 2ها 3ر
2يع 3ف 3ل 1باع 1ريف 1لال 2عت 1موح 1ه 1يب 2ع 0ظاعن 2فر 2هر 1بي 1ريف 1هير 0عابد 2تب 2دل 2رف 2صم 2طف 2قل 2كف 2لم 3ية
2مر 2يد 1باس 2دالرحمن 5له 2ود 1تاب 2ريس 2يد 3ق 1ثمان 1دلي 2نان 2وي 1ذب 1ربي 2شیا 2فات 4ن 3ه 1زاز 2ت 2مي 2يز 1سل 1صام
2مت 1طاء 1فيف 1قيل 1لاء 3م 2وان 2ي 3رضا 2ی 3رضا 1ماد 3ر 2ر 3ان 3و 2ير 0غازي 2لب 3ي 2مد 2نم 1زوان 2ير 1سان 1طفان 1لاس
1وى 1يداء 0فاتح 2خر 2دي 2رس 3ع 3وق 2ضل 2طمة 4ه 4ياسارينا 2لح 2يد 3ق 1تحي 2وح 1خر 3ي 1داء 3يي 1رات 3س 2ج 2ح 3ات 4ن
2دوس 2زدق 2يال 3د 1ضل 2يل 1طين 1كري 1لاح 2ة 1هد 2مي 1واد 3ز 2زي 4ة 1ياض 2صل 0قادة 2سم 2صد 2نت 2يد 1بس 1حطان 1دري 1صي
3د 1طب 2ز 1نوع 1يس 0كاتيا 2رم 2سر 2شف 2ظم 2فور 2مل 4ة 2هينة 2يد 1بير 1توم 1رم 3ة 2يم 1ساب 1ليم 1مال 1نار 3ن 2عان
1وثر 1یان 4ا 0لارا 2ما 2نا 1بيب 3د 1تين 1طفي 2وف 1فيف 1قاء 2مان 1ماح 2ين 1هفان 1وجين 2را 3ين 2ليا 2ي 1يان 2ث 2ديا
2زا 2ساء 2لى 3يا 2م 2نا 3دة 0ماجد 2دلين 2ذى 2ريا 2زن 2سينيسا 2لك 2مون 2هان 3ر 2يا 3ده 1بين 4ا 2ین 4ا 1تعب 2وكل 3لي
2يم 3ن 2ین 1جاهد 2د 3ي 1حجوب 2دثه 2سن 2فوظ 2مد 4امين 6ین 4جواد 4حسين 6ین 4رضا 4علي 4مهدي 4ياسين 4پارسا 4یاسین 3ود
2ند 2يا 2یا 1ختار 2لص 2يمر 1دحت 1راد 4ي 2تجي 3ضي 3قي 2زوق 2سال 3ي 2شد 2ضي 2عي 2وان 3ة 2يم 2یم 1زرية 2هر 1سرور 2عد 3ف
3ود 2لم 1شاري 2رف 3ق 2فق 1صباح 2طفى 2عب 2لح 1طاوع 1ظهر 1عارف 2تز 3وق 2ز 2صومه 2مر 2ن 2ين 1فيد 1قداد 4م 1كرم 2ي 1لاك
2هم 2يکا 2یكا 1متاز 2دوح 1ناضل 3ف 2تصر 2جد 2ذر 2سي 2صور 2يب 3ر 3ع 3ف 1هدي 4س 3ی 4س 4ه 2ران 2سا 2ند 2يب 1وسى 2فق 2لود
2من 2نس 2يد 1ياد 3ر 3س 2ثاق 2را 4ل 2سور 4ن 2لاء 3يسا 2مون 2نة 0ناجح 3ي 2در 3ي 4ة 4ه 2ردين 2زنين 4ین 2صر 3يف 2ضر 2ظم
2عم 2فذ 3ع 2هد 2يل 1براس 2هان 2يل 3ه 1جدت 2مة 2وان 2يب 1ديم 1ذير 1ريمان 2گس 1زار 2يه 1سرين 2يب 3م 1شات 2وان 3ة 1صر
3ي 2وح 3ر 1ضال 1ظام 2مي 1عمان 2يم 1غم 1مر 1هاد 1وار 3ف 3ل 2ح 2ر 3س 3ه 3ي 2ف 1يازي 3يش 1یایش 2ما 0هاجر 2دي 2شم 2ني 4ة
4ه 3یه 2يدي 3ل 1دى 1زار 1ستي 3ی 1لال 4ي 2يا 2یا 1مام 1ناء 3دي 2د 1يا 3م 2ثم 2كل 2مان 0واثق 2دع 2صف 3ل 2يل 1ثاب 1جدي
2يه 1حيد 1دود 2يع 1ريد 1سام 2يل 3م 1صاف 2في 1ضاح 1فاء 3يي 2يق 1ليد 3ف 1ناس 0يارا 2سر 3مين 6ة 3ين 2فع 2قوت 2نع 3يس
1حيى 1زيد 1سار 2رى 3ي 2نا 1عرب 2قوب 1قين 1مام 1وبا 2سف 2نس 0پارسا 1رنيا 2هام 2یا 0کوثر 1يان 4ا 0یاسمین 3ین 1سنا 1لدا
1وسف 1گانه 0अकबर 1ननत 1भय 1मर 2ल 1रचन 1वन 3त 0आननद 1भ 1श 0इनद 3र 1ल 0ईश 0उततम 1म 1ष 0ऋष 0एष 0ऐशवरय 0ओम 0कमल 1रण 1ल
2पन 0चणड 1नदन 0जय 2नत 0दरशन 0धनञजय 1वल 0नश 0पदम 1रणय 3व 2भ 2सनन 1ललव 0बरहम 1ल 0भरत 0मञज 1ण 1ध 0यश 0रघ 1चन 1जन 1त 2न
3म 1व 1शम 0लकषम 4ण 1त 0वसनत 0शकत 1ङकर 1न 1र 2म 1श 0सत 1रल 2सवत 1वपन 2रण 0हर 2श 3द 3ल 0ავთანდილ 1ზა 1იდა 1კაკი 1ლა
2ექს 5ანდრე 1მირან 1ნა 2ზორ 2ი 3კო 2ნა 2ჟელა 1რმენ 2ტურ 2ჩილ 1სლან 2მათ 0ბადრი 1ელა 2სარიონ 3იკ 2ქა 1იძინა 1ონდო
2რის 0გალინა 1ელა 2ნადი 1ვანცა 1ია 2გა 3ლა 2ვი 2ორგი 2ული 1ოგა 3ი 4ტა 2დერძი 2ჩა 1რიგოლ 1უგული 2ლიკო 3ნარა 2რამ
0დავით 2თო 2ლი 2რეჯან 1ემურ 1იანა 2მიტრი 1ოდო 0ედუარდ 1ვგენია 1თერ 1კა 3ტერინე 1ლგუჯა 2ენა 4ე 2ზა 2იზა 3სო 2მირა 1მა
2ზარ 0ვალენტინა 4რი 6ან 2ნო 2ჟა 2რდო 2სილ 2ხტანგ 1ენერა 2რა 3იკო 2ფხვია 1იოლეტა 2ქტორ 1ლადიმერ 0ზაზა 2ირა 2ურ 2ქარია
1ვიად 1ინა 1ოია 1ურაბ 0თათია 2მაზ 4რ 5ა 5ი 3თა 3ილა 3უნა 1ეა 2იმურაზ 2მურ 2ნგიზ 2ონა 1ინა 4თინ 1ორნიკე 0ია 2გო 2მზე
1ვანე 1ზა 2ოლდა 1ლია 1ნგა 2ეზა 1ოსებ 1რაკლი 2ინა 4ე 2მა 1ური 0კარინე 3ლო 2ხა 4ბერ 1ლარა 1ობა 2ნსტანტინე 0ლალი 2მარა
3ზირა 2ნა 2რისა 2შა 1ევან 2ილა 2ლა 2ნა 1ია 3ნა 2და 2ზა 2კა 2ლი 1უბა 2დმილა 2იზა 0მაგდა 2დონა 2ია 2კა 2ლხაზ 2მუკა
2ნანა 2რგალიტა 3ი 4ა 5მ 4კა 4ნა 5ე 3ო 2ყვალა 1ეგი 2დეა 3იკო 2რაბ 3ი 1ზია 1თვარისა 1ინდია 2რანდა 3იან 2ხეილ 1ურთაზ
3მან 0ნადეჯდა 3ია 2ზი 4ბროლა 4კო 2თელა 3ია 2ირა 2ნა 3ი 3ული 2რგიზა 2ტალია 3ო 1ელი 2სტან 1იკა 3ოლოზ 2ნელი 3ო 1ოდარ
2ნა 2რა 1უგზარ 2კრი 2ნუ 2ცა 0ოთარ 1ლია 2ღა 1მარ 0პაატა 2ვლე 1ეტრე 0ჟანა 1ენია 1უჟუნა 0რამაზ 2ტი 1ევაზ 2ზო 1იმა 2ტა
1ობერტ 2ზა 2ინ 2ლანდ 2მან 1უსუდან 0სალომე 1ერგო 1ვეტლანა 1იმონ 1ონია 2სო 2ფია 4კო 4ო 1ულიკო 2სანა 0ტარიელ 2ტიანა
0უშანგი 1ჩა 0ფატი 4მა 1იქრია 0ქეთევან 3ინო 3ო 1რისტინე 0შალვა 2ქრო 1ოთა 2რენა 0ციალა 2რა 2სანა 2ური 2ცინო 0ხათუნა
2ტია 1ვიჩა 0ჯაბა 1ემალ 1ონი 1ულიეტა 2მბერ
"""
"""Given names in other letters than Latin ones."""

BOOKS = """
a escrava isaura, a paixao segundo g h, a passage to india, a rosa do povo, a study in scarlet, a vida como ela e,
adventures of huckleberry finn, anna karenina, anne of green gables, anton chekhov, aria z kurantem, art of war,
bell tolls, charlie and the chocolate factory, david copperfield, dom casmurro, don quixote, dorian gray,
edgar allan poe, edgar allen poe, for whom the bell tolls, gabriela cravo e canela, hitting the line, i claudius,
jane eyre, jean brodie, joao miramar, josefine mutzenbacher, jude the obscure, lord jim, lucky jim,
memorias sentimentais de joao miramar, moby dick, morte e vida severina, nightmare abbey, oliver twist,
oscar and lucinda, oscar wao, pedra bonita, peter pan, pozegnanie z maria, romance da pedra do reino,
romeo and juliet, rosa do povo, ruth fielding in alaska, sao bernardo, scarlet letter, segundo g h, sol ziemi,
stories of anton chekhov, the adventures of huckleberry finn, the adventures of tom sawyer, the art of war,
the brief wondrous life of oscar wao, the complete works of edgar allen poe, the enchanted april,
the master and margarita, the picture of dorian gray, the prime of miss jean brodie, the scarlet letter,
the works of edgar allan poe, tom jones, tom sawyer, veronika decide morrer, vida como ela e, vida severina,
viva o povo brasileiro, winnie the pooh, анна каренина, воина и мир, евгении онегин, мастер и маргарита,
руслан и людмила, тарас бульба
"""
"""What they are called, whole and from the name in it on."""
