"""Danish: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "abnet allierede antagelig asken baade badet bandbredde beder beholdte beste besvare blandet boende bojer "
    "borstet bortgang bosaetning braedder breder broer brygger bryggeri brygget bundne burger centeret davis "
    "doren dybtgaende facetter fader faelder faeste farligere fatter femme fjernt flader fodes foles foraret "
    "forleden forliste forringe forrude forruden forsaette forte fortraekker fortsatte forudse forvandling fulgt "
    "gader galde genre glaede graeder grene haeder haeldte haevet hojen horne hoveddor indbyggere invest "
    "investeret kammeret kappe kapper laeder laeges laenge laenker laering laeser laeste lagring laner ledere "
    "lederen lejer lejere losningen maker malet malling marin marlene monsteret monterne naesen neder nogne "
    "oplosning overfalde overlade oversat overse overset overtalt overtiden pladsen planer praktik radet rorende "
    "rorte saadan saeler saret sejlet siger sikker singer skaerme skammen skaner skills skoen skyer skylder "
    "skyldes skynder sogte sonner spraekker sprogets staar staedig stande stater staven stien stier stramme "
    "sutter sviner syner terningen terninger udslaet udsprang undertiden undre ungerne vagten vandret vandt "
    "vejlede vestre viklet vildere vindere"
)
