"""French: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "abattent advance aiderait aimeras angel annuel article bacon balle bases bille bogue bordels bougre boulogne "
    "bourdes braille brode brodes caine canto carence carne catalogne center chanter chartier chase chatier "
    "coffret college commente commerce compote comte construire conte conter copte corte coter debordent deboute "
    "demesure demontree demontrent demontrer depassait deriver derniere dessein desseins deviant donnes elevee "
    "elevees elevent elever eleves enlevant errer evier existant extremiste ferre filiere formees formels forms "
    "gache gardens gardner garee garer gares grade grades impassible interieur interieure larguer lasser linge "
    "lisee lisiere lisser longe mache madison maillet maire maistre malte mason materiau medine meure mitre monet "
    "monster montagne montre montrer moules mouse navre noter noues orientale papillon paque parie parite parte "
    "partirent passeur passible patir patrie pence peniche perce perches petits photons pinte plaint plainte "
    "planche planches planning planque plant plante pleuvent pline poetique poetiques ponte pourras pourris "
    "pourrons pouvions precedant preche procedent quais rangers rangs recevable recevables redevable redevables "
    "reeves reglent reine relie relier remplie rentrait reset resigne resort resterent retirait saens salaires "
    "sauteur scolaire scolaires serrait servait servier sevir sorte stocks stoke stokes subprimes suspendre teint "
    "telephonie tendons tentons venons venue venues venus visee voiler voudras voues voulions"
)
