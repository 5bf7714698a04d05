# Los nombres van solos, tras dos puntos o entre paréntesis: así nada tiene que concordar.

percent = { $number } %
or = { $first } o { $last }

# --- la carta ---

reply-subject = Piloto de viento para { $boat }
reply-subject-bare = Su consulta sobre el piloto de viento
reply-hello-name = Hola, { $name }:
reply-hello = Hola:
reply-thanks = { $whose ->
    [owner] Gracias por escribirnos sobre su { $boat }.
   *[other] Gracias por escribirnos sobre este barco, { $boat }.
}
reply-thanks-bare = Gracias por escribirnos.
reply-unsure = Todavía no estamos del todo seguros de qué modelo es.
reply-regards = Un cordial saludo,
reply-desk = El equipo de ventas

heading-suggest = Lo que proponemos
heading-why = Por qué
heading-sure = Hasta qué punto estamos seguros
heading-buy = Lo que pone usted
heading-ask = Antes de enviarlo, díganos por favor
heading-care = Tenga en cuenta
heading-nothing = De momento no encaja nada

reply-suggest = Proponemos el piloto { $gear } sobre el soporte inferior { $lower } y el soporte superior { $upper }, con el eje { $shaft }.
reply-verdict = { $verdict ->
    [fits] Según las medidas que tenemos, encaja.
    [tight] Según las medidas que tenemos, encaja, pero por poco.
   *[undecided] Todavía no se puede decir si encaja: falta una medida de la que depende, y otros barcos tampoco la dan.
}
reply-place = { $side ->
    [centre] Va montado en crujía
    [port] Va montado { $offset } a babor de crujía
   *[starboard] Va montado { $offset } a estribor de crujía
}, con el eje { $aft } a popa del canto superior del espejo y el centro de los dos collarines a { $lower } y { $upper } sobre el agua.
reply-trades = Esto es lo que pide del barco:
trade-take-off = desmontar: { $thing }
trade-build-up = hacer reforzar el casco detrás del { $bracket }

reply-sisters = { $count ->
    [0] No tenemos ningún barco gemelo en nuestros archivos, así que hemos mirado los más parecidos al suyo.
    [one] Tenemos un barco gemelo en nuestros archivos.
   *[other] Tenemos { $count } barcos gemelos en nuestros archivos.
}
reply-same = { $same ->
    [0] De los { $looked } barcos que hemos mirado más de cerca, ninguno lleva exactamente este montaje.
    [one] De los { $looked } barcos que hemos mirado más de cerca, uno lleva exactamente este montaje.
   *[other] De los { $looked } barcos que hemos mirado más de cerca, { $same } llevan exactamente este montaje.
}
reply-tried = Lo hemos encontrado probando nuestras piezas una a una con sus medidas.
reply-likest = El barco más parecido al suyo es el número { $record } de nuestros archivos. En qué se diferencia el suyo:
reply-alike = El barco más parecido al suyo es el número { $record } de nuestros archivos; en todo lo que sabemos de los dos son iguales.
reply-differs = { $field }: { $theirs } en aquel, { $ours } en el suyo
reply-hers-only = { $field }: { $theirs } en aquel
reply-ours-only = { $field }: { $ours } en el suyo
contrast-fails = Con { $theirs } en lugar de { $ours } ({ $field }), este montaje no serviría.
contrast-moves = Con { $theirs } en lugar de { $ours } ({ $field }), el eje se movería { $aft } en sentido longitudinal (+ es hacia popa), el collarín inferior { $lower } y el superior { $upper } en altura.

reply-chance = Calculamos en un { $chance } la probabilidad de que todo libre en su barco.
reply-doubt = La duda que queda depende de:
reply-doubt-line = { $field }: { $share } de la duda
reply-filled = { $source ->
    [sister_ships] No indicado y tomado de barcos gemelos: { $fields }.
    [neighbours] No indicado y tomado de barcos parecidos: { $fields }.
   *[prior] No indicado y tomado como es habitual: { $fields }.
}

also = { $first }; { $last }
and-more = { $list } y { $count } más
reply-nothing = Según las medidas que tenemos, nada de lo que fabricamos encaja en el barco tal como está. Lo más cercano es el piloto { $gear } sobre el soporte inferior { $lower } y el soporte superior { $upper }, con el eje { $shaft }.
reply-miss = Lo que lo impide: { $check }. Faltan { $amount }.
reply-cures = Hemos probado qué ayudaría:
reply-no-cure = Quitar una sola cosa o cambiar una sola pieza no lo arregla. Díganos qué se puede mover y volveremos a mirarlo.
cure-without = sin esto: { $thing }
cure-shaft = el eje { $code } en su lugar
cure-bracket = { $bracket }: { $code } en su lugar
reply-none = Lo que sabemos del barco todavía no basta para proponer nada.

# --- lo que pone el armador ---

supply-bolts = { $bracket }: { $count } pernos pasantes { $size } × { $length } con arandelas y tuercas
supply-bolts-open = { $bracket }: { $count } pernos pasantes { $size } con arandelas y tuercas; su longitud, cuando se haya medido el grueso del casco
supply-sealant = sellador para los agujeros de los pernos
supply-backing = contraplacas cortadas según el plano (inoxidable 316, aluminio o contrachapado marino sellado)
supply-core = epoxi para rellenar el núcleo alrededor de cada agujero, o casquillos de compresión
supply-insulate = arandelas y casquillos aislantes entre el inoxidable y el casco
supply-tube = un tubo recto del diámetro del eje para ponerlo todo a plomo antes de taladrar

# --- precauciones ---

caution-confirm = Esto es un consejo calculado a partir de lo que nos han dicho. Compruebe cada medida en el barco antes de pedir metal o taladrar un agujero.
caution-holes = Los agujeros en el casco pueden hundir un barco. Pregunte al astillero o a un perito si se puede taladrar ahí y cómo hay que reforzarlo; las normas locales y la clasificación van primero.
caution-plumb = Antes de taladrar, ponga el eje a plomo en los dos sentidos con un tubo de prueba: monte primero el soporte inferior.
caution-cored = El casco es de sándwich: alrededor de cada agujero hay que sacar el núcleo y rellenarlo, o poner un casquillo; si no, se aplasta y se empapa.
caution-metal = El acero inoxidable contra un casco de metal corroe el casco: aísle cada perno, cada brida y cada placa.
caution-moves = Hay algo en la popa que se mueve y no sabemos hasta dónde: pruébelo en todo su recorrido con el tubo de prueba puesto.
caution-low-hole = El agujero más bajo queda a { $height } sobre el agua: que un perito dé el visto bueno antes de taladrar ahí.
caution-weak-skin = Según los valores usuales, el casco detrás de un soporte es más débil de lo que piden las cargas: el astillero o un perito debe decir cómo reforzarlo antes de taladrar.
caution-shaking = A ciertas velocidades los remolinos pueden hacer vibrar el eje: obsérvelo en la primera salida y, si ocurre, haga acortar el voladizo.
caution-tight = Va justo: pasa con las medidas dadas, pero no con seguridad. Vuelva a medir aquello de lo que depende la duda.

# --- hasta dónde llega la experiencia ---

backing-nothing = Todavía no hay ningún montaje registrado: las propuestas se apoyan solo en la geometría y las cargas, y no se sabe qué elegirían los montadores.
backing-no-like = Ningún barco registrado se parece lo bastante a este para compararlo: las probabilidades solo dicen cuántas veces se ha montado cada cosa en cualquier barco.
backing-nearest = { $known ->
    [yes] No hay ningún { $model } registrado
   *[no] No se conoce el modelo, así que ningún barco gemelo da testimonio
}: lo que elegirían los montadores se juzga por otros barcos, de los que el más cercano se parece en un { $like }.
backing-unlike = { $known ->
    [yes] No hay ningún { $model } registrado
   *[no] No se conoce el modelo, así que ningún barco gemelo da testimonio
}: lo que elegirían los montadores se juzga por otros barcos, de los que el más cercano se parece en un { $like }, y aun ese es un barco bastante distinto.
backing-stern = { $count ->
    [0] No hay ningún barco registrado con esta popa ({ $stern })
    [one] Solo hay un barco registrado con esta popa ({ $stern })
   *[other] Solo hay { $count } barcos registrados con esta popa ({ $stern })
}: lo que llevan otros dice poco aquí, las propuestas se apoyan en la geometría.
backing-tried = Nada de lo que llevan barcos parecidos sirve aquí: la propuesta se encontró probando el catálogo con las medidas.
stern-plumb = espejo vertical
stern-raked = espejo lanzado
stern-reverse = espejo invertido
stern-scoop = popa con escalón
stern-open = popa abierta
stern-double_ended = doble proa

# --- preguntas ---

ask-hull = ¿Qué barco es exactamente: { $names }? El año y la placa del astillero lo dirían.
ask-boat-model = ¿Qué barco es: astillero, modelo y año?
ask-transom-top_height_mm = ¿A qué altura sobre el agua está el canto superior del espejo? En crujía, con mar en calma y cargado como para navegar: desde el agua hasta el punto más alto del casco que pueda sostener un soporte, sin contar balcón, tapa ni brazola. Con una precisión de { $exact } basta.
ask-transom-rake_deg = ¿Cuánto se inclina el espejo respecto a la vertical, y hacia qué lado? Ponga un nivel o una plomada en crujía y díganos si el canto superior queda más a popa que el inferior (lanzado) o más a proa (invertido). Con una precisión de { $exact } basta.
ask-transom-bottom_height_mm = ¿A qué altura sobre el agua termina el espejo por abajo? En crujía; con signo menos si termina bajo el agua. Con una precisión de { $exact } basta.
ask-transom-width_top_mm = ¿Qué ancho tiene el espejo arriba? Todo el ancho por el canto superior, con una precisión de { $exact }.
ask-transom-width_waterline_mm = ¿Qué ancho tiene el espejo en la flotación, o en su canto inferior si queda más alto? Todo el ancho, con una precisión de { $exact }.
ask-transom-thickness_mm = ¿Qué grueso tiene el casco por donde pasan los pernos? Mídalo en un pasacascos o en un agujero taladrado: todo, con el núcleo, con una precisión de { $exact }.
ask-transom-camber_mm = ¿Cuánto se curva el espejo? Apoye una regla recta y horizontal contra el canto superior de modo que toque en el centro, y díganos la mitad de la suma de los huecos en los dos extremos, con una precisión de { $exact }.
ask-transom-step_height_mm = ¿A qué altura sobre el agua está la cara superior del escalón? Con mar en calma, cargado como para navegar, con una precisión de { $exact }.
ask-transom-step_depth_mm = ¿Qué fondo tiene el escalón? De proa a popa, desde el pie de la contrahuella hasta el canto de popa, con una precisión de { $exact }.
ask-transom-step_width_mm = ¿Qué ancho tiene el escalón, de banda a banda, donde es plano? Con una precisión de { $exact }.
ask-transom-post_width_mm = ¿Qué ancho tiene el codaste donde lo abrazarían los soportes? Con pie de rey, a las dos alturas, con una precisión de { $exact }.
ask-main_rudder-hung = ¿Cómo va montado el timón principal: bajo el casco, o por fuera en el espejo o el codaste?
ask-main_rudder-trailing_edge_aft_mm = ¿Hasta dónde llega el timón principal hacia popa? Cuelgue una plomada del canto superior del espejo y mida en sentido longitudinal hasta el canto más a popa del timón; con signo menos si queda a proa de la plomada. Con una precisión de { $exact } basta.
ask-main_rudder-stock_aft_mm = ¿Dónde está la mecha del timón? En sentido longitudinal desde una plomada colgada del canto superior del espejo; con signo menos hacia proa. Con una precisión de { $exact } basta.
ask-boat-displacement_kg = ¿Cuánto pesa el barco, cargado como para navegar? Con una precisión de { $exact } basta; díganos si la cifra es en rosca o cargado.
ask-boat-stern = ¿Qué forma tiene la popa donde iría el soporte inferior: vertical, lanzada, invertida, con escalón moldeado, abierta o de doble proa? Una foto de costado es lo mejor.
ask-obstacle = ¿Dónde está exactamente esto: { $thing }? ¿Desde dónde y hasta dónde a popa del canto superior del espejo, a qué distancia de crujía, a qué altura sobre el agua? Con una precisión de { $exact } basta.
ask-obstacles = ¿Qué hay en la popa: escalera, plataforma, pescantes, fueraborda, escape, púlpito, estays, botavaras, un arco? Díganos de cada cosa a qué distancia de crujía empieza y acaba, hasta dónde llega a popa y a qué altura sobre el agua (con una precisión de { $exact } basta), si se abate o gira, y si se puede quitar. Una foto desde popa ayuda.
ask-doubt-contradictory = { $field }: usted da { $values }. ¿Qué medida es la buena?
ask-doubt-sign_unknown = { $field }: usted escribe «{ $text }». ¿Hacia qué lado: a popa o a proa, sobre el agua o bajo el agua?
ask-doubt-unit_unknown = { $field }: usted escribe «{ $text }». ¿En qué unidad?
ask-doubt-other_datum = { $field }: usted ha medido desde otra referencia que nosotros («{ $text }»). ¿A qué altura está sobre el agua, con mar en calma y cargado como para navegar?
ask-doubt-ambiguous = { $field }: «{ $text }» se puede leer de más de una manera. ¿A qué medida se refiere?

bracket-lower = soporte inferior
bracket-upper = soporte superior

# --- nombres de los datos ---

field-other = uno de sus datos
field-boat-builder = astillero
field-boat-model = modelo
field-boat-year = año de construcción
field-boat-loa_mm = eslora total
field-boat-lwl_mm = eslora en la flotación
field-boat-beam_mm = manga
field-boat-draft_mm = calado
field-boat-displacement_kg = desplazamiento
field-boat-hull_material = material del casco
field-boat-stern = forma de la popa
field-transom-top_height_mm = altura del canto superior del espejo sobre el agua
field-transom-bottom_height_mm = altura del canto inferior del espejo sobre el agua
field-transom-rake_deg = inclinación del espejo
field-transom-profile = perfil en crujía
field-transom-sections = secciones horizontales
field-transom-width_top_mm = ancho del espejo arriba
field-transom-width_waterline_mm = ancho del espejo en la flotación
field-transom-camber_mm = curvatura del espejo
field-transom-thickness_mm = grueso del casco
field-transom-core_mm = grueso del núcleo
field-transom-step_height_mm = altura del escalón sobre el agua
field-transom-step_depth_mm = fondo del escalón
field-transom-step_width_mm = ancho del escalón
field-transom-lower_rake_deg = inclinación del casco bajo el escalón
field-transom-post_width_mm = ancho del codaste
field-main_rudder-hung = montaje del timón principal
field-main_rudder-stock_aft_mm = posición de la mecha
field-main_rudder-leading_edge_aft_mm = canto de proa del timón principal
field-main_rudder-trailing_edge_aft_mm = canto de popa del timón principal
field-main_rudder-top_height_mm = parte alta de la pala del timón principal sobre el agua
field-main_rudder-bottom_height_mm = parte baja de la pala del timón principal sobre el agua
field-main_rudder-max_deflection_deg = giro del timón principal a cada banda
field-obstacles = lo que hay en la popa
field-waterline = flotación en carga
field-interactions = varias medidas combinadas

# --- lo que puede haber en la popa ---

thing-ladder = escala de baño
thing-platform = plataforma
thing-davits = pescantes
thing-outboard = motor fueraborda
thing-exhaust = escape
thing-rail = balcón de popa
thing-stay = estay de popa
thing-boom = botavara
thing-boomkin = botalón de popa
thing-arch = arco de popa
thing-panels = placas solares
thing-mast = palo
thing-staff = asta de bandera
thing-passerelle = pasarela
thing-locker = cofre
thing-other = otro accesorio
thing-at = { $side ->
    [port] { $thing } (a babor)
    [starboard] { $thing } (a estribor)
    [centre] { $thing } (en crujía)
    [both] { $thing } (a las dos bandas)
   *[across] { $thing } (de banda a banda)
}

word-plumb = vertical
word-raked = lanzado
word-reverse = invertido
word-scoop = con escalón
word-open = abierto
word-double_ended = doble proa
word-inboard = bajo el casco
word-transom = por fuera, en el espejo
word-frp_solid = fibra maciza
word-frp_cored = fibra con núcleo
word-wood = madera
word-aluminium = aluminio
word-steel = acero

# --- lo que se comprueba ---

check-reach = alcance del { $bracket }
check-pad = grueso del calzo bajo el { $bracket }
check-seat = casco sano bajo el { $bracket }
check-strut = tornapuntas del { $bracket }
check-gap = ancho del codaste en el { $bracket }
check-stands = altura sobre el escalón del { $bracket }
check-spacing = distancia entre los soportes
check-overhang = voladizo del eje bajo el soporte inferior
check-head = largo de eje sobre el soporte superior
check-foot = largo de eje en el soporte inferior
check-immersion = inmersión de la pala
check-root_depth = profundidad de la parte alta de la pala
check-main_rudder = espacio entre el piloto y el timón principal
check-hull = espacio entre el piloto y el casco
check-displacement = desplazamiento para este tamaño de piloto
check-wake = agua libre al lado del timón principal
check-obstacle = espacio entre el piloto y esto: { $thing }
check-load = resistencia del eje y los soportes
