"""Danish: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "abnet allierede antagelig baade beholdte besvare borstet bosaetning broer brygger bryggeri brygget bundne "
    "davis doren dybtgaende fader faelder faeste femme fjernt flader fodes foles forleden forliste forringe "
    "forrude forruden forsaette fortraekker fortsatte forudse forvandling genre grene haeder haeldte haevet hojen "
    "hojer hoveddor investeret kammeret kappe laeder laenge laeser lejer losningen malet malling marlene "
    "monsteret monterne naesen neder nogne overfalde overlade oversat overse overset pladsen rorte saeler saret "
    "sejlet siger sikker skaerme skaner skoen skyldes sogte sonner sprogets staar staedig stande stater staven "
    "stien stier sutter terningen terninger undre vagten vandret vandt vestre viklet"
)
