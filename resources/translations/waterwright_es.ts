<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Adjust</name>
    <message>
        <source>learned loop</source>
        <translation>red aprendida</translation>
    </message>
    <message>
        <source>ratio of %1</source>
        <translation>relación con %1</translation>
    </message>
    <message>
        <source>sum of branches</source>
        <translation>suma de ramales</translation>
    </message>
    <message>
        <source>last %1 % of target</source>
        <translation>último %1 % del objetivo</translation>
    </message>
    <message>
        <source>%1, %2 % of target</source>
        <translation>%1, %2 % del objetivo</translation>
    </message>
    <message>
        <source>%1 in round %2</source>
        <translation>%1 en la ronda %2</translation>
    </message>
    <message>
        <source>Aim: %1</source>
        <translation>Meta: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Ctrl+B reads the reference.</source>
        <translation>Ctrl+B lee la referencia.</translation>
    </message>
    <message>
        <source>No try yet at this valve.</source>
        <translation>Aún sin intentos en esta válvula.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4</source>
        <translation>%1: %2, %3 %4</translation>
    </message>
    <message>
        <source>Tries   %1</source>
        <translation>Intentos   %1</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>aún sin leer</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 con %2</translation>
    </message>
    <message>
        <source>round %1%2</source>
        <translation>ronda %1%2</translation>
    </message>
    <message>
        <source>read the valve</source>
        <translation>lea la válvula</translation>
    </message>
    <message>
        <source>no water passes at that setting</source>
        <translation>con ese ajuste no pasa agua</translation>
    </message>
    <message>
        <source>aim %1 at %2</source>
        <translation>meta %1 con %2</translation>
    </message>
    <message>
        <source>too much flow, %1</source>
        <translation>demasiado caudal, %1</translation>
    </message>
    <message>
        <source>too little flow, %1</source>
        <translation>poco caudal, %1</translation>
    </message>
    <message>
        <source>below what can be read; close further or change the meter (menu Round)</source>
        <translation>por debajo de lo legible; cierre más o cambie de medidor (menú Ronda)</translation>
    </message>
    <message>
        <source>%1: read the valve.</source>
        <translation>%1: lea la válvula.</translation>
    </message>
    <message>
        <source>%1: %2. %3 read at setting %4; %5.</source>
        <translation>%1: %2. %3 leído con ajuste %4; %5.</translation>
    </message>
    <message>
        <source>two tries</source>
        <translation>dos intentos</translation>
    </message>
    <message>
        <source>a try, learned loop</source>
        <translation>un intento, red aprendida</translation>
    </message>
    <message>
        <source>a try, design loss</source>
        <translation>un intento, pérdida de diseño</translation>
    </message>
    <message>
        <source>No try here since another valve was turned.</source>
        <translation>Sin intentos aquí desde que se giró otra válvula.</translation>
    </message>
    <message>
        <source>No try yet; expected: learned loop.</source>
        <translation>Sin intentos; esperado: red aprendida.</translation>
    </message>
    <message>
        <source>doubtful as read; read it again (Ctrl+R) or change the meter (menu Round)</source>
        <translation>dudoso; relea (Ctrl+R) o cambie de medidor (menú Ronda)</translation>
    </message>
    <message>
        <source>not read at %1 yet: read the valve here</source>
        <translation>aún sin leer en %1: lea la válvula aquí</translation>
    </message>
    <message>
        <source>Counted in other ways the aim differs by %1 % of flow: %2.</source>
        <translation>Calculada de otro modo la meta difiere en %1 % del caudal: %2.</translation>
    </message>
    <message>
        <source>Shut: %1 available.</source>
        <translation>Cerrada: %1 disponibles.</translation>
    </message>
    <message>
        <source>at the lowest setting, still too much flow, %1</source>
        <translation>en el ajuste mínimo, aún demasiado caudal, %1</translation>
    </message>
    <message>
        <source>fully open, still too little flow, %1</source>
        <translation>totalmente abierta, aún poco caudal, %1</translation>
    </message>
    <message>
        <source>Leave it: it fits the aim here. Ctrl+Enter goes to the next valve.</source>
        <translation>Déjela: aquí cumple la meta. Ctrl+Intro pasa a la válvula siguiente.</translation>
    </message>
    <message>
        <source>Leave it: it fits the aim here.</source>
        <translation>Déjela: aquí cumple la meta.</translation>
    </message>
    <message>
        <source>Leave it: it fits the aim here, and would be nearest to it at %1.</source>
        <translation>Déjela: aquí cumple la meta, y estaría más cerca de ella en %1.</translation>
    </message>
    <message>
        <source>Open it to a setting that passes water, then read it there.</source>
        <translation>Ábrala hasta un ajuste que deje pasar agua y léala allí.</translation>
    </message>
    <message>
        <source>Open it first: the aim here, %1, is above the %2 available.</source>
        <translation>Ábrala primero: la meta aquí, %1, supera los %2 disponibles.</translation>
    </message>
    <message>
        <source>Read it here: aim %1 now, %2 once all valves are set.</source>
        <translation>Léala aquí: meta %1 ahora, %2 cuando todas las válvulas estén ajustadas.</translation>
    </message>
    <message>
        <source>Read it here: aim %1 now.</source>
        <translation>Léala aquí: meta %1 ahora.</translation>
    </message>
    <message>
        <source>Turn it to %1 (Ctrl+Shift+T) and read it: aim %2 now, %3 once all valves are set.</source>
        <translation>Gírela a %1 (Ctrl+Mayús+T) y léala: meta %2 ahora, %3 cuando todas las válvulas estén ajustadas.</translation>
    </message>
    <message>
        <source>Hold it here: the scale ends. Close the valve of its riser, or fit a smaller one.</source>
        <translation>Manténgala aquí: la escala termina. Cierre la válvula de su montante o monte una menor.</translation>
    </message>
    <message>
        <source>Hold it here: it takes more as the others are closed.</source>
        <translation>Manténgala aquí: tomará más al cerrar las demás.</translation>
    </message>
    <message>
        <source>Try %1, as advised: aim %2 now, %3 once all valves are set.</source>
        <translation>Pruebe %1, como se aconseja: meta %2 ahora, %3 cuando todas las válvulas estén ajustadas.</translation>
    </message>
    <message>
        <source>Even fully open at %1 it stays below the aim: %2 expected there, aim %3. Leave it open there as the reference, and close the others.</source>
        <translation>Aun totalmente abierta en %1 queda bajo la meta: se espera %2 allí, meta %3. Déjela abierta ahí como referencia y cierre las demás.</translation>
    </message>
    <message>
        <source>Even at %1, where the scale ends, it takes too much: %2 expected there, aim %3. Close the valve of its riser, or fit a smaller one.</source>
        <translation>Aun en %1, donde termina la escala, toma demasiado: se espera %2 allí, meta %3. Cierre la válvula de su montante o monte una menor.</translation>
    </message>
    <message>
        <source>Open it to %1: the aim here, %2, is above the %3 available.</source>
        <translation>Ábrala a %1: la meta aquí, %2, supera los %3 disponibles.</translation>
    </message>
    <message>
        <source>No mark is nearer to the aim than %1: turn by less than a mark, or hold it here.</source>
        <translation>Ninguna marca está más cerca de la meta que %1: gire menos de una marca o manténgala aquí.</translation>
    </message>
    <message>
        <source>Try %1: about %2 expected there now, aim %3 (%4).</source>
        <translation>Pruebe %1: ahora se espera allí cerca de %2, meta %3 (%4).</translation>
    </message>
    <message>
        <source>A setting to try is named once it is read again.</source>
        <translation>Se propondrá un ajuste que probar cuando se lea de nuevo.</translation>
    </message>
    <message>
        <source>Turn it by the word and read it: then the setting to aim at can be told.</source>
        <translation>Gírela según la palabra y léala: entonces se podrá dar el ajuste buscado.</translation>
    </message>
    <message>
        <source>it fits: %1</source>
        <translation>cumple: %1</translation>
    </message>
    <message>
        <source>Turn it to %1 (Ctrl+Shift+T) and read it, then read a final round: it tells whether the index circuit is proved.</source>
        <translation>Gírela a %1 (Ctrl+Mayús+T) y léala; luego lea una ronda final: dice si el circuito más desfavorable queda demostrado.</translation>
    </message>
    <message>
        <source>Try %1, a first guess while the advice is not ready: aim %2 now.</source>
        <translation>Pruebe %1, una primera estimación mientras el consejo no está listo: meta %2 ahora.</translation>
    </message>
</context>
<context>
    <name>ConvergenceChart</name>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Ronda %1</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>dispersión</translation>
    </message>
    <message>
        <source>Of target, %</source>
        <translation>% del objetivo</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>Of target by round</source>
        <translation>Del objetivo por ronda</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>el mayor</translation>
    </message>
    <message>
        <source>9 of 10 below</source>
        <translation>9 de 10 bajo</translation>
    </message>
    <message>
        <source>half below</source>
        <translation>la mitad bajo</translation>
    </message>
    <message>
        <source>1 of 10 below</source>
        <translation>1 de 10 bajo</translation>
    </message>
    <message>
        <source>smallest</source>
        <translation>el menor</translation>
    </message>
    <message>
        <source>The lines in between stand in the table.</source>
        <translation>Las líneas intermedias están en la tabla.</translation>
    </message>
    <message>
        <source>%1 of %2 terminals on share in round %3.</source>
        <translation>%1 de %2 terminales en cuota en la ronda %3.</translation>
    </message>
    <message>
        <source>No share is known in round %1.</source>
        <translation>No se conoce ninguna cuota en la ronda %1.</translation>
    </message>
    <message>
        <source>Spread by round %1 %.</source>
        <translation>Dispersión por ronda %1 %.</translation>
    </message>
    <message>
        <source>%1 of %2 terminals are read.</source>
        <translation>%1 de %2 terminales están leídos.</translation>
    </message>
</context>
<context>
    <name>ImportColumn</name>
    <message>
        <source>Accuracy</source>
        <translation>Precisión</translation>
    </message>
    <message>
        <source>Accuracy, at least</source>
        <translation>Precisión, al menos</translation>
    </message>
    <message>
        <source>Accuracy, more shut</source>
        <translation>Precisión, más cerrada</translation>
    </message>
    <message>
        <source>Current, A</source>
        <translation>Corriente, A</translation>
    </message>
    <message>
        <source>Current, second phase</source>
        <translation>Corriente, segunda fase</translation>
    </message>
    <message>
        <source>Current, third phase</source>
        <translation>Corriente, tercera fase</translation>
    </message>
    <message>
        <source>Several pumps: how</source>
        <translation>Varias bombas: montaje</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Calibrado</translation>
    </message>
    <message>
        <source>Cannot be read</source>
        <translation>Sin lectura posible</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificado</translation>
    </message>
    <message>
        <source>Loss of the circuit</source>
        <translation>Pérdida del circuito</translation>
    </message>
    <message>
        <source>Corrects</source>
        <translation>Corrige</translation>
    </message>
    <message>
        <source>Design flow</source>
        <translation>Caudal de diseño</translation>
    </message>
    <message>
        <source>Discharge</source>
        <translation>Impulsión</translation>
    </message>
    <message>
        <source>Discharge bore</source>
        <translation>Diámetro de impulsión</translation>
    </message>
    <message>
        <source>Height of the discharge gauge</source>
        <translation>Altura del manómetro, impulsión</translation>
    </message>
    <message>
        <source>Before the valve</source>
        <translation>Antes de la válvula</translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation>Dudoso</translation>
    </message>
    <message>
        <source>Straight pipe behind, diameters</source>
        <translation>Tramo recto aguas abajo, diámetros</translation>
    </message>
    <message>
        <source>DP</source>
        <translation>Δp</translation>
    </message>
    <message>
        <source>Has a drive</source>
        <translation>Tiene variador</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Rendimiento</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Caudal</translation>
    </message>
    <message>
        <source>Rise on one gauge</source>
        <translation>Subida en un manómetro</translation>
    </message>
    <message>
        <source>Feeds the chiller or boiler alone</source>
        <translation>Alimenta sola la enfriadora o caldera</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Rodete</translation>
    </message>
    <message>
        <source>Smallest impeller</source>
        <translation>Rodete mínimo</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Last DP</source>
        <translation>Última Δp</translation>
    </message>
    <message>
        <source>Most DP</source>
        <translation>Δp máxima</translation>
    </message>
    <message>
        <source>Least DP</source>
        <translation>Δp mínima</translation>
    </message>
    <message>
        <source>Lowest speed</source>
        <translation>Velocidad mínima</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>Efficiency of the motor</source>
        <translation>Rendimiento del motor</translation>
    </message>
    <message>
        <source>Power of the motor</source>
        <translation>Potencia del motor</translation>
    </message>
    <message>
        <source>Current without load</source>
        <translation>Corriente en vacío</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>NPSH required</source>
        <translation>NPSH requerido</translation>
    </message>
    <message>
        <source>Reason where overdue</source>
        <translation>Motivo si venció</translation>
    </message>
    <message>
        <source>Fed by</source>
        <translation>Alimentado por</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Speed on the plate</source>
        <translation>Velocidad de placa</translation>
    </message>
    <message>
        <source>Point of the test</source>
        <translation>Punto de la prueba</translation>
    </message>
    <message>
        <source>Dealt with as</source>
        <translation>Tratado como</translation>
    </message>
    <message>
        <source>Why so</source>
        <translation>Por qué así</translation>
    </message>
    <message>
        <source>Positive displacement</source>
        <translation>Volumétrica</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>Power factor</source>
        <translation>Factor de potencia</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Rango</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Repeated</source>
        <translation>Repetido</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Resolución</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Retorno</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>Loss of the run</source>
        <translation>Pérdida del tramo</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>En marcha</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Número de serie</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Sirve a</translation>
    </message>
    <message>
        <source>Service factor</source>
        <translation>Factor de servicio</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Setting now</source>
        <translation>Ajuste actual</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Suction</source>
        <translation>Aspiración</translation>
    </message>
    <message>
        <source>Suction bore</source>
        <translation>Diámetro de aspiración</translation>
    </message>
    <message>
        <source>Height of the suction gauge</source>
        <translation>Altura del manómetro, aspiración</translation>
    </message>
    <message>
        <source>Synchronous speed</source>
        <translation>Velocidad síncrona</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Discharge valve open</source>
        <translation>Válvula de impulsión abierta</translation>
    </message>
    <message>
        <source>Tag of the discharge valve</source>
        <translation>Etiqueta de la válvula de impulsión</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Straight pipe before, diameters</source>
        <translation>Tramo recto aguas arriba, diámetros</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Válvula</translation>
    </message>
    <message>
        <source>Model of the valve</source>
        <translation>Modelo de la válvula</translation>
    </message>
    <message>
        <source>Size of the valve</source>
        <translation>Tamaño de la válvula</translation>
    </message>
    <message>
        <source>Voltage, V</source>
        <translation>Tensión, V</translation>
    </message>
    <message>
        <source>Voltage, second phase</source>
        <translation>Tensión, segunda fase</translation>
    </message>
    <message>
        <source>Voltage, third phase</source>
        <translation>Tensión, tercera fase</translation>
    </message>
    <message>
        <source>Zero at the end</source>
        <translation>Cero al final</translation>
    </message>
    <message>
        <source>Zero at the start</source>
        <translation>Cero al principio</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Answer to</source>
        <translation>Respuesta a</translation>
    </message>
    <message>
        <source>Branch</source>
        <translation>Ramal</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Pie de foto</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Closed on</source>
        <translation>Cerrada el</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Clause of the energy code</source>
        <translation>Cláusula del código energético</translation>
    </message>
    <message>
        <source>Edition of the energy code</source>
        <translation>Edición del código energético</translation>
    </message>
    <message>
        <source>Exception of the energy code</source>
        <translation>Excepción del código energético</translation>
    </message>
    <message>
        <source>Form of the clause</source>
        <translation>Forma de la cláusula</translation>
    </message>
    <message>
        <source>Cv or Kv</source>
        <translation>Cv o Kv</translation>
    </message>
    <message>
        <source>Concentration</source>
        <translation>Concentración</translation>
    </message>
    <message>
        <source>Consequence</source>
        <translation>Consecuencia</translation>
    </message>
    <message>
        <source>Content</source>
        <translation>Contenido</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Decided on</source>
        <translation>Decidida el</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Decidida por</translation>
    </message>
    <message>
        <source>Deficiency</source>
        <translation>Deficiencia</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Descripción</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Justificante</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Campo</translation>
    </message>
    <message>
        <source>Fill pressure</source>
        <translation>Presión de llenado</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Empresa</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluido</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Límite superior</translation>
    </message>
    <message>
        <source>Hours per year</source>
        <translation>Horas al año</translation>
    </message>
    <message>
        <source>Mandatory</source>
        <translation>Obligatoria</translation>
    </message>
    <message>
        <source>Resolved</source>
        <translation>Resuelto</translation>
    </message>
    <message>
        <source>Load of a year</source>
        <translation>Carga de un año</translation>
    </message>
    <message>
        <source>Location</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Límite inferior</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Matching band</source>
        <translation>Banda de equilibrado</translation>
    </message>
    <message>
        <source>Type of file</source>
        <translation>Tipo de archivo</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation>Abierta el</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Price of power</source>
        <translation>Precio de la electricidad</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Práctica</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>Raised on</source>
        <translation>Señalada el</translation>
    </message>
    <message>
        <source>Raised by</source>
        <translation>Señalada por</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Preparación</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Longest age of a reading</source>
        <translation>Antigüedad máxima de una lectura</translation>
    </message>
    <message>
        <source>Remedy</source>
        <translation>Remedio</translation>
    </message>
    <message>
        <source>Reset of the set-point</source>
        <translation>Ley de consigna</translation>
    </message>
    <message>
        <source>Resolved on</source>
        <translation>Resuelto el</translation>
    </message>
    <message>
        <source>Resolved by</source>
        <translation>Resuelto por</translation>
    </message>
    <message>
        <source>Reading of the retest</source>
        <translation>Lectura de la nueva prueba</translation>
    </message>
    <message>
        <source>Result of the retest</source>
        <translation>Resultado de la nueva prueba</translation>
    </message>
    <message>
        <source>Retested on</source>
        <translation>Probada de nuevo el</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>Seed of the sample</source>
        <translation>Número de sorteo de la muestra</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Sent on</source>
        <translation>Enviada el</translation>
    </message>
    <message>
        <source>Sent by</source>
        <translation>Enviada por</translation>
    </message>
    <message>
        <source>Set by</source>
        <translation>Fijada por</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Emplazamiento</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Subject</source>
        <translation>Asunto</translation>
    </message>
    <message>
        <source>Supersedes</source>
        <translation>Sustituye a</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>Tolerance above</source>
        <translation>Tolerancia superior</translation>
    </message>
    <message>
        <source>Tolerance below</source>
        <translation>Tolerancia inferior</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Oficio</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Table of settings</source>
        <translation>Tabla de ajustes</translation>
    </message>
    <message>
        <source>Zero</source>
        <translation>Cero</translation>
    </message>
    <message>
        <source>Earlier design flows</source>
        <translation>Caudales de diseño anteriores</translation>
    </message>
</context>
<context>
    <name>ImportSource</name>
    <message>
        <source>the clipboard</source>
        <translation>el portapapeles</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>A imbalance</source>
        <translation>Desequilibrio A</translation>
    </message>
    <message>
        <source>A of plate</source>
        <translation>A de placa</translation>
    </message>
    <message>
        <source>A of plate × SF</source>
        <translation>A de placa × FS</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Al año</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Sobre</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Precisión</translation>
    </message>
    <message>
        <source>Adds to flow ±</source>
        <translation>Añade al caudal ±</translation>
    </message>
    <message>
        <source>Again over reported</source>
        <translation>Releído / informado</translation>
    </message>
    <message>
        <source>Amp ratio</source>
        <translation>Relación de corriente</translation>
    </message>
    <message>
        <source>At design flow</source>
        <translation>A caudal de diseño</translation>
    </message>
    <message>
        <source>At full speed</source>
        <translation>A plena velocidad</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Al menos</translation>
    </message>
    <message>
        <source>Balancing devices and straight pipe</source>
        <translation>Dispositivos de equilibrado y tramos rectos</translation>
    </message>
    <message>
        <source>Balancing valves</source>
        <translation>Válvulas de equilibrado</translation>
    </message>
    <message>
        <source>Before a shutoff test</source>
        <translation>Antes de una prueba a caudal nulo</translation>
    </message>
    <message>
        <source>By meter</source>
        <translation>Por caudalímetro</translation>
    </message>
    <message>
        <source>By terminals</source>
        <translation>Por terminales</translation>
    </message>
    <message>
        <source>By the law</source>
        <translation>Según la ley</translation>
    </message>
    <message>
        <source>CHANGED OR BROKEN</source>
        <translation>CAMBIADO O DAÑADO</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Calibrado</translation>
    </message>
    <message>
        <source>Caution: electrical measurements, drives and work on pumps are for qualified people under the local codes, with the supply isolated and locked off and the pressure let down. Check the motor&apos;s rating and least speed first.</source>
        <translation>Precaución: las mediciones eléctricas, los variadores y el trabajo en bombas son para personal cualificado según las normas locales, con la alimentación aislada y bloqueada y la presión descargada. Compruebe antes el régimen y la velocidad mínima del motor.</translation>
    </message>
    <message>
        <source>Caution: the affinity laws are a first estimate, for a loop without static head. A full trim by them tends to cut too much; common practice cuts 70 to 80 % of it, tests, and cuts again. Check the least impeller of the casing before any cut: it cannot be taken back.</source>
        <translation>Precaución: las leyes de afinidad son una primera estimación, para una red sin altura estática. Un recorte completo según ellas suele quitar de más; lo habitual es recortar del 70 al 80 %, probar y volver a recortar. Compruebe el rodete mínimo de la carcasa antes de recortar: no tiene vuelta atrás.</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificado</translation>
    </message>
    <message>
        <source>Check with your PDF viewer&apos;s signature panel.</source>
        <translation>Compruébelo con el panel de firmas de su visor de PDF.</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Elegida</translation>
    </message>
    <message>
        <source>Circuits in walking order</source>
        <translation>Circuitos en orden de recorrido</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Cerrada</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Coefficient there</source>
        <translation>Coeficiente allí</translation>
    </message>
    <message>
        <source>Confirmed: {1} of {2} terminals within 10 % of what was reported</source>
        <translation>Confirmado: {1} de {2} terminales dentro del 10 % de lo informado</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>Coste al año</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Se toma</translation>
    </message>
    <message>
        <source>Curve range</source>
        <translation>Rango de la curva</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Dealt with as</source>
        <translation>Tratado como</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Decidida por</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Decisión</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Deficiencias</translation>
    </message>
    <message>
        <source>Deficiency {1}: {2}</source>
        <translation>Deficiencia {1}: {2}</translation>
    </message>
    <message>
        <source>Design</source>
        <translation>Diseño</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Dispositivo</translation>
    </message>
    <message>
        <source>Discharge</source>
        <translation>Impulsión</translation>
    </message>
    <message>
        <source>Dp left across each valve at design flow</source>
        <translation>Δp que queda en cada válvula a caudal de diseño</translation>
    </message>
    <message>
        <source>Dp left by read-and-set and by a proportional balance</source>
        <translation>Δp que dejan leer y ajustar y un equilibrado proporcional</translation>
    </message>
    <message>
        <source>Dp set-point of the drive</source>
        <translation>Consigna de Δp del variador</translation>
    </message>
    <message>
        <source>Dp there</source>
        <translation>Δp allí</translation>
    </message>
    <message>
        <source>Draft until signed: nobody has signed this report.</source>
        <translation>Borrador hasta su firma: nadie ha firmado este informe.</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Punto de trabajo</translation>
    </message>
    <message>
        <source>Duty of each pump by round</source>
        <translation>Punto de trabajo de cada bomba por ronda</translation>
    </message>
    <message>
        <source>Duty {1} {2} at {3} {4}; {5} % of design.</source>
        <translation>Punto de trabajo {1} {2} a {3} {4}; {5} % del diseño.</translation>
    </message>
    <message>
        <source>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}</source>
        <translation>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}</translation>
    </message>
    <message>
        <source>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}: below the least impeller of {5}, so trimming alone cannot do it</source>
        <translation>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}: por debajo del rodete mínimo de {5}, así que recortar solo no basta</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Rendimiento</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Eléctrico</translation>
    </message>
    <message>
        <source>Element</source>
        <translation>Elemento</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Cota</translation>
    </message>
    <message>
        <source>Energy a year</source>
        <translation>Energía al año</translation>
    </message>
    <message>
        <source>Energy code: balancing</source>
        <translation>Código energético: equilibrado</translation>
    </message>
    <message>
        <source>Energy of the slowed pump: its drive holds {1} at the sensor while the flow goes down; the others ride their curves.</source>
        <translation>Energía de la bomba a menor velocidad: su variador mantiene {1} en el sensor mientras baja el caudal; las demás siguen sus curvas.</translation>
    </message>
    <message>
        <source>Every reading as typed</source>
        <translation>Cada lectura como se tecleó</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Justificante</translation>
    </message>
    <message>
        <source>Exception</source>
        <translation>Excepción</translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation>Excepciones</translation>
    </message>
    <message>
        <source>Excess head</source>
        <translation>Altura sobrante</translation>
    </message>
    <message>
        <source>Excess head and what to do about it</source>
        <translation>Altura sobrante y qué hacer con ella</translation>
    </message>
    <message>
        <source>Excess power</source>
        <translation>Potencia sobrante</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Final round</source>
        <translation>Ronda final</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Empresa</translation>
    </message>
    <message>
        <source>First cut</source>
        <translation>Primer recorte</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Caudal</translation>
    </message>
    <message>
        <source>Flow before rebalancing</source>
        <translation>Caudal antes de reequilibrar</translation>
    </message>
    <message>
        <source>Flow by curve</source>
        <translation>Caudal por curva</translation>
    </message>
    <message>
        <source>Flow by every way, and duty</source>
        <translation>Caudal por cada método, y punto de trabajo</translation>
    </message>
    <message>
        <source>Flow off</source>
        <translation>Desvío de caudal</translation>
    </message>
    <message>
        <source>Flow {1} to {2} % of design; share within ± {3} % of the target share</source>
        <translation>Caudal de {1} a {2} % del diseño; cuota dentro de ± {3} % de la cuota objetivo</translation>
    </message>
    <message>
        <source>Flow {1}, head {2}; readings keep the unit in which they were typed</source>
        <translation>Caudal {1}, altura {2}; las lecturas conservan la unidad en que se teclearon</translation>
    </message>
    <message>
        <source>Flow, curve</source>
        <translation>Caudal, curva</translation>
    </message>
    <message>
        <source>Flow, read</source>
        <translation>Caudal, leído</translation>
    </message>
    <message>
        <source>Flow, sum</source>
        <translation>Caudal, suma</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluido</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>Found by</source>
        <translation>Hallada por</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>From the dp across each valve and its table: Q = Kv √(dp / SG), m³/h and bar, or Cv with gpm and psi (IEC 60534-2-1); SG = density over 999.0 kg/m³</source>
        <translation>De la Δp en cada válvula y su tabla: Q = Kv √(dp / SG), m³/h y bar, o Cv con gpm y psi (IEC 60534-2-1); SG = densidad entre 999.0 kg/m³</translation>
    </message>
    <message>
        <source>Fully open</source>
        <translation>Totalmente abierta</translation>
    </message>
    <message>
        <source>Gauge pressure behind each element, in the direction of flow</source>
        <translation>Presión manométrica tras cada elemento, en sentido del flujo</translation>
    </message>
    <message>
        <source>Gauge pressure round the circuit, pump on and off</source>
        <translation>Presión manométrica en el circuito, bomba en marcha y parada</translation>
    </message>
    <message>
        <source>Gauge zero</source>
        <translation>Cero de manómetros</translation>
    </message>
    <message>
        <source>Gauges and motor readings are for qualified people; lock-out, local codes and the plant&apos;s rules come first. Trimming and drives are for the maker or licensed firms.</source>
        <translation>Los manómetros y las lecturas del motor son para personal cualificado; el bloqueo, las normas locales y las reglas de la instalación van primero. El recorte y los variadores son para el fabricante o empresas autorizadas.</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Head and its parts</source>
        <translation>La altura y sus componentes</translation>
    </message>
    <message>
        <source>Head by the option</source>
        <translation>Altura según la opción</translation>
    </message>
    <message>
        <source>Head off</source>
        <translation>Desvío de altura</translation>
    </message>
    <message>
        <source>Head that the index circuit needs at design flow</source>
        <translation>Altura que necesita el circuito más desfavorable a caudal de diseño</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Rodete</translation>
    </message>
    <message>
        <source>Index circuit</source>
        <translation>Circuito más desfavorable</translation>
    </message>
    <message>
        <source>Index path</source>
        <translation>Camino más desfavorable</translation>
    </message>
    <message>
        <source>Index terminal {1} has no setting on record: not shown to be fully open</source>
        <translation>El terminal más desfavorable {1} no tiene ajuste anotado: no consta que esté totalmente abierto</translation>
    </message>
    <message>
        <source>Index valve</source>
        <translation>Válvula más desfavorable</translation>
    </message>
    <message>
        <source>Index valve ended fully open and its dp is readable: the circuit that governs the pump head is not throttled.</source>
        <translation>La válvula más desfavorable acabó totalmente abierta y su Δp es legible: el circuito que fija la altura de la bomba no está estrangulado.</translation>
    </message>
    <message>
        <source>Index valve {1} at {2} of {3}: fully open</source>
        <translation>Válvula más desfavorable {1} en {2} de {3}: totalmente abierta</translation>
    </message>
    <message>
        <source>Index valve {1} at {2} of {3}: not fully open</source>
        <translation>Válvula más desfavorable {1} en {2} de {3}: no totalmente abierta</translation>
    </message>
    <message>
        <source>Input power</source>
        <translation>Potencia absorbida</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Keeping it</source>
        <translation>Conservarlo</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Largest minus smallest of target in any group: {1} %</source>
        <translation>Mayor menos menor del objetivo en cualquier grupo: {1} %</translation>
    </message>
    <message>
        <source>Largest minus smallest of target in any group: {1} %, from {2} % in round {3}</source>
        <translation>Mayor menos menor del objetivo en cualquier grupo: {1} %, desde {2} % en la ronda {3}</translation>
    </message>
    <message>
        <source>Least dp</source>
        <translation>Δp mínima</translation>
    </message>
    <message>
        <source>Least throttling</source>
        <translation>Menor estrangulación</translation>
    </message>
    <message>
        <source>Left to throttle</source>
        <translation>Queda por estrangular</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>La más baja</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Method, tolerances and instruments</source>
        <translation>Método, tolerancias e instrumentos</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Falta</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Must hold</source>
        <translation>Obligatoria</translation>
    </message>
    <message>
        <source>NPSH available is {1} and required {2}, a margin below {3}; raise the fill pressure or lower the temperature before the pump is damaged</source>
        <translation>el NPSH disponible es {1} y el requerido {2}, margen menor de {3}; suba la presión de llenado o baje la temperatura antes de que la bomba se dañe</translation>
    </message>
    <message>
        <source>NPSH required</source>
        <translation>NPSH requerido</translation>
    </message>
    <message>
        <source>NPSH required may rise after a trim; check the margin at the suction again</source>
        <translation>el NPSH requerido puede subir tras un recorte; compruebe otra vez el margen en la aspiración</translation>
    </message>
    <message>
        <source>NPSH there</source>
        <translation>NPSH disponible</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>New setting</source>
        <translation>Nuevo ajuste</translation>
    </message>
    <message>
        <source>No branch is on record.</source>
        <translation>No consta ningún ramal.</translation>
    </message>
    <message>
        <source>No decision can be made yet; see what is missing below, and enter it.</source>
        <translation>Aún no se puede decidir; vea abajo lo que falta e introdúzcalo.</translation>
    </message>
    <message>
        <source>No deficiency is on record.</source>
        <translation>No consta ninguna deficiencia.</translation>
    </message>
    <message>
        <source>No dp set-point is on record; enter one where a drive follows a dp sensor.</source>
        <translation>No consta ninguna consigna de Δp; introduzca una donde un variador siga a un sensor de Δp.</translation>
    </message>
    <message>
        <source>No duty known: pump curve, pump readings or branch flows are missing</source>
        <translation>Punto de trabajo desconocido: faltan curva, lecturas de bomba o caudales de ramales</translation>
    </message>
    <message>
        <source>No finding, doubtful reading, correction or overdue instrument.</source>
        <translation>Ninguna observación, lectura dudosa, corrección ni instrumento vencido.</translation>
    </message>
    <message>
        <source>No instrument is on record.</source>
        <translation>No consta ningún instrumento.</translation>
    </message>
    <message>
        <source>No list of readiness is on record.</source>
        <translation>No consta ninguna lista de preparación.</translation>
    </message>
    <message>
        <source>No other</source>
        <translation>Ningún otro</translation>
    </message>
    <message>
        <source>No other terminal is fully open with less of its design flow</source>
        <translation>Ningún otro terminal está totalmente abierto con menos de su caudal de diseño</translation>
    </message>
    <message>
        <source>No pump is on record.</source>
        <translation>No consta ninguna bomba.</translation>
    </message>
    <message>
        <source>No reading is on record.</source>
        <translation>No consta ninguna lectura.</translation>
    </message>
    <message>
        <source>No round of readings has been walked yet</source>
        <translation>Aún no se ha recorrido ninguna ronda de lecturas</translation>
    </message>
    <message>
        <source>No witness round is on record.</source>
        <translation>No consta ninguna ronda testigo.</translation>
    </message>
    <message>
        <source>No-load A</source>
        <translation>A en vacío</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Nobody is on record</source>
        <translation>No consta nadie</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Not confirmed: {1} of {2} terminals within 10 % of what was reported</source>
        <translation>No confirmado: {1} de {2} terminales dentro del 10 % de lo informado</translation>
    </message>
    <message>
        <source>Not known: not every terminal has been read; design {1} {2}</source>
        <translation>Desconocido: no se leyeron todos los terminales; diseño {1} {2}</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Of best flow</source>
        <translation>Del caudal óptimo</translation>
    </message>
    <message>
        <source>Of design</source>
        <translation>Del diseño</translation>
    </message>
    <message>
        <source>Of design flow</source>
        <translation>Del caudal de diseño</translation>
    </message>
    <message>
        <source>Of target</source>
        <translation>Del objetivo</translation>
    </message>
    <message>
        <source>Of target by round</source>
        <translation>Del objetivo por ronda</translation>
    </message>
    <message>
        <source>Of target by round, in percent</source>
        <translation>Del objetivo por ronda, en por ciento</translation>
    </message>
    <message>
        <source>On share</source>
        <translation>En cuota</translation>
    </message>
    <message>
        <source>One-line diagram</source>
        <translation>Esquema unifilar</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Opción</translation>
    </message>
    <message>
        <source>Or impeller</source>
        <translation>O rodete</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Path</source>
        <translation>Camino</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Phases, load and suction</source>
        <translation>Fases, carga y aspiración</translation>
    </message>
    <message>
        <source>Pipe before / needs</source>
        <translation>Recto aguas arriba / pide</translation>
    </message>
    <message>
        <source>Pipe behind / needs</source>
        <translation>Recto aguas abajo / pide</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Presión</translation>
    </message>
    <message>
        <source>Pressure along the circuit of {1}</source>
        <translation>Presión a lo largo del circuito de {1}</translation>
    </message>
    <message>
        <source>Proportional</source>
        <translation>Proporcional</translation>
    </message>
    <message>
        <source>Proportional balance: in each group of branches the one with the lowest flow over design flow is the reference and its valve stays fully open; the others are set to the same proportion, group by group, and the pump then brings the total to design</source>
        <translation>Equilibrado proporcional: en cada grupo de ramales, el de menor caudal sobre caudal de diseño es la referencia y su válvula queda totalmente abierta; los demás se ajustan a la misma proporción, grupo a grupo, y la bomba lleva después el total a diseño</translation>
    </message>
    <message>
        <source>Proposed remedy</source>
        <translation>Remedio propuesto</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>Pump and system</source>
        <translation>Bomba y sistema</translation>
    </message>
    <message>
        <source>Pump curve and system curves</source>
        <translation>Curva de la bomba y curvas del sistema</translation>
    </message>
    <message>
        <source>Pump off</source>
        <translation>Bomba parada</translation>
    </message>
    <message>
        <source>Pump on</source>
        <translation>Bomba en marcha</translation>
    </message>
    <message>
        <source>Pump test, {1}</source>
        <translation>Prueba de bomba, {1}</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Rango</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leídos</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Releído</translation>
    </message>
    <message>
        <source>Read-and-set</source>
        <translation>Leer y ajustar</translation>
    </message>
    <message>
        <source>Read-and-set against proportional</source>
        <translation>Leer y ajustar frente a proporcional</translation>
    </message>
    <message>
        <source>Read-and-set leaves {1} across {2}, a proportional balance with the pump reduced leaves {3}.</source>
        <translation>Leer y ajustar deja {1} en {2}, un equilibrado proporcional con la bomba reducida deja {3}.</translation>
    </message>
    <message>
        <source>Readable dp</source>
        <translation>Δp legible</translation>
    </message>
    <message>
        <source>Readiness before the survey</source>
        <translation>Preparación antes del levantamiento</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Readings at branches</source>
        <translation>Lecturas en ramales</translation>
    </message>
    <message>
        <source>Readings at pumps</source>
        <translation>Lecturas en bombas</translation>
    </message>
    <message>
        <source>Readings taken</source>
        <translation>Lecturas hechas</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Reported</source>
        <translation>Informado</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Variación</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation>Rev.</translation>
    </message>
    <message>
        <source>Review and revisions</source>
        <translation>Revisión y revisiones</translation>
    </message>
    <message>
        <source>Reviewed and accepted</source>
        <translation>Revisado y aceptado</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Subida</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>Round {1}</source>
        <translation>Ronda {1}</translation>
    </message>
    <message>
        <source>Round {1} began before the list was done: {2}</source>
        <translation>La ronda {1} empezó antes de acabar la lista: {2}</translation>
    </message>
    <message>
        <source>Round {1} read again what round {2} had reported</source>
        <translation>La ronda {1} releyó lo que informó la ronda {2}</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rondas</translation>
    </message>
    <message>
        <source>Rounds and who decided on them</source>
        <translation>Rondas y quién decidió sobre ellas</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Sent by</source>
        <translation>Enviada por</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Serie</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Sirve a</translation>
    </message>
    <message>
        <source>Set-point</source>
        <translation>Consigna</translation>
    </message>
    <message>
        <source>Set-point over flow, sensor {1}</source>
        <translation>Consigna según caudal, sensor {1}</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Setting now</source>
        <translation>Ajuste actual</translation>
    </message>
    <message>
        <source>Shaft power</source>
        <translation>Potencia en el eje</translation>
    </message>
    <message>
        <source>Shaft power by every method the readings allow</source>
        <translation>Potencia en el eje por cada método que permiten las lecturas</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Cuota</translation>
    </message>
    <message>
        <source>Share: a branch&apos;s flow over the sum of the terminals. Target share: the same of the design flows. Of target: share over target share. Of design: flow over design flow. Spread: largest minus smallest of target in a group.</source>
        <translation>Cuota: caudal de un ramal sobre la suma de los terminales. Cuota objetivo: lo mismo con los caudales de diseño. Del objetivo: cuota sobre cuota objetivo. Del diseño: caudal sobre caudal de diseño. Dispersión: mayor menos menor del objetivo en un grupo.</translation>
    </message>
    <message>
        <source>Shares</source>
        <translation>Cuotas</translation>
    </message>
    <message>
        <source>Shares by round</source>
        <translation>Cuotas por ronda</translation>
    </message>
    <message>
        <source>Shutoff test</source>
        <translation>Prueba a caudal nulo</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Signatures so far</source>
        <translation>Firmas hasta ahora</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Slip</source>
        <translation>Deslizamiento</translation>
    </message>
    <message>
        <source>Solved flow</source>
        <translation>Caudal calculado</translation>
    </message>
    <message>
        <source>Solved head</source>
        <translation>Altura calculada</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Dispersión</translation>
    </message>
    <message>
        <source>Spread by round: {1}. On share by round: {2} of {3} terminals.</source>
        <translation>Dispersión por ronda: {1}. En cuota por ronda: {2} de {3} terminales.</translation>
    </message>
    <message>
        <source>Standard uncertainties, combined as root of squares (JCGM 100:2008) from instrument, its floor, last digit, valve table and setting; a result whose uncertainty spans a limit is called undecidable</source>
        <translation>Incertidumbres típicas, combinadas como raíz de cuadrados (JCGM 100:2008), del instrumento, su mínimo, la última cifra, la tabla de la válvula y el ajuste; un resultado cuya incertidumbre cruza un límite se llama indecidible</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Suction</source>
        <translation>Aspiración</translation>
    </message>
    <message>
        <source>Supply and return are drawn as one pipe. Beside each valve stand its tag, the shape of its state, its percent of target and its setting; the filled part of a valve shows how far it is open. The index circuit is a double line.</source>
        <translation>Impulsión y retorno se dibujan como un solo tubo. Junto a cada válvula están su etiqueta, el signo de su estado, su por ciento del objetivo y su ajuste; la parte rellena de una válvula muestra cuánto está abierta. El circuito más desfavorable es una línea doble.</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>That is {1} from {2} rpm</source>
        <translation>Eso es {1} en lugar de {2} rpm</translation>
    </message>
    <message>
        <source>The duty is not known, so the figure shows what is on record.</source>
        <translation>El punto de trabajo se desconoce, así que la figura muestra lo que consta.</translation>
    </message>
    <message>
        <source>The index circuit from the pump outward</source>
        <translation>El circuito más desfavorable desde la bomba</translation>
    </message>
    <message>
        <source>The index circuit is not known from these readings</source>
        <translation>El circuito más desfavorable no se conoce por estas lecturas</translation>
    </message>
    <message>
        <source>The loop in the final round</source>
        <translation>La red en la ronda final</translation>
    </message>
    <message>
        <source>The same options, each confirmed by a solve of the whole loop</source>
        <translation>Las mismas opciones, cada una confirmada calculando toda la red</translation>
    </message>
    <message>
        <source>The sample holds the index terminal and those with the highest and the lowest of design, at least one of every group, and others drawn by chance with the seed {1}; the same seed gives the same sample. Confirmed: at most one in ten deviates by more than 10 % (common practice).</source>
        <translation>La muestra contiene el terminal más desfavorable y los de mayor y menor valor del diseño, al menos uno de cada grupo, y otros sorteados con el número {1}; el mismo número da la misma muestra. Confirmado: como mucho uno de cada diez se desvía más del 10 % (práctica común).</translation>
    </message>
    <message>
        <source>The unit of {1} stands at {2} with the pump on and at {3} with it off.</source>
        <translation>La unidad de {1} está a {2} con la bomba en marcha y a {3} parada.</translation>
    </message>
    <message>
        <source>This is revision {1}; it supersedes revision {2}.</source>
        <translation>Esta es la revisión {1}; sustituye a la revisión {2}.</translation>
    </message>
    <message>
        <source>This is revision {1}; nothing was signed before.</source>
        <translation>Esta es la revisión {1}; antes no se firmó nada.</translation>
    </message>
    <message>
        <source>This report states what was read with the instruments listed, on the dates shown, and what follows from it by the method of section {1}. It says nothing of plant that was not measured.</source>
        <translation>Este informe dice lo que se leyó con los instrumentos listados, en las fechas indicadas, y lo que se sigue de ello por el método de la sección {1}. No dice nada de lo que no se midió.</translation>
    </message>
    <message>
        <source>This test is no legal advice; the authority having jurisdiction decides.</source>
        <translation>Esta prueba no es asesoramiento legal; decide la autoridad competente.</translation>
    </message>
    <message>
        <source>Throttle</source>
        <translation>Estrangulación</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Tolerances</source>
        <translation>Tolerancias</translation>
    </message>
    <message>
        <source>Total flow</source>
        <translation>Caudal total</translation>
    </message>
    <message>
        <source>Total head</source>
        <translation>Altura total</translation>
    </message>
    <message>
        <source>Total head = pressure + gauge zero + elevation + velocity head, in the flowing fluid. Flow that counts: meter, else sum of the terminals, else curve.</source>
        <translation>Altura total = presión + cero de manómetros + cota + altura de velocidad, en el fluido que circula. Caudal que se toma: caudalímetro, si no suma de terminales, si no curva.</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Oficio</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertidumbre</translation>
    </message>
    <message>
        <source>Unfinished: {1} of {2} terminals not read again</source>
        <translation>Sin terminar: {1} de {2} terminales sin releer</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>V imbalance</source>
        <translation>Desequilibrio V</translation>
    </message>
    <message>
        <source>V of plate</source>
        <translation>V de placa</translation>
    </message>
    <message>
        <source>V, A, PF</source>
        <translation>V, A, cos φ</translation>
    </message>
    <message>
        <source>Valve on return, pump on</source>
        <translation>Válvula en retorno, bomba en marcha</translation>
    </message>
    <message>
        <source>Valve on supply, pump on</source>
        <translation>Válvula en impulsión, bomba en marcha</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Dictamen</translation>
    </message>
    <message>
        <source>Wasted</source>
        <translation>Desperdicio</translation>
    </message>
    <message>
        <source>Water at {1}, density {2} kg/m³</source>
        <translation>Agua a {1}, densidad {2} kg/m³</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>What a reader should know</source>
        <translation>Lo que el lector debe saber</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Lo que falta</translation>
    </message>
    <message>
        <source>What is wrong, what follows</source>
        <translation>Qué está mal, qué se sigue</translation>
    </message>
    <message>
        <source>What must hold before a survey</source>
        <translation>Lo que debe cumplirse antes de un levantamiento</translation>
    </message>
    <message>
        <source>What the balancer cannot mend</source>
        <translation>Lo que el equilibrado no puede corregir</translation>
    </message>
    <message>
        <source>What the change does</source>
        <translation>Lo que hace el cambio</translation>
    </message>
    <message>
        <source>Wire to water</source>
        <translation>Rendimiento global</translation>
    </message>
    <message>
        <source>Within 10 %</source>
        <translation>Dentro del 10 %</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>Dentro de límites</translation>
    </message>
    <message>
        <source>Witness sample</source>
        <translation>Muestra testigo</translation>
    </message>
    <message>
        <source>Zero</source>
        <translation>Cero</translation>
    </message>
    <message>
        <source>Zero check</source>
        <translation>Control del cero</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; can be read two ways; write it without a thousands mark and with a point</source>
        <translation>«{1}» se puede leer de dos formas; escríbalo sin separador de miles y con punto</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; cannot be read as a picture; choose a JPEG or PNG file</source>
        <translation>«{1}» no se puede leer como imagen; elija un archivo JPEG o PNG</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; differs from the first row of this valve, which says &quot;{2}&quot;; make them alike</source>
        <translation>«{1}» difiere de la primera fila de esta válvula, que dice «{2}»; hágalas iguales</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; does not name a practice building; open the job with the version that made it</source>
        <translation>«{1}» no nombra ningún edificio de práctica; abra la obra con la versión que la creó</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; has more than 15 digits; shorten it to what was read</source>
        <translation>«{1}» tiene más de 15 cifras; acórtelo a lo leído</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is empty or the tag of another pump; type another tag</source>
        <translation>«{1}» está vacío o es la etiqueta de otra bomba; escriba otra etiqueta</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a date or time; write it as 2026-03-04 or 2026-03-04T14:02</source>
        <translation>«{1}» no es una fecha ni una hora; escríbala como 2026-03-04 o 2026-03-04T14:02</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a date; write it as 2027-03-31</source>
        <translation>«{1}» no es una fecha; escríbala como 2027-03-31</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a number; use digits with one point or comma</source>
        <translation>«{1}» no es un número; use cifras con un punto o una coma</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit that the column &quot;{2}&quot; can have; use one of {3}</source>
        <translation>«{1}» no es una unidad para la columna «{2}»; use una de {3}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a whole number from 1 to {2}; correct it</source>
        <translation>«{1}» no es un número entero de 1 a {2}; corríjalo</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not among the people of this job as supervisor or engineer; give the role on the place Job</source>
        <translation>«{1}» no está entre las personas de esta obra como supervisor o ingeniero; dé la función en Obra</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not known here; use one of {2}</source>
        <translation>«{1}» no se conoce aquí; use uno de {2}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not known; write it as in {2}, or add it there</source>
        <translation>«{1}» no se conoce; escríbalo como en {2}, o añádalo allí</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; lets a survey begin before the loop is ready, but no supervisor or engineer of this job says so; write name, colon, reason</source>
        <translation>«{1}» deja empezar un levantamiento antes de que la red esté lista, pero ningún supervisor o ingeniero de esta obra lo dice; escriba nombre, dos puntos, motivo</translation>
    </message>
    <message>
        <source>a balance by hand valves is right at one flow only: when far circuits close, near ones take less than design; let the control valves do the rest and hold as little dp as the worst circuit needs</source>
        <translation>un equilibrado con válvulas manuales solo vale a un caudal: cuando cierran circuitos lejanos, los cercanos reciben menos que el diseño; deje el resto a las válvulas de control y mantenga la menor Δp que necesite el circuito más desfavorable</translation>
    </message>
    <message>
        <source>a branch needs a tag; type one, such as B-05</source>
        <translation>un ramal necesita una etiqueta; escriba una, por ejemplo B-05</translation>
    </message>
    <message>
        <source>a branch to be changed is not in the job; choose one of its branches</source>
        <translation>un ramal que se va a cambiar no está en la obra; elija uno de sus ramales</translation>
    </message>
    <message>
        <source>a branch without branches of its own needs its design flow; give it</source>
        <translation>un ramal sin ramales propios necesita su caudal de diseño; delo</translation>
    </message>
    <message>
        <source>a certificate needs a name of 1 to 64 characters; type the name of the person</source>
        <translation>un certificado necesita un nombre de 1 a 64 caracteres; escriba el nombre de la persona</translation>
    </message>
    <message>
        <source>a change was interrupted and must be taken back before reading, but the folder cannot be written; copy the file and the one ending in -journal to a place of your own and open it there</source>
        <translation>un cambio se interrumpió y hay que retirarlo antes de leer, pero no se puede escribir en la carpeta; copie el archivo y el que acaba en -journal a un lugar propio y ábralo allí</translation>
    </message>
    <message>
        <source>a closed-valve dp was read where the valve is open; record it at the setting it was read at</source>
        <translation>se leyó una Δp de válvula cerrada donde la válvula está abierta; anótela con el ajuste en que se leyó</translation>
    </message>
    <message>
        <source>a comment stays as it was written; write an answer to it instead</source>
        <translation>un comentario queda como se escribió; escriba en su lugar una respuesta</translation>
    </message>
    <message>
        <source>a comment without words says nothing; write it</source>
        <translation>un comentario sin palabras no dice nada; escríbalo</translation>
    </message>
    <message>
        <source>a dp is given for a branch whose valve has no table; give its valve in branches.csv</source>
        <translation>se da una Δp para un ramal cuya válvula no tiene tabla; dé su válvula en branches.csv</translation>
    </message>
    <message>
        <source>a dp was read, but no usable valve table is known; give the valve&apos;s table or the flow</source>
        <translation>se leyó una Δp, pero no se conoce ninguna tabla de válvula útil; dé la tabla de la válvula o el caudal</translation>
    </message>
    <message>
        <source>a drive feeds the motor, so volts and amps behind it are no measure of power; read the power on the drive&apos;s display</source>
        <translation>un variador alimenta el motor, así que tensión y corriente tras él no miden la potencia; lea la potencia en la pantalla del variador</translation>
    </message>
    <message>
        <source>a file of this name is there already; choose another name</source>
        <translation>ya hay un archivo con este nombre; elija otro nombre</translation>
    </message>
    <message>
        <source>a file stands at {1} and is not overwritten; give the key another name</source>
        <translation>hay un archivo en {1} y no se sobrescribe; dé otro nombre a la clave</translation>
    </message>
    <message>
        <source>a flow of {1} was typed in although its valve has a table; read its dp, or give the reason</source>
        <translation>se tecleó un caudal de {1} aunque su válvula tiene tabla; lea su Δp o dé el motivo</translation>
    </message>
    <message>
        <source>a flow or the dp of an open valve was read where the valve is shut; record it as a closed-valve reading</source>
        <translation>se leyó un caudal o la Δp de una válvula abierta donde la válvula está cerrada; anótelo como lectura con válvula cerrada</translation>
    </message>
    <message>
        <source>a job needs a name; type one</source>
        <translation>una obra necesita un nombre; escriba uno</translation>
    </message>
    <message>
        <source>a key with a self-made certificate is in {1}; keep its passphrase, nobody can find it</source>
        <translation>en {1} hay una clave con certificado propio; guarde su contraseña, nadie puede recuperarla</translation>
    </message>
    <message>
        <source>a later revision changed more than its own signature ({1}); do not rely on this file, ask for it again</source>
        <translation>una revisión posterior cambió más que su propia firma ({1}); no se fíe de este archivo, pídalo otra vez</translation>
    </message>
    <message>
        <source>a line of readiness has no words; type them, or remove the line</source>
        <translation>una línea de preparación no tiene palabras; escríbalas o quite la línea</translation>
    </message>
    <message>
        <source>a name is missing; type one, or press Esc</source>
        <translation>falta un nombre; escriba uno o pulse Esc</translation>
    </message>
    <message>
        <source>a quotation mark is opened and never closed; add the closing one</source>
        <translation>unas comillas se abren y nunca se cierran; añada las de cierre</translation>
    </message>
    <message>
        <source>a reading at setting {1} is outside the valve&apos;s table and is left out of the learning; correct the setting</source>
        <translation>una lectura con ajuste {1} está fuera de la tabla de la válvula y no entra en el aprendizaje; corrija el ajuste</translation>
    </message>
    <message>
        <source>a reading of this valve does not fit the others; read it again as it stands</source>
        <translation>una lectura de esta válvula no casa con las demás; reléala como está</translation>
    </message>
    <message>
        <source>a round read at the settings that stand has every share within the band; nothing is left to turn</source>
        <translation>una ronda leída con los ajustes actuales tiene cada cuota en la banda; no queda nada por girar</translation>
    </message>
    <message>
        <source>a row needs {1}; type it, or take the whole row out with its button</source>
        <translation>una fila necesita {1}; escríbalo, o quite la fila entera con su botón</translation>
    </message>
    <message>
        <source>a row without setting stands for a valve that has a range of dp and no table, and this valve has more rows; give setting and coefficient in each or take the row out</source>
        <translation>una fila sin ajuste representa una válvula con rango de Δp y sin tabla, y esta válvula tiene más filas; dé ajuste y coeficiente en cada una o quite la fila</translation>
    </message>
    <message>
        <source>a setting is given but no valve with a table; give valve_model and valve_size</source>
        <translation>se da un ajuste pero ninguna válvula con tabla; dé valve_model y valve_size</translation>
    </message>
    <message>
        <source>a signature that was there has been taken out; do not rely on this file, ask for it again</source>
        <translation>se quitó una firma que había; no se fíe de este archivo, pídalo otra vez</translation>
    </message>
    <message>
        <source>a signed report stands there and would be lost; give the report another name</source>
        <translation>allí hay un informe firmado y se perdería; dé otro nombre al informe</translation>
    </message>
    <message>
        <source>a sound copy of this job lies beside it, with {1} records, the newest of {2}; open that one</source>
        <translation>al lado hay una copia sana de esta obra, con {1} registros, el último del {2}; ábrala</translation>
    </message>
    <message>
        <source>a trim cannot be taken back; make sure that no more circuits will be added, and let the pump&apos;s maker or a licensed shop do it</source>
        <translation>un recorte no tiene vuelta atrás; asegúrese de que no se añadirán más circuitos, y que lo haga el fabricante de la bomba o un taller autorizado</translation>
    </message>
    <message>
        <source>a whole copy is at {1}; work goes on in the first file</source>
        <translation>hay una copia completa en {1}; el trabajo sigue en el primer archivo</translation>
    </message>
    <message>
        <source>a workbook cannot be copied onto itself; choose another name</source>
        <translation>un libro no se puede copiar sobre sí mismo; elija otro nombre</translation>
    </message>
    <message>
        <source>a workbook cannot be merged with itself; choose the copy that the other laptop worked in</source>
        <translation>un libro no se fusiona consigo mismo; elija la copia en que trabajó el otro portátil</translation>
    </message>
    <message>
        <source>a workbook holds exactly one job; change the one that is there</source>
        <translation>un libro contiene exactamente una obra; cambie la que hay</translation>
    </message>
    <message>
        <source>a workbook stands there and would be lost; give the output another name</source>
        <translation>allí hay un libro y se perdería; dé otro nombre a la salida</translation>
    </message>
    <message>
        <source>advice, unverified: no round has confirmed these settings; set them, then read every valve once more</source>
        <translation>consejo, sin verificar: ninguna ronda ha confirmado estos ajustes; póngalos y lea después cada válvula otra vez</translation>
    </message>
    <message>
        <source>all is stored, with the last reading, in {1}; work goes on there</source>
        <translation>todo está guardado, con la última lectura, en {1}; el trabajo sigue allí</translation>
    </message>
    <message>
        <source>amps were read without volts, so no power follows from them; read the volts between the phases</source>
        <translation>se leyeron corrientes sin tensiones, así que no se deduce potencia; lea las tensiones entre fases</translation>
    </message>
    <message>
        <source>an unknown time</source>
        <translation>una hora desconocida</translation>
    </message>
    <message>
        <source>an unreadable certificate</source>
        <translation>un certificado ilegible</translation>
    </message>
    <message>
        <source>another program keeps the file locked; close that program and try again</source>
        <translation>otro programa tiene bloqueado el archivo; ciérrelo e inténtelo otra vez</translation>
    </message>
    <message>
        <source>at</source>
        <translation>a las</translation>
    </message>
    <message>
        <source>at the new design flow the pump makes {1} at full speed and {2} are needed; a larger impeller or pump is needed, ask its maker</source>
        <translation>al nuevo caudal de diseño la bomba da {1} a plena velocidad y hacen falta {2}; se necesita un rodete o una bomba mayor, pregunte al fabricante</translation>
    </message>
    <message>
        <source>at this set-point the index circuit takes {1} % of design flow, outside {2} to {3} %; correct the set-point</source>
        <translation>con esta consigna el circuito más desfavorable recibe el {1} % del caudal de diseño, fuera de {2} a {3} %; corrija la consigna</translation>
    </message>
    <message>
        <source>before rebalancing this terminal would take {1} % of design flow; tell its users until it is balanced</source>
        <translation>antes de reequilibrar este terminal recibiría el {1} % del caudal de diseño; avise a sus usuarios hasta equilibrarlo</translation>
    </message>
    <message>
        <source>both values cannot stand here; choose one of them</source>
        <translation>los dos valores no pueden quedar aquí; elija uno</translation>
    </message>
    <message>
        <source>branches nearer to the limit of their share than they can be read: {1} ({2}); bring them nearer to target or read more accurately</source>
        <translation>ramales más cerca del límite de su cuota de lo que se puede leer: {1} ({2}); acérquelos al objetivo o lea con más precisión</translation>
    </message>
    <message>
        <source>branches whose share is not known because a flow is missing: {1} ({2}); complete the readings</source>
        <translation>ramales cuya cuota se desconoce porque falta un caudal: {1} ({2}); complete las lecturas</translation>
    </message>
    <message>
        <source>by its table the pump takes {1} at shutoff and {2} at best efficiency; do not make a shutoff test without the maker&apos;s word</source>
        <translation>según su tabla la bomba toma {1} a caudal nulo y {2} en el mejor rendimiento; no haga una prueba a caudal nulo sin el visto bueno del fabricante</translation>
    </message>
    <message>
        <source>c  corrected, see section {1}</source>
        <translation>c  corregido, véase la sección {1}</translation>
    </message>
    <message>
        <source>can be kept as a new revision of the job; the former stays in the history</source>
        <translation>se puede conservar como nueva revisión de la obra; la anterior queda en el historial</translation>
    </message>
    <message>
        <source>cannot be kept in this job; the reason stands below</source>
        <translation>no se puede conservar en esta obra; el motivo está abajo</translation>
    </message>
    <message>
        <source>close the discharge valve slowly, never the suction valve; read both gauges within a minute, and open it again at once: the water in a pump that runs shut heats up</source>
        <translation>cierre despacio la válvula de impulsión, nunca la de aspiración; lea ambos manómetros en menos de un minuto y ábrala enseguida: el agua de una bomba que gira cerrada se calienta</translation>
    </message>
    <message>
        <source>comments that are not resolved: {1}, the first is &quot;{2}&quot;; answer and resolve them, the report cannot be signed before</source>
        <translation>comentarios sin resolver: {1}, el primero es «{2}»; responda y resuélvalos, el informe no se puede firmar antes</translation>
    </message>
    <message>
        <source>content</source>
        <translation>contenido</translation>
    </message>
    <message>
        <source>could not be read: {1}</source>
        <translation>no se pudo leer: {1}</translation>
    </message>
    <message>
        <source>could not be read: {1} of {2} terminals ({3}); find another way to measure them</source>
        <translation>no se pudieron leer: {1} de {2} terminales ({3}); busque otra forma de medirlos</translation>
    </message>
    <message>
        <source>could not be read; give the reason</source>
        <translation>no se pudo leer; dé el motivo</translation>
    </message>
    <message>
        <source>deficiencies that the report lists: {1}, of these open: {2}</source>
        <translation>deficiencias que lista el informe: {1}, de ellas abiertas: {2}</translation>
    </message>
    <message>
        <source>design flow lies beyond the last point of the pump&apos;s curve at {1}; get the maker&apos;s curve for this flow, no number is computed there</source>
        <translation>el caudal de diseño está más allá del último punto de la curva en {1}; consiga la curva del fabricante para este caudal, ahí no se calcula nada</translation>
    </message>
    <message>
        <source>doubtful readings: {1} ({2}); read again or give the reasons</source>
        <translation>lecturas dudosas: {1} ({2}); relea o dé los motivos</translation>
    </message>
    <message>
        <source>dp as typed</source>
        <translation>Δp como se tecleó</translation>
    </message>
    <message>
        <source>dp {1} at {2} is below the readable minimum of {3}</source>
        <translation>la Δp {1} en {2} está bajo el mínimo legible de {3}</translation>
    </message>
    <message>
        <source>dp {1} at {2}, not below the readable minimum of {3}</source>
        <translation>Δp {1} en {2}, no bajo el mínimo legible de {3}</translation>
    </message>
    <message>
        <source>due {1} is before calibrated {2}; correct one of the dates</source>
        <translation>el vencimiento {1} es anterior a la calibración {2}; corrija una de las fechas</translation>
    </message>
    <message>
        <source>e  reading of an earlier round</source>
        <translation>e  lectura de una ronda anterior</translation>
    </message>
    <message>
        <source>edition and clause are not entered; enter them</source>
        <translation>edición y cláusula sin introducir; introdúzcalas</translation>
    </message>
    <message>
        <source>every comment is resolved</source>
        <translation>cada comentario está resuelto</translation>
    </message>
    <message>
        <source>every valve of the working order is held; close this round and read all again (Ctrl+Shift+W)</source>
        <translation>cada válvula del orden de trabajo está mantenida; cierre esta ronda y relea todas (Ctrl+Mayús+W)</translation>
    </message>
    <message>
        <source>exception claimed: {1}; keep its proof</source>
        <translation>excepción invocada: {1}; guarde su justificante</translation>
    </message>
    <message>
        <source>excess power = Q rho g (H1/eta1 - H2/eta2) with Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; limit = the greater of {6} % of the plate and {7}</source>
        <translation>potencia sobrante = Q rho g (H1/eta1 - H2/eta2) con Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; límite = el mayor de {6} % de la placa y {7}</translation>
    </message>
    <message>
        <source>excess power = Q rho g (H1/eta1 - H2/eta2) with Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; limit = {6} % of the plate</source>
        <translation>potencia sobrante = Q rho g (H1/eta1 - H2/eta2) con Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; límite = {6} % de la placa</translation>
    </message>
    <message>
        <source>f  flow read directly</source>
        <translation>f  caudal leído directamente</translation>
    </message>
    <message>
        <source>flow {1} stands twice in the pump curve; keep one row</source>
        <translation>el caudal {1} está dos veces en la curva; deje una fila</translation>
    </message>
    <message>
        <source>flow, head and power would mean an efficiency of {1} %; check the power reading, the gauges and the flow</source>
        <translation>caudal, altura y potencia darían un rendimiento del {1} %; compruebe la potencia leída, los manómetros y el caudal</translation>
    </message>
    <message>
        <source>gauges differ by {1} with the pump off</source>
        <translation>los manómetros difieren en {1} con la bomba parada</translation>
    </message>
    <message>
        <source>in table {1} the value of {2} cannot be read; another program changed it, open a copy from before</source>
        <translation>en la tabla {1} no se puede leer el valor de {2}; otro programa lo cambió, abra una copia anterior</translation>
    </message>
    <message>
        <source>it has no valve to set and will take {1} % of target; fit a balancing valve, or accept what it takes</source>
        <translation>no tiene válvula que ajustar y tomará el {1} % del objetivo; monte una válvula de equilibrado o acepte lo que tome</translation>
    </message>
    <message>
        <source>it is not recorded whether the device stands on supply or return; look and enter it</source>
        <translation>no consta si el dispositivo está en impulsión o en retorno; mire e introdúzcalo</translation>
    </message>
    <message>
        <source>it is the reference and was read before the valve of {1} was moved; read it again</source>
        <translation>es la referencia y se leyó antes de mover la válvula de {1}; reléala</translation>
    </message>
    <message>
        <source>it is the reference of its group and its valve stands at {1} of {2}; open it fully and match the others to it</source>
        <translation>es la referencia de su grupo y su válvula está en {1} de {2}; ábrala del todo e iguale las demás a ella</translation>
    </message>
    <message>
        <source>it is the reference of its group and stands at {1}; open it fully to {2}</source>
        <translation>es la referencia de su grupo y está en {1}; ábrala del todo hasta {2}</translation>
    </message>
    <message>
        <source>it keeps its flow by itself and is left out of matching; check that its dp stays within its range</source>
        <translation>mantiene su caudal solo y queda fuera del igualado; compruebe que su Δp siga en su rango</translation>
    </message>
    <message>
        <source>it keeps its flow by itself and is left out of the proportion of the group {1}; verify its dp range instead</source>
        <translation>mantiene su caudal solo y queda fuera de la proporción del grupo {1}; verifique en su lugar su rango de Δp</translation>
    </message>
    <message>
        <source>it lies beyond all valves that were moved and changed by {1} % against the others there, in round {2} they kept step; look for air, a limiter or a moving control valve</source>
        <translation>está más allá de las válvulas movidas y cambió un {1} % frente a las otras de allí, en la ronda {2} iban a la par; busque aire, un limitador o una válvula de control que se mueve</translation>
    </message>
    <message>
        <source>it may be made, by somebody who knows this plant; read the following first</source>
        <translation>se puede hacer, por alguien que conozca esta instalación; lea antes lo siguiente</translation>
    </message>
    <message>
        <source>it must not be made on this pump; the following says why</source>
        <translation>no se debe hacer en esta bomba; lo siguiente dice por qué</translation>
    </message>
    <message>
        <source>it takes {1} % of target, the most of what is left to set; turn it from {2} to {3}</source>
        <translation>toma el {1} % del objetivo, lo más de lo que queda por ajustar; gírela de {2} a {3}</translation>
    </message>
    <message>
        <source>it was read again with the same instrument {1}; use another one, or take its zero anew and give the reason</source>
        <translation>se releyó con el mismo instrumento {1}; use otro, o tome de nuevo su cero y dé el motivo</translation>
    </message>
    <message>
        <source>it was read before the speed of pump {1} was changed in this final round; read it again, final readings come last</source>
        <translation>se leyó antes de cambiar la velocidad de la bomba {1} en esta ronda final; reléalo, las lecturas finales van al final</translation>
    </message>
    <message>
        <source>it was read before the valve of {1} was moved in this final round; read it again, final readings come last</source>
        <translation>se leyó antes de mover la válvula de {1} en esta ronda final; reléalo, las lecturas finales van al final</translation>
    </message>
    <message>
        <source>its design flow is not known; enter it in System</source>
        <translation>su caudal de diseño se desconoce; introdúzcalo en Sistema</translation>
    </message>
    <message>
        <source>its design flow is {1}, those below it add up to {2}, {3} % apart; correct the schedule or state the diversity</source>
        <translation>su caudal de diseño es {1}, los de aguas abajo suman {2}, un {3} % de diferencia; corrija la lista o declare la simultaneidad</translation>
    </message>
    <message>
        <source>its flow rose from {1} to {2} when nothing but its own valve was closed, which cannot be; read both again</source>
        <translation>su caudal subió de {1} a {2} cuando solo se cerró su propia válvula, lo que no puede ser; relea ambos</translation>
    </message>
    <message>
        <source>its own reading gives {1}, those below it add up to {2}, {3} times the uncertainty of the difference; read again and look for a branch that is missing</source>
        <translation>su propia lectura da {1}, los de aguas abajo suman {2}, {3} veces la incertidumbre de la diferencia; relea y busque un ramal que falta</translation>
    </message>
    <message>
        <source>its reading is dated {1}, before round {2} ended at {3}; check the clock and correct the time</source>
        <translation>su lectura es del {1}, antes de acabar la ronda {2} a las {3}; compruebe el reloj y corrija la hora</translation>
    </message>
    <message>
        <source>its share cannot be promised within {1} % yet, the standard uncertainty is {2} %; take the reading named as most helpful</source>
        <translation>su cuota aún no se puede prometer dentro del {1} %, la incertidumbre típica es del {2} %; tome la lectura nombrada como más útil</translation>
    </message>
    <message>
        <source>its valve has not been read; read its dp as it stands</source>
        <translation>su válvula no se ha leído; lea su Δp como está</translation>
    </message>
    <message>
        <source>its valve makes only {1} at this flow, below the {2} that can be read; use a smaller valve or measure another way</source>
        <translation>su válvula solo da {1} a este caudal, bajo los {2} que se pueden leer; use una válvula menor o mida de otro modo</translation>
    </message>
    <message>
        <source>its valve stands at {1} of {2}, where its table is least accurate and it may be noisy; consider a smaller valve or less excess head</source>
        <translation>su válvula está en {1} de {2}, donde su tabla es menos precisa y puede hacer ruido; considere una válvula menor o menos altura sobrante</translation>
    </message>
    <message>
        <source>its valve&apos;s table ends at {1} before it takes enough, it will take {2} % of target; throttle it at another place or fit a smaller valve</source>
        <translation>la tabla de su válvula acaba en {1} antes de tomar lo suficiente, tomará el {2} % del objetivo; estrangule en otro sitio o monte una válvula menor</translation>
    </message>
    <message>
        <source>its zero moved by {1} in the course of the day, more than half of the {2} that can just be read with it; take a new zero and read the low dps again</source>
        <translation>su cero se movió {1} a lo largo del día, más de la mitad de los {2} apenas legibles; tome un cero nuevo y relea las Δp bajas</translation>
    </message>
    <message>
        <source>lines of the list still stand in the way: {1}; settle them, or give the reason</source>
        <translation>aún lo impiden líneas de la lista: {1}; resuélvalas o dé el motivo</translation>
    </message>
    <message>
        <source>losses of {1} branch(es) are restated at their new design flows by the square law, since they are the same pipes; keep the designer&apos;s figures with the former revision</source>
        <translation>pérdidas recalculadas a los nuevos caudales de diseño por la ley cuadrática, pues son los mismos tubos, ramales: {1}; conserve las cifras del proyectista con la revisión anterior</translation>
    </message>
    <message>
        <source>makes {1} at full speed where {2} are needed</source>
        <translation>da {1} a plena velocidad y hacen falta {2}</translation>
    </message>
    <message>
        <source>makes {1} at full speed where {2} are needed: enough at {3} % of speed</source>
        <translation>da {1} a plena velocidad y hacen falta {2}: suficiente al {3} % de velocidad</translation>
    </message>
    <message>
        <source>mandatory lines of readiness that are open: {1}, the first is &quot;{2}&quot;; see to them, or have a supervisor say why the survey may begin</source>
        <translation>líneas obligatorias de preparación abiertas: {1}, la primera es «{2}»; atiéndalas, o que un supervisor diga por qué puede empezar el levantamiento</translation>
    </message>
    <message>
        <source>mandatory lines of readiness that are still open: {1}, the first is &quot;{2}&quot;; see to them or give the reason, the report cannot be signed before</source>
        <translation>líneas obligatorias de preparación aún abiertas: {1}, la primera es «{2}»; atiéndalas o dé el motivo, el informe no se puede firmar antes</translation>
    </message>
    <message>
        <source>maximum_dp {1} is not above minimum_dp {2}; correct one of them</source>
        <translation>maximum_dp {1} no es mayor que minimum_dp {2}; corrija uno de ellos</translation>
    </message>
    <message>
        <source>may be made with the cautions below</source>
        <translation>se puede hacer con las precauciones de abajo</translation>
    </message>
    <message>
        <source>must not be made; the cautions say why</source>
        <translation>no se debe hacer; las precauciones dicen por qué</translation>
    </message>
    <message>
        <source>neither a reference nor other branches have been read; take the survey first</source>
        <translation>no se leyó ni una referencia ni otros ramales; haga antes el levantamiento</translation>
    </message>
    <message>
        <source>neither both gauges nor their difference was read; read suction and discharge</source>
        <translation>no se leyeron ni los dos manómetros ni su diferencia; lea aspiración e impulsión</translation>
    </message>
    <message>
        <source>neither hours a year nor a load profile is entered, so no yearly energy is computed; enter one in Job</source>
        <translation>no constan horas al año ni perfil de carga, así que no se calcula energía anual; introduzca uno en Obra</translation>
    </message>
    <message>
        <source>neither the pump&apos;s table nor a reading gives its efficiency here, so no power is computed; enter efficiency or power with the curve, or read the motor&apos;s power</source>
        <translation>ni la tabla de la bomba ni una lectura dan aquí su rendimiento, así que no se calcula potencia; introduzca rendimiento o potencia con la curva, o lea la potencia del motor</translation>
    </message>
    <message>
        <source>no action was taken back last; there is nothing to do again</source>
        <translation>no se deshizo ninguna acción; no hay nada que rehacer</translation>
    </message>
    <message>
        <source>no branch has a valve with a table to set; enter the valve tables</source>
        <translation>ningún ramal tiene válvula con tabla que ajustar; introduzca las tablas de válvulas</translation>
    </message>
    <message>
        <source>no branch is called &quot;{1}&quot;; type a tag of the place System</source>
        <translation>ningún ramal se llama «{1}»; escriba una etiqueta de Sistema</translation>
    </message>
    <message>
        <source>no branch is called &quot;{1}&quot;; type a tag, or nothing for the pump</source>
        <translation>ningún ramal se llama «{1}»; escriba una etiqueta, o nada para la bomba</translation>
    </message>
    <message>
        <source>no certificate in PEM form was found; give the file of the firm&apos;s root certificate</source>
        <translation>no se halló ningún certificado PEM; dé el archivo del certificado raíz de la empresa</translation>
    </message>
    <message>
        <source>no change is given; add, remove or change a branch</source>
        <translation>no se da ningún cambio; añada, quite o cambie un ramal</translation>
    </message>
    <message>
        <source>no deficiency is in hand to keep the photo with; list one first</source>
        <translation>no hay deficiencia con la que guardar la foto; anote antes una</translation>
    </message>
    <message>
        <source>no discharge valve is recorded for this pump; enter its tag if there is one</source>
        <translation>no consta válvula de impulsión de esta bomba; introduzca su etiqueta si la hay</translation>
    </message>
    <message>
        <source>no discharge valve is recorded for this pump; the test throttled to design flow needs one, enter its tag</source>
        <translation>no consta válvula de impulsión de esta bomba; la prueba estrangulada a caudal de diseño necesita una, introduzca su etiqueta</translation>
    </message>
    <message>
        <source>no finding blocks the signature</source>
        <translation>ninguna observación impide firmar</translation>
    </message>
    <message>
        <source>no instrument is called &quot;{1}&quot;; type a tag of the place Job</source>
        <translation>ningún instrumento se llama «{1}»; escriba una etiqueta de Obra</translation>
    </message>
    <message>
        <source>no key file could be read at {1}; choose one, or make a certificate</source>
        <translation>no se pudo leer ningún archivo de clave en {1}; elija uno o cree un certificado</translation>
    </message>
    <message>
        <source>no link ends at this node; join it to the loop or take it out</source>
        <translation>ningún enlace acaba en este nudo; únalo a la red o quítelo</translation>
    </message>
    <message>
        <source>no list says that the loop was ready; take the usual one on the place Job, or give the reason</source>
        <translation>ninguna lista dice que la red estaba lista; tome la usual en Obra, o dé el motivo</translation>
    </message>
    <message>
        <source>no other unit or sign would explain this reading; read the valve again</source>
        <translation>ninguna otra unidad ni signo explicaría esta lectura; relea la válvula</translation>
    </message>
    <message>
        <source>no pump is called &quot;{1}&quot;; type the tag of one of the job&apos;s pumps</source>
        <translation>ninguna bomba se llama «{1}»; escriba la etiqueta de una bomba de la obra</translation>
    </message>
    <message>
        <source>no pump is marked as running; mark the pumps that work together</source>
        <translation>ninguna bomba está marcada en marcha; marque las que trabajan juntas</translation>
    </message>
    <message>
        <source>no round has flow and head of the pumps; read suction and discharge, and a round</source>
        <translation>ninguna ronda tiene caudal y altura de las bombas; lea aspiración e impulsión, y una ronda</translation>
    </message>
    <message>
        <source>no round is on record to keep this reading with; open a round first</source>
        <translation>no hay ronda con la que guardar esta lectura; abra antes una ronda</translation>
    </message>
    <message>
        <source>no round is open; open the next round before reading</source>
        <translation>no hay ronda abierta; abra la siguiente antes de leer</translation>
    </message>
    <message>
        <source>no running pump has a usable curve; enter at least two points of it</source>
        <translation>ninguna bomba en marcha tiene curva útil; introduzca al menos dos puntos</translation>
    </message>
    <message>
        <source>no setting is advised for this valve; see the remark beside the table</source>
        <translation>no se aconseja ajuste para esta válvula; vea la observación junto a la tabla</translation>
    </message>
    <message>
        <source>no sound copy of this job lies beside it; look on the other laptop and on sticks</source>
        <translation>no hay al lado ninguna copia sana de esta obra; mire en el otro portátil y en memorias USB</translation>
    </message>
    <message>
        <source>no terminal has a flow that could be read again; read and close a final round</source>
        <translation>ningún terminal tiene un caudal que releer; lea y cierre una ronda final</translation>
    </message>
    <message>
        <source>no valve is in hand; choose one on the place Walk or Review</source>
        <translation>no hay válvula en mano; elija una en Recorrido o Revisión</translation>
    </message>
    <message>
        <source>no valve of the group {1} is fully open, reference {2} stands at {3} of {4}; open it and match the others to it</source>
        <translation>ninguna válvula del grupo {1} está totalmente abierta, la referencia {2} está en {3} de {4}; ábrala e iguale las demás a ella</translation>
    </message>
    <message>
        <source>no valve of the job is called &quot;{1}&quot;; type its tag or its number</source>
        <translation>ninguna válvula de la obra se llama «{1}»; escriba su etiqueta o su número</translation>
    </message>
    <message>
        <source>no valve of the route is called &quot;{1}&quot;; type its tag or its number</source>
        <translation>ninguna válvula de la ruta se llama «{1}»; escriba su etiqueta o su número</translation>
    </message>
    <message>
        <source>no valve of this group is fully open; open the one of the reference and match the others to it</source>
        <translation>ninguna válvula de este grupo está totalmente abierta; abra la de la referencia e iguale las demás a ella</translation>
    </message>
    <message>
        <source>no workbook is open; open one or make a new job</source>
        <translation>no hay libro abierto; abra uno o cree una obra</translation>
    </message>
    <message>
        <source>none claimed</source>
        <translation>ninguna invocada</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>not read in this round: {1} of {2} terminals ({3}); read them</source>
        <translation>sin leer en esta ronda: {1} de {2} terminales ({3}); léalos</translation>
    </message>
    <message>
        <source>not read yet; read it, or mark it as unreadable with the reason</source>
        <translation>aún sin leer; léalo o márquelo ilegible con el motivo</translation>
    </message>
    <message>
        <source>not read; stop the pump, read both gauges and enter them as pumps off</source>
        <translation>sin leer; pare la bomba, lea ambos manómetros e introdúzcalos como bombas paradas</translation>
    </message>
    <message>
        <source>not trusted: its chain does not lead to a certificate you gave; ask the signer&apos;s firm for its root certificate</source>
        <translation>no fiable: su cadena no lleva a ningún certificado que usted indicó; pida a la empresa del firmante su certificado raíz</translation>
    </message>
    <message>
        <source>not trusted: no root certificate was given; give that of the signer&apos;s firm as PEM</source>
        <translation>no fiable: no se indicó certificado raíz; indique el de la empresa del firmante en PEM</translation>
    </message>
    <message>
        <source>not trusted: nobody else vouches for the name; compare the fingerprint {1} with the signer</source>
        <translation>no fiable: nadie más responde del nombre; compare la huella digital {1} con la que le dé el firmante</translation>
    </message>
    <message>
        <source>nothing has been read yet; take a survey with every valve fully open</source>
        <translation>aún no se ha leído nada; haga un levantamiento con todas las válvulas totalmente abiertas</translation>
    </message>
    <message>
        <source>nothing is left to choose from merging</source>
        <translation>no queda nada que elegir de la fusión</translation>
    </message>
    <message>
        <source>nothing is missing</source>
        <translation>no falta nada</translation>
    </message>
    <message>
        <source>nothing was read at setting {1} yet; type the dp read there, then hold</source>
        <translation>aún no se leyó nada con ajuste {1}; escriba la Δp leída ahí y luego mantenga</translation>
    </message>
    <message>
        <source>nothing was read here, so its circuit is only known by design; read it</source>
        <translation>aquí no se leyó nada, así que su circuito solo se conoce por el diseño; léalo</translation>
    </message>
    <message>
        <source>of target spreads over {1} % in the group {2}, more than {3} %; match the group again</source>
        <translation>del objetivo se dispersa un {1} % en el grupo {2}, más del {3} %; iguale otra vez el grupo</translation>
    </message>
    <message>
        <source>one of its readings does not fit the others: {1} in round {2}, expected {3} (z {4}); read it again now, that tells which one it is</source>
        <translation>una de sus lecturas no casa con las otras: {1} en la ronda {2}, se esperaba {3} (z {4}); reléala ahora, eso dirá cuál es</translation>
    </message>
    <message>
        <source>only a practice job answers by itself; read the meter and type what it shows</source>
        <translation>solo una obra de práctica responde sola; lea el medidor y escriba lo que muestra</translation>
    </message>
    <message>
        <source>open for changes by {1} on {2} since {3} (process {4}), so it can only be read here; close it there first</source>
        <translation>abierto para cambios por {1} en {2} desde {3} (proceso {4}), así que aquí solo se lee; ciérrelo antes allí</translation>
    </message>
    <message>
        <source>outside {3} % around their target share: {1} of {2} branches ({4}), the farthest is {5} with {6} % of target; adjust them</source>
        <translation>fuera del {3} % de su cuota objetivo: {1} de {2} ramales ({4}), el más lejano es {5} con el {6} % del objetivo; ajústelos</translation>
    </message>
    <message>
        <source>outside {3} to {4} % of design flow: {1} of {2} terminals ({5}), the farthest is {6} with {7} %; bring the total to design flow or record why not</source>
        <translation>fuera de {3} a {4} % del caudal de diseño: {1} de {2} terminales ({5}), el más lejano es {6} con el {7} %; lleve el total a diseño o anote por qué no</translation>
    </message>
    <message>
        <source>power from slip is rough: the plate&apos;s slip may be off by 20 %; use a stroboscope good to 1 rpm</source>
        <translation>la potencia por deslizamiento es aproximada: el deslizamiento de placa puede fallar un 20 %; use un estroboscopio con precisión de 1 rpm</translation>
    </message>
    <message>
        <source>power into the water over shaft power is {1} %, outside 20 to 90 %; check flow, head and motor readings</source>
        <translation>la potencia al agua sobre la potencia en el eje es el {1} %, fuera de 20 a 90 %; compruebe caudal, altura y lecturas del motor</translation>
    </message>
    <message>
        <source>pressure falls to {1} below the surrounding air here while the pump runs, so air is drawn in at any leak; raise the fill pressure, or move the vessel to the pump&apos;s suction</source>
        <translation>la presión cae aquí {1} por debajo del aire ambiente con la bomba en marcha, así que entra aire por cualquier fuga; suba la presión de llenado, o lleve el vaso a la aspiración de la bomba</translation>
    </message>
    <message>
        <source>proved: every valve on the index path {1} fully open, one in every group, and the pump&apos;s discharge valve</source>
        <translation>demostrado: cada válvula del camino más desfavorable {1} totalmente abierta, una en cada grupo, y la válvula de impulsión de la bomba</translation>
    </message>
    <message>
        <source>r  read more than once; the mean counts</source>
        <translation>r  leído más de una vez; cuenta la media</translation>
    </message>
    <message>
        <source>read again it takes {1}, {2} % of the {3} reported; find out why, a sample of which more than 10 % deviates calls for reading all again</source>
        <translation>releído toma {1}, el {2} % de los {3} informados; averigüe por qué, una muestra con más del 10 % desviado exige releerlo todo</translation>
    </message>
    <message>
        <source>read the dp of this valve as it stands; the largest uncertainty of a share falls by {1} %</source>
        <translation>lea la Δp de esta válvula como está; la mayor incertidumbre de una cuota baja un {1} %</translation>
    </message>
    <message>
        <source>read this valve again as it stands; the largest uncertainty of a share falls by {1} %</source>
        <translation>relea esta válvula como está; la mayor incertidumbre de una cuota baja un {1} %</translation>
    </message>
    <message>
        <source>record {1} of the journal does not follow from those before it; the file was changed by another program or is damaged, open a copy from before</source>
        <translation>el registro {1} del diario no sigue de los anteriores; otro programa cambió el archivo o está dañado, abra una copia anterior</translation>
    </message>
    <message>
        <source>round {1} has a reading number {2} already; give this one the next number</source>
        <translation>la ronda {1} ya tiene una lectura número {2}; dé a esta el número siguiente</translation>
    </message>
    <message>
        <source>round {1} is &quot;{2}&quot; in an earlier row; write the same kind in all its rows</source>
        <translation>la ronda {1} es «{2}» en una fila anterior; escriba el mismo tipo en todas sus filas</translation>
    </message>
    <message>
        <source>round {1} is accepted and takes no more changes; open a new round</source>
        <translation>la ronda {1} está aceptada y no admite más cambios; abra una ronda nueva</translation>
    </message>
    <message>
        <source>round {1} is accepted and takes no more readings; open a new round</source>
        <translation>la ronda {1} está aceptada y no admite más lecturas; abra una ronda nueva</translation>
    </message>
    <message>
        <source>round {1} is closed already; open a new round</source>
        <translation>la ronda {1} ya está cerrada; abra una ronda nueva</translation>
    </message>
    <message>
        <source>round {1} is closed and takes only corrections of its readings; open a new round for new readings</source>
        <translation>la ronda {1} está cerrada y solo admite correcciones de sus lecturas; abra una ronda nueva para lecturas nuevas</translation>
    </message>
    <message>
        <source>round {1} is sent by nobody; say who works at this desk, Round, Person</source>
        <translation>la ronda {1} no la envía nadie; diga quién trabaja en este puesto, Ronda, Persona</translation>
    </message>
    <message>
        <source>round {1} is still open; close it before opening the next</source>
        <translation>la ronda {1} sigue abierta; ciérrela antes de abrir la siguiente</translation>
    </message>
    <message>
        <source>round {1} stands twice; keep one row for it</source>
        <translation>la ronda {1} está dos veces; deje una fila</translation>
    </message>
    <message>
        <source>rounds that are not accepted: {1}; have them accepted or give the reason</source>
        <translation>rondas no aceptadas: {1}; haga que se acepten o dé el motivo</translation>
    </message>
    <message>
        <source>row {1} is named, but its table has {2} rows; give the number of one, the first is 1</source>
        <translation>se nombra la fila {1}, pero su tabla tiene {2} filas; dé el número de una, la primera es 1</translation>
    </message>
    <message>
        <source>s  flow is the sum of the branches behind it</source>
        <translation>s  el caudal es la suma de los ramales de aguas abajo</translation>
    </message>
    <message>
        <source>self-acting valves that work outside their range: {1} ({2}); bring their dp into the range</source>
        <translation>válvulas automáticas fuera de su rango: {1} ({2}); lleve su Δp al rango</translation>
    </message>
    <message>
        <source>setting {1} is outside the valve&apos;s scale, {2} to {3}; give a setting on the scale</source>
        <translation>el ajuste {1} está fuera de la escala de la válvula, {2} a {3}; dé un ajuste de la escala</translation>
    </message>
    <message>
        <source>setting {1} lies outside the valve&apos;s table, {2} to {3}, so there is no flow; correct the setting</source>
        <translation>el ajuste {1} está fuera de la tabla de la válvula, {2} a {3}, así que no hay caudal; corrija el ajuste</translation>
    </message>
    <message>
        <source>setting {1} stands twice in the valve table; keep one row for it</source>
        <translation>el ajuste {1} está dos veces en la tabla de la válvula; deje una fila</translation>
    </message>
    <message>
        <source>shut this valve for a moment, read the dp across it and set it back to {1}: it shows the head available here; the largest uncertainty of a share falls by {2} %</source>
        <translation>cierre un momento esta válvula, lea la Δp en ella y devuélvala a {1}: muestra la altura disponible aquí; la mayor incertidumbre de una cuota baja un {2} %</translation>
    </message>
    <message>
        <source>signed by</source>
        <translation>firmado por</translation>
    </message>
    <message>
        <source>signer</source>
        <translation>firmante</translation>
    </message>
    <message>
        <source>solved with this impeller or speed the loop takes {1} % of design flow; the affinity laws do not hold for this loop, take the solved figure</source>
        <translation>calculada con este rodete o velocidad, la red toma el {1} % del caudal de diseño; las leyes de afinidad no valen para esta red, tome la cifra calculada</translation>
    </message>
    <message>
        <source>some design losses are far from what is read, so less is made of them all; check the schedule</source>
        <translation>algunas pérdidas de diseño están lejos de lo leído, así que todas cuentan menos; compruebe la lista</translation>
    </message>
    <message>
        <source>some running pumps stand in series and some in parallel; mark all alike, or test each set by itself</source>
        <translation>unas bombas en marcha están en serie y otras en paralelo; márquelas todas igual, o pruebe cada conjunto por separado</translation>
    </message>
    <message>
        <source>something was added behind the last signature; do not rely on this file, ask for it again</source>
        <translation>se añadió algo tras la última firma; no se fíe de este archivo, pídalo otra vez</translation>
    </message>
    <message>
        <source>strong enough at full speed</source>
        <translation>suficiente a plena velocidad</translation>
    </message>
    <message>
        <source>terminals nearer to the limit of design flow than they can be read: {1} ({2}); read more accurately</source>
        <translation>terminales más cerca del límite del caudal de diseño de lo que se puede leer: {1} ({2}); lea con más precisión</translation>
    </message>
    <message>
        <source>text stands beside a quoted cell; quote the whole cell and write a quotation mark within it twice</source>
        <translation>hay texto junto a una celda entre comillas; entrecomille la celda entera y escriba dobles las comillas de dentro</translation>
    </message>
    <message>
        <source>the NPSH required at {1} is {2}; it must not be below zero, correct this row</source>
        <translation>el NPSH requerido a {1} es {2}; no puede ser menor que cero, corrija esta fila</translation>
    </message>
    <message>
        <source>the PDF already has fields for signatures; begin from a report without them</source>
        <translation>el PDF ya tiene campos de firma; parta de un informe sin ellos</translation>
    </message>
    <message>
        <source>the PDF carries no signature, so nothing proves it; ask for the signed report</source>
        <translation>el PDF no lleva firma, así que nada lo acredita; pida el informe firmado</translation>
    </message>
    <message>
        <source>the balance of round {1} and any report signed on it no longer hold once this change is made; balance again and sign a new report</source>
        <translation>el equilibrado de la ronda {1} y todo informe firmado sobre él dejan de valer con este cambio; equilibre otra vez y firme un informe nuevo</translation>
    </message>
    <message>
        <source>the balancing device has no table, so its flow cannot be read; enter model, size and table</source>
        <translation>el dispositivo de equilibrado no tiene tabla, así que su caudal no se puede leer; introduzca modelo, tamaño y tabla</translation>
    </message>
    <message>
        <source>the cell is empty; give a value</source>
        <translation>la celda está vacía; dé un valor</translation>
    </message>
    <message>
        <source>the certificate of {1} begins on {2}; check this computer&apos;s clock or use another key</source>
        <translation>el certificado de {1} vale a partir del {2}; compruebe el reloj de este ordenador o use otra clave</translation>
    </message>
    <message>
        <source>the certificate of {1} ended on {2}; ask its issuer for a new one</source>
        <translation>el certificado de {1} caducó el {2}; pida otro a su emisor</translation>
    </message>
    <message>
        <source>the certificate of {1} is not made for signing documents; use one with digital signature or non-repudiation among its uses</source>
        <translation>el certificado de {1} no es para firmar documentos; use uno con firma digital o no repudio entre sus usos</translation>
    </message>
    <message>
        <source>the changes of record {1} of the journal do not fit what was stored before; the file was changed by another program, open a copy from before</source>
        <translation>los cambios del registro {1} del diario no casan con lo guardado antes; otro programa cambió el archivo, abra una copia anterior</translation>
    </message>
    <message>
        <source>the changes of the other copy do not fit together ({1}), so nothing was taken over; verify both files</source>
        <translation>los cambios de la otra copia no casan entre sí ({1}), así que no se tomó nada; verifique ambos archivos</translation>
    </message>
    <message>
        <source>the circuit has no design flow; ask the designer and enter it</source>
        <translation>el circuito no tiene caudal de diseño; pregunte al proyectista e introdúzcalo</translation>
    </message>
    <message>
        <source>the coefficient at setting {1} is {2}; only the lowest setting may have 0, all others must be above 0</source>
        <translation>el coeficiente con ajuste {1} es {2}; solo el ajuste menor puede tener 0, los demás deben ser mayores que 0</translation>
    </message>
    <message>
        <source>the coefficient falls from {1} to {2} between settings {3} and {4}; correct the table, a valve passes more as it opens</source>
        <translation>el coeficiente baja de {1} a {2} entre los ajustes {3} y {4}; corrija la tabla, una válvula deja pasar más al abrir</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; has no unit; write it without brackets</source>
        <translation>la columna «{1}» no tiene unidad; escríbala sin corchetes</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; is missing; add it to the header row</source>
        <translation>falta la columna «{1}»; añádala a la fila de encabezado</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; is not known; did you mean &quot;{2}&quot;? Known are: {3}</source>
        <translation>la columna «{1}» no se conoce; ¿quiso decir «{2}»? Se conocen: {3}</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; needs its unit in brackets; use one of {2}</source>
        <translation>la columna «{1}» necesita su unidad entre corchetes; use una de {2}</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; stands twice; keep one of them</source>
        <translation>la columna «{1}» está dos veces; deje una</translation>
    </message>
    <message>
        <source>the currents of the phases differ by {1} % of their mean, more than {2} %; have the motor and its supply checked by a licensed electrician</source>
        <translation>las corrientes de las fases difieren un {1} % de su media, más del {2} %; haga revisar el motor y su alimentación por un electricista autorizado</translation>
    </message>
    <message>
        <source>the curve is flat here: the uncertainty of the head makes the flow {1} to {2}; use a meter or the sum of the terminals</source>
        <translation>la curva es plana aquí: la incertidumbre de la altura da un caudal de {1} a {2}; use un caudalímetro o la suma de los terminales</translation>
    </message>
    <message>
        <source>the curve of the {1} impeller does not lie below that of the {2} impeller; check the diameters of these rows</source>
        <translation>la curva del rodete {1} no queda bajo la del rodete {2}; compruebe los diámetros de estas filas</translation>
    </message>
    <message>
        <source>the density is {1} kg/m3; it must be above 0</source>
        <translation>la densidad es {1} kg/m3; debe ser mayor que 0</translation>
    </message>
    <message>
        <source>the design flow is not known; enter it, its losses are stated at that flow</source>
        <translation>el caudal de diseño se desconoce; introdúzcalo, sus pérdidas se dan a ese caudal</translation>
    </message>
    <message>
        <source>the device has {1} diameters of straight pipe before and {2} behind it and needs {3} and {4}; its flow is {5} % less certain, move it or say so in the report</source>
        <translation>el dispositivo tiene {1} diámetros de tramo recto aguas arriba y {2} aguas abajo y necesita {3} y {4}; su caudal es un {5} % menos seguro, muévalo o dígalo en el informe</translation>
    </message>
    <message>
        <source>the diameter lies beyond the smallest curve of the family; ask the maker before cutting</source>
        <translation>el diámetro está más allá de la curva menor de la familia; pregunte al fabricante antes de recortar</translation>
    </message>
    <message>
        <source>the discharge gauge shows {1} less than the suction gauge; swap the readings, or check that the pump turns the right way and its valves are open</source>
        <translation>el manómetro de impulsión muestra {1} menos que el de aspiración; cambie las lecturas, o compruebe que la bomba gira bien y sus válvulas están abiertas</translation>
    </message>
    <message>
        <source>the discharge valve of this pump stands at {1}, not fully open at {2}; open it and trim or slow the pump, or claim an exception</source>
        <translation>la válvula de impulsión de esta bomba está en {1}, no totalmente abierta en {2}; ábrala y recorte el rodete o baje la velocidad, o invoque una excepción</translation>
    </message>
    <message>
        <source>the dp of the set-point is not entered; enter what the sensor read</source>
        <translation>no consta la Δp de la consigna; introduzca lo que leyó el sensor</translation>
    </message>
    <message>
        <source>the dp range of this self-acting valve is not entered; enter it, it is what is verified</source>
        <translation>no consta el rango de Δp de esta válvula automática; introdúzcalo, es lo que se verifica</translation>
    </message>
    <message>
        <source>the dp range of this self-acting valve is not known; enter minimum_dp in its valve table</source>
        <translation>el rango de Δp de esta válvula automática se desconoce; introduzca minimum_dp en su tabla de válvula</translation>
    </message>
    <message>
        <source>the drive&apos;s losses are not known and are left out; enter its efficiency</source>
        <translation>las pérdidas del variador se desconocen y se omiten; introduzca su rendimiento</translation>
    </message>
    <message>
        <source>the efficiency at {1} is {2} %; it must lie between 0 and 100 %, correct this row</source>
        <translation>el rendimiento a {1} es {2} %; debe estar entre 0 y 100 %, corrija esta fila</translation>
    </message>
    <message>
        <source>the exponent of the loss is {1}; it must lie between 1 and 4, water has 1.7 to 2</source>
        <translation>el exponente de la pérdida es {1}; debe estar entre 1 y 4, el agua tiene de 1.7 a 2</translation>
    </message>
    <message>
        <source>the factor on the pump curve is {1}; it must be above 0</source>
        <translation>el factor sobre la curva es {1}; debe ser mayor que 0</translation>
    </message>
    <message>
        <source>the file &quot;{1}&quot; has more than {2} MB; make it smaller</source>
        <translation>el archivo «{1}» tiene más de {2} MB; hágalo menor</translation>
    </message>
    <message>
        <source>the file has {1} MB, more than the {2} MB that a table may have; split it or correct it</source>
        <translation>el archivo tiene {1} MB, más de los {2} MB que admite una tabla; divídalo o corríjalo</translation>
    </message>
    <message>
        <source>the file holds no key with its own certificate; export both together</source>
        <translation>el archivo no contiene una clave con su certificado; exporte ambos juntos</translation>
    </message>
    <message>
        <source>the file is empty, so nothing can be read from it; open a copy of it</source>
        <translation>el archivo está vacío, no se puede leer nada; abra una copia</translation>
    </message>
    <message>
        <source>the file is empty; give it a header row and data</source>
        <translation>el archivo está vacío; póngale encabezado y datos</translation>
    </message>
    <message>
        <source>the file is missing; put it into the folder</source>
        <translation>falta el archivo; póngalo en la carpeta</translation>
    </message>
    <message>
        <source>the file is not UTF-8 (it looks like UTF-16); save it as &quot;CSV UTF-8&quot;</source>
        <translation>el archivo no es UTF-8 (parece UTF-16); guárdelo como «CSV UTF-8»</translation>
    </message>
    <message>
        <source>the file was last changed by a newer program and can only be read; to change it, install version {1} or later</source>
        <translation>un programa más nuevo cambió el archivo y solo se puede leer; para cambiarlo, instale la versión {1} o posterior</translation>
    </message>
    <message>
        <source>the fill pressure is not entered, so only differences of pressure are right; read it at the expansion vessel with the pumps off and enter it in Job</source>
        <translation>no consta la presión de llenado, así que solo son correctas las diferencias de presión; léala en el vaso de expansión con las bombas paradas e introdúzcala en Obra</translation>
    </message>
    <message>
        <source>the final flow is {1} % of design, outside {2} to {3} %; adjust it, or list the deficiency that keeps it there, the report cannot be signed before</source>
        <translation>el caudal final es el {1} % del diseño, fuera de {2} a {3} %; ajústelo, o anote la deficiencia que lo deja ahí, el informe no se puede firmar antes</translation>
    </message>
    <message>
        <source>the first signer allowed no later change, yet there is one; do not rely on this file, ask for it again</source>
        <translation>el primer firmante no permitía cambios posteriores y hay uno; no se fíe de este archivo, pídalo otra vez</translation>
    </message>
    <message>
        <source>the flow at the same pump head changed by {1} % since round {2}, with no valve moved; look for air, clogged strainers or moving control valves</source>
        <translation>el caudal a igual altura de bomba cambió un {1} % desde la ronda {2}, sin mover válvulas; busque aire, filtros obstruidos o válvulas de control que se mueven</translation>
    </message>
    <message>
        <source>the flow coefficient is Kv {1}; it must be a number of 0 (shut) or more, correct the setting</source>
        <translation>el coeficiente de caudal es Kv {1}; debe ser un número desde 0 (cerrada), corrija el ajuste</translation>
    </message>
    <message>
        <source>the flow of the group {1} rose from {2} to {3} when valves in it were only closed, which cannot be; read it again</source>
        <translation>el caudal del grupo {1} subió de {2} a {3} cuando en él solo se cerraron válvulas, lo que no puede ser; reléalo</translation>
    </message>
    <message>
        <source>the flow read at the pump is {1}, the terminals add up to {2}; check the meter and look for an open bypass</source>
        <translation>el caudal leído en la bomba es {1}, los terminales suman {2}; compruebe el medidor y busque un baipás abierto</translation>
    </message>
    <message>
        <source>the fluid of the job cannot be used, so all flows are computed for water at 20 C; correct kind, concentration and temperature</source>
        <translation>el fluido de la obra no se puede usar, así que todos los caudales se calculan para agua a 20 C; corrija tipo, concentración y temperatura</translation>
    </message>
    <message>
        <source>the folder cannot be made ({1}); choose a place that can be written</source>
        <translation>no se puede crear la carpeta ({1}); elija un lugar donde se pueda escribir</translation>
    </message>
    <message>
        <source>the folder or the file cannot be written, so the job can only be read; copy the file to a place of your own to change it</source>
        <translation>no se puede escribir en la carpeta o el archivo, así que la obra solo se lee; copie el archivo a un lugar propio para cambiarlo</translation>
    </message>
    <message>
        <source>the group of this valve has no reference yet; read its members in a survey first</source>
        <translation>el grupo de esta válvula aún no tiene referencia; lea antes sus miembros en un levantamiento</translation>
    </message>
    <message>
        <source>the handle stands at {1}, not where it was noted; the setting was corrected, check it</source>
        <translation>el volante está en {1}, no donde se anotó; el ajuste se corrigió, compruébelo</translation>
    </message>
    <message>
        <source>the head at shutoff lies outside the family of curves, the impeller is a first estimate; check the family</source>
        <translation>la altura a caudal nulo está fuera de la familia de curvas, el rodete es una primera estimación; compruebe la familia</translation>
    </message>
    <message>
        <source>the head at shutoff says {1} of impeller and the record says {2}; check impeller, direction of turn, speed, wear and air before the curve is trusted</source>
        <translation>la altura a caudal nulo dice rodete {1} y consta {2}; compruebe rodete, sentido de giro, velocidad, desgaste y aire antes de fiarse de la curva</translation>
    </message>
    <message>
        <source>the head of {1} lies above the curve&apos;s {2} at shutoff, so the curve gives no flow; check gauges, speed and impeller</source>
        <translation>la altura de {1} supera los {2} de la curva a caudal nulo, así que la curva no da caudal; compruebe manómetros, velocidad y rodete</translation>
    </message>
    <message>
        <source>the head of {1} lies below the last point of the curve, so the curve gives no flow; get the maker&apos;s curve for this duty</source>
        <translation>la altura de {1} queda bajo el último punto de la curva, así que la curva no da caudal; consiga la curva del fabricante para este punto de trabajo</translation>
    </message>
    <message>
        <source>the head required is {1} by one way and {2} by another; find out why before the pump is changed</source>
        <translation>la altura requerida es {1} por un método y {2} por otro; averigüe por qué antes de cambiar la bomba</translation>
    </message>
    <message>
        <source>the head rises from {1} to {2} between {3} and {4}; check these points, the duty is not unique on a rising curve</source>
        <translation>la altura sube de {1} a {2} entre {3} y {4}; compruebe estos puntos, el punto de trabajo no es único en una curva creciente</translation>
    </message>
    <message>
        <source>the head stays at {1} between {2} and {3}; write one more digit or leave one of the rows out, the duty is not unique on a level curve</source>
        <translation>la altura sigue en {1} entre {2} y {3}; escriba una cifra más o deje fuera una fila, el punto de trabajo no es único en una curva plana</translation>
    </message>
    <message>
        <source>the head that the index circuit needs is not known; enter the design losses, or finish a round whose shares are within the band</source>
        <translation>la altura que necesita el circuito más desfavorable se desconoce; introduzca las pérdidas de diseño, o acabe una ronda con las cuotas en la banda</translation>
    </message>
    <message>
        <source>the head with flow, {1}, is not below the head at shutoff, {2}; read one of them again</source>
        <translation>la altura con caudal, {1}, no es menor que la altura a caudal nulo, {2}; relea una de ellas</translation>
    </message>
    <message>
        <source>the height of this unit over the pump is not entered, so it counts as level with the pump; enter it</source>
        <translation>no consta la cota de esta unidad sobre la bomba, así que cuenta al nivel de la bomba; introdúzcala</translation>
    </message>
    <message>
        <source>the impeller diameter at {1} is {2}; it must be above 0, correct this row</source>
        <translation>el diámetro del rodete a {1} es {2}; debe ser mayor que 0, corrija esta fila</translation>
    </message>
    <message>
        <source>the impeller is {1} of the curve&apos;s own diameter; it must be above 0</source>
        <translation>el rodete es {1} del diámetro de la curva; debe ser mayor que 0</translation>
    </message>
    <message>
        <source>the impeller would be {1} % of the largest that the casing takes, below {2} %; ask the maker, slow the pump or replace it</source>
        <translation>el rodete sería el {1} % del mayor de la carcasa, bajo el {2} %; pregunte al fabricante, baje la velocidad de la bomba o cámbiela</translation>
    </message>
    <message>
        <source>the impeller would be {1}, below the least of {2} for this casing; do not trim, slow the pump or replace it</source>
        <translation>el rodete sería {1}, bajo el mínimo de {2} de esta carcasa; no recorte, baje la velocidad de la bomba o cámbiela</translation>
    </message>
    <message>
        <source>the impeller would come below the maker&apos;s minimum of {1}; change the speed or the pump instead</source>
        <translation>el rodete bajaría del mínimo de {1} del fabricante; cambie en su lugar la velocidad o la bomba</translation>
    </message>
    <message>
        <source>the impeller {1} is smaller than its minimum {2}; correct one of them</source>
        <translation>el rodete {1} es menor que su mínimo {2}; corrija uno de ellos</translation>
    </message>
    <message>
        <source>the index circuit is known and fully open along its path</source>
        <translation>el circuito más desfavorable se conoce y está totalmente abierto en su camino</translation>
    </message>
    <message>
        <source>the index circuit is not fully open along its path; open its valves or give the reason</source>
        <translation>el circuito más desfavorable no está totalmente abierto en su camino; abra sus válvulas o dé el motivo</translation>
    </message>
    <message>
        <source>the index circuit is not known from this round, so nothing can be proved; read every terminal</source>
        <translation>el circuito más desfavorable no se conoce por esta ronda, así que nada se puede demostrar; lea cada terminal</translation>
    </message>
    <message>
        <source>the index circuit moves from {1} to {2}; open every valve on the new path</source>
        <translation>el circuito más desfavorable pasa de {1} a {2}; abra cada válvula del camino nuevo</translation>
    </message>
    <message>
        <source>the index is a self-acting valve: the set-point must leave it the start of its range, {1}; read its dp at this set-point</source>
        <translation>el punto más desfavorable es una válvula automática: la consigna debe dejarle el inicio de su rango, {1}; lea su Δp con esta consigna</translation>
    </message>
    <message>
        <source>the instrument &quot;{1}&quot; is not in the job; did you mean &quot;{2}&quot;?</source>
        <translation>el instrumento «{1}» no está en la obra; ¿quiso decir «{2}»?</translation>
    </message>
    <message>
        <source>the instrument &quot;{1}&quot; stands twice; give every instrument its own tag</source>
        <translation>el instrumento «{1}» está dos veces; dé a cada instrumento su propia etiqueta</translation>
    </message>
    <message>
        <source>the instrument was calibrated on {1}, after it was used on {2}; keep the certificate that held then</source>
        <translation>el instrumento se calibró el {1}, después de usarse el {2}; conserve el certificado que valía entonces</translation>
    </message>
    <message>
        <source>the instrument was used, but its calibration due date is not given; enter it</source>
        <translation>el instrumento se usó, pero no consta cuándo vence su calibración; introdúzcalo</translation>
    </message>
    <message>
        <source>the job has no branches; add the first one in System</source>
        <translation>la obra no tiene ramales; añada el primero en Sistema</translation>
    </message>
    <message>
        <source>the job has no branches; add them before reading</source>
        <translation>la obra no tiene ramales; añádalos antes de leer</translation>
    </message>
    <message>
        <source>the job has no name; add a row with the key &quot;name&quot;</source>
        <translation>la obra no tiene nombre; añada una fila con la clave «name»</translation>
    </message>
    <message>
        <source>the job has no pump yet; add one on the page Pump Data</source>
        <translation>la obra aún no tiene bomba; añada una en la página Datos de bomba</translation>
    </message>
    <message>
        <source>the key &quot;{1}&quot; is not known; did you mean &quot;{2}&quot;? Known are: {3}</source>
        <translation>la clave «{1}» no se conoce; ¿quiso decir «{2}»? Se conocen: {3}</translation>
    </message>
    <message>
        <source>the key &quot;{1}&quot; stands twice; keep one row for it</source>
        <translation>la clave «{1}» está dos veces; deje una fila</translation>
    </message>
    <message>
        <source>the key could not be written to {1} ({2}); choose a folder that can be written</source>
        <translation>la clave no se pudo escribir en {1} ({2}); elija una carpeta donde se pueda escribir</translation>
    </message>
    <message>
        <source>the key is locked by a cipher that is no longer safe; export it again with a present-day program</source>
        <translation>la clave está protegida con un cifrado que ya no es seguro; expórtela otra vez con un programa actual</translation>
    </message>
    <message>
        <source>the key is of a kind that is not used here; use RSA of 2048 bits or more, or a P-256, P-384 or P-521 key</source>
        <translation>la clave es de un tipo que aquí no se usa; use RSA de 2048 bits o más, o una clave P-256, P-384 o P-521</translation>
    </message>
    <message>
        <source>the kind of round {1} is not given; write one of {2}</source>
        <translation>no se da el tipo de la ronda {1}; escriba uno de {2}</translation>
    </message>
    <message>
        <source>the last digits of {1} dps read with instrument {2} are too uneven to be chance, {3} of them end in {4}; check that they were read and not made up</source>
        <translation>las últimas cifras de {1} Δp leídas con el instrumento {2} son demasiado desiguales para ser azar, {3} acaban en {4}; compruebe que se leyeron y no se inventaron</translation>
    </message>
    <message>
        <source>the law of trimming cuts too much, by 15 to 20 % of the change; cut first to {1} (three quarters of the calculated cut), test, and cut again</source>
        <translation>la ley del recorte quita de más, del 15 al 20 % del cambio; recorte primero hasta {1} (tres cuartos del recorte calculado), pruebe y vuelva a recortar</translation>
    </message>
    <message>
        <source>the learning did not settle; look at the doubtful readings and the design losses</source>
        <translation>el aprendizaje no se asentó; mire las lecturas dudosas y las pérdidas de diseño</translation>
    </message>
    <message>
        <source>the learning was stopped; start it again</source>
        <translation>el aprendizaje se paró; inícielo otra vez</translation>
    </message>
    <message>
        <source>the line is longer than {1} characters; it is no row of a table, correct it</source>
        <translation>la línea tiene más de {1} caracteres; no es una fila de tabla, corríjala</translation>
    </message>
    <message>
        <source>the link ends at node &quot;{1}&quot;, which does not exist; correct the name or add the node</source>
        <translation>el enlace acaba en el nudo «{1}», que no existe; corrija el nombre o añada el nudo</translation>
    </message>
    <message>
        <source>the link is given twice; give every link its own name</source>
        <translation>el enlace se da dos veces; dé a cada enlace su propio nombre</translation>
    </message>
    <message>
        <source>the link starts and ends at node &quot;{1}&quot;; join it to two different nodes</source>
        <translation>el enlace empieza y acaba en el nudo «{1}»; únalo a dos nudos distintos</translation>
    </message>
    <message>
        <source>the loss of this circuit is not known; enter circuit_loss from the design, or learn it from a survey</source>
        <translation>la pérdida de este circuito se desconoce; introduzca circuit_loss del diseño, o apréndala de un levantamiento</translation>
    </message>
    <message>
        <source>the loss of {1} Pa at {2} m3/s is no point of a loss; both must be above 0</source>
        <translation>la pérdida de {1} Pa a {2} m3/s no es un punto de pérdida; ambos deben ser mayores que 0</translation>
    </message>
    <message>
        <source>the low limit of {1} stands above the high limit of {2}; correct them</source>
        <translation>el límite inferior de {1} supera el superior de {2}; corríjalos</translation>
    </message>
    <message>
        <source>the lower limit {1} % is not below the upper limit {2} %; correct one of them</source>
        <translation>el límite inferior {1} % no es menor que el superior {2} %; corrija uno</translation>
    </message>
    <message>
        <source>the metered input power is chosen: it needs no power factor</source>
        <translation>se elige la potencia absorbida medida: no necesita factor de potencia</translation>
    </message>
    <message>
        <source>the motor draws {1} A, above its plate of {2} A and within its service factor; do not leave it there</source>
        <translation>el motor consume {1} A, sobre su placa de {2} A y dentro de su factor de servicio; no lo deje así</translation>
    </message>
    <message>
        <source>the motor draws {1} A, more than plate times service factor, {2} A; throttle the pump&apos;s discharge at once and find out why</source>
        <translation>el motor consume {1} A, más que placa por factor de servicio, {2} A; estrangule enseguida la impulsión de la bomba y averigüe por qué</translation>
    </message>
    <message>
        <source>the motor draws {1}, its plate allows {2}; throttle the pump&apos;s discharge before going on, or the motor may be damaged</source>
        <translation>el motor consume {1}, su placa permite {2}; estrangule la impulsión de la bomba antes de seguir, o el motor puede dañarse</translation>
    </message>
    <message>
        <source>the motor is {1}: a large pump heats its water within seconds; have the permission of whoever runs the plant</source>
        <translation>el motor es de {1}: una bomba grande calienta su agua en segundos; tenga el permiso de quien lleva la instalación</translation>
    </message>
    <message>
        <source>the motor&apos;s efficiency is not entered, so no energy is computed; enter it with the pump</source>
        <translation>no consta el rendimiento del motor, así que no se calcula energía; introdúzcalo con la bomba</translation>
    </message>
    <message>
        <source>the motor&apos;s efficiency is the plate&apos;s, at full load; take it at the present load from the maker&apos;s data</source>
        <translation>el rendimiento del motor es el de placa, a plena carga; tómelo a la carga actual de los datos del fabricante</translation>
    </message>
    <message>
        <source>the motor&apos;s plate power is not entered, so the clause cannot be tested; enter it</source>
        <translation>no consta la potencia de placa del motor, así que no se puede probar la cláusula; introdúzcala</translation>
    </message>
    <message>
        <source>the motor&apos;s plate, {1}, is not above {2}: the pump need not be trimmed or slowed; keep the balance with the least throttling all the same</source>
        <translation>la placa del motor, {1}, no supera {2}: no hace falta recortar el rodete ni bajar la velocidad; mantenga aun así el equilibrado con la menor estrangulación</translation>
    </message>
    <message>
        <source>the motor&apos;s power or the pump&apos;s efficiency is not entered, so the motor is not checked; enter them</source>
        <translation>no consta la potencia del motor o el rendimiento de la bomba, así que no se comprueba el motor; introdúzcalos</translation>
    </message>
    <message>
        <source>the motor&apos;s speed of {1} rpm does not lie below its synchronous speed of {2} rpm; read the speed again</source>
        <translation>la velocidad del motor de {1} rpm no es menor que la síncrona de {2} rpm; lea otra vez la velocidad</translation>
    </message>
    <message>
        <source>the name &quot;{1}&quot; stands twice; keep one row for it</source>
        <translation>el nombre «{1}» está dos veces; deje una fila</translation>
    </message>
    <message>
        <source>the network has no links; add at least one circuit</source>
        <translation>la red no tiene enlaces; añada al menos un circuito</translation>
    </message>
    <message>
        <source>the new design flow is missing; type it, such as 12.5 gpm or 0.8 L/s</source>
        <translation>falta el nuevo caudal de diseño; escríbalo, por ejemplo 12.5 gpm o 0.8 L/s</translation>
    </message>
    <message>
        <source>the new design flow must be above 0; to take the circuit away, remove it</source>
        <translation>el nuevo caudal de diseño debe ser mayor que 0; para quitar el circuito, elimínelo</translation>
    </message>
    <message>
        <source>the newest round that was read is no final one; read and close a final round</source>
        <translation>la última ronda leída no es final; lea y cierre una ronda final</translation>
    </message>
    <message>
        <source>the next value typed is kept beside the first, the mean counts; type it and press Enter</source>
        <translation>el próximo valor tecleado se guarda junto al primero, cuenta la media; escríbalo y pulse Intro</translation>
    </message>
    <message>
        <source>the next value typed takes the place of the doubtful one; type it and press Enter</source>
        <translation>el próximo valor tecleado ocupa el lugar del dudoso; escríbalo y pulse Intro</translation>
    </message>
    <message>
        <source>the no-load amps of {1} A are not below the plate&apos;s {2} A; correct the no-load reading</source>
        <translation>la corriente en vacío de {1} A no es menor que los {2} A de la placa; corrija la lectura en vacío</translation>
    </message>
    <message>
        <source>the node is given twice; give every node its own name</source>
        <translation>el nudo se da dos veces; dé a cada nudo su propio nombre</translation>
    </message>
    <message>
        <source>the number {1} stands twice; give every deficiency its own</source>
        <translation>el número {1} está dos veces; dé a cada deficiencia el suyo</translation>
    </message>
    <message>
        <source>the other copy holds nothing that is not here; there is nothing to merge</source>
        <translation>la otra copia no tiene nada que no esté aquí; no hay nada que fusionar</translation>
    </message>
    <message>
        <source>the parent &quot;{1}&quot; is not among the branches; did you mean &quot;{2}&quot;?</source>
        <translation>el padre «{1}» no está entre los ramales; ¿quiso decir «{2}»?</translation>
    </message>
    <message>
        <source>the passphrase does not open this key; type it again</source>
        <translation>la contraseña no abre esta clave; escríbala otra vez</translation>
    </message>
    <message>
        <source>the passphrase is shorter than {1} characters; choose a longer one</source>
        <translation>la contraseña tiene menos de {1} caracteres; elija una más larga</translation>
    </message>
    <message>
        <source>the pipe diameters at the taps are not both known, so no velocity head is counted; enter them</source>
        <translation>no se conocen ambos diámetros en las tomas, así que no se cuenta altura de velocidad; introdúzcalos</translation>
    </message>
    <message>
        <source>the pipe&apos;s inside diameter is {1} m; it must be above 0</source>
        <translation>el diámetro interior del tubo es {1} m; debe ser mayor que 0</translation>
    </message>
    <message>
        <source>the pipe&apos;s length is {1} m; it must be above 0</source>
        <translation>la longitud del tubo es {1} m; debe ser mayor que 0</translation>
    </message>
    <message>
        <source>the pipe&apos;s roughness is {1} m; it must lie between 0 and a tenth of the inside diameter</source>
        <translation>la rugosidad del tubo es {1} m; debe estar entre 0 y un décimo del diámetro interior</translation>
    </message>
    <message>
        <source>the position of this pump&apos;s discharge valve was not read in the final state; read it</source>
        <translation>la posición de la válvula de impulsión de esta bomba no se leyó en el estado final; léala</translation>
    </message>
    <message>
        <source>the power at {1} is {2}; it must be above 0, correct this row</source>
        <translation>la potencia a {1} es {2}; debe ser mayor que 0, corrija esta fila</translation>
    </message>
    <message>
        <source>the power factor is the plate&apos;s, at full load; at part load it is lower, so measure it</source>
        <translation>el factor de potencia es el de placa, a plena carga; a carga parcial es menor, así que mídalo</translation>
    </message>
    <message>
        <source>the practice building has no branch {1}; read one of those that the job was made with</source>
        <translation>el edificio de práctica no tiene ramal {1}; lea uno con los que se creó la obra</translation>
    </message>
    <message>
        <source>the practice building has no pump {1}; read the one that the job was made with</source>
        <translation>el edificio de práctica no tiene bomba {1}; lea la que se creó con la obra</translation>
    </message>
    <message>
        <source>the pressure is given at a node that does not exist; correct the name</source>
        <translation>la presión se da en un nudo que no existe; corrija el nombre</translation>
    </message>
    <message>
        <source>the pressure is given here and at node &quot;{1}&quot; of the same loop; keep one, a closed loop has one expansion vessel</source>
        <translation>la presión se da aquí y en el nudo «{1}» de la misma red; deje una, una red cerrada tiene un vaso de expansión</translation>
    </message>
    <message>
        <source>the program met a defect in itself ({1}); what was stored is safe, close and open the workbook again</source>
        <translation>el programa topó con un defecto propio ({1}); lo guardado está a salvo, cierre y vuelva a abrir el libro</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; has no rows in pump_curve.csv; give at least two points</source>
        <translation>la bomba «{1}» no tiene filas en pump_curve.csv; dé al menos dos puntos</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; is not in pumps.csv; did you mean &quot;{2}&quot;?</source>
        <translation>la bomba «{1}» no está en pumps.csv; ¿quiso decir «{2}»?</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; is not in the job; did you mean &quot;{2}&quot;?</source>
        <translation>la bomba «{1}» no está en la obra; ¿quiso decir «{2}»?</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; stands twice; give every pump its own tag</source>
        <translation>la bomba «{1}» está dos veces; dé a cada bomba su propia etiqueta</translation>
    </message>
    <message>
        <source>the pump curve bends sharply at {1} (its slope changes by a factor of {2}); check this point for a slip</source>
        <translation>la curva se dobla de golpe en {1} (su pendiente cambia por un factor {2}); compruebe si hay un fallo en ese punto</translation>
    </message>
    <message>
        <source>the pump curve has flow {1} with head {2}; neither may be below zero, correct this row</source>
        <translation>la curva tiene caudal {1} con altura {2}; ninguno puede ser menor que cero, corrija esta fila</translation>
    </message>
    <message>
        <source>the pump gives {1} by its curve, the terminals add up to {2}; check gauges, curve and impeller, and look for an open bypass</source>
        <translation>la bomba da {1} por su curva, los terminales suman {2}; compruebe manómetros, curva y rodete, y busque un baipás abierto</translation>
    </message>
    <message>
        <source>the pump has no drive; slowing needs one, or other sheaves, installed by licensed people</source>
        <translation>la bomba no tiene variador; bajar su velocidad necesita uno, u otras poleas, instalados por personal autorizado</translation>
    </message>
    <message>
        <source>the pump has no usable curve, so it gives no flow; enter at least two points</source>
        <translation>la bomba no tiene curva útil, así que no da caudal; introduzca al menos dos puntos</translation>
    </message>
    <message>
        <source>the pump has no usable curve; enter at least two points of falling head, with the flow of each</source>
        <translation>la bomba no tiene curva útil; introduzca al menos dos puntos de altura decreciente, cada uno con su caudal</translation>
    </message>
    <message>
        <source>the pump makes no excess head, so both ways leave the same; there is nothing to save</source>
        <translation>la bomba no da altura sobrante, así que ambos métodos dejan lo mismo; no hay nada que ahorrar</translation>
    </message>
    <message>
        <source>the pump makes {1} Pa at zero flow; it must be above 0, check the curve</source>
        <translation>la bomba da {1} Pa a caudal nulo; debe ser mayor que 0, compruebe la curva</translation>
    </message>
    <message>
        <source>the pump runs at {1} % of full speed, where it makes no excess head; it is reduced as asked, keep it so</source>
        <translation>la bomba gira al {1} % de la plena velocidad, donde no da altura sobrante; está reducida como se pide, déjela así</translation>
    </message>
    <message>
        <source>the pump stands still, or it is too weak to move water through the loop; check speed, curve and losses</source>
        <translation>la bomba está parada, o es muy débil para mover agua por la red; compruebe velocidad, curva y pérdidas</translation>
    </message>
    <message>
        <source>the pump would take {1} and the motor may give {2}; a larger motor is needed, ask a licensed electrician</source>
        <translation>la bomba tomaría {1} y el motor puede dar {2}; hace falta un motor mayor, pregunte a un electricista autorizado</translation>
    </message>
    <message>
        <source>the pump&apos;s efficiency is not known, so the excess power cannot be computed; enter it with the curve, or read the motor&apos;s power</source>
        <translation>el rendimiento de la bomba se desconoce, así que no se puede calcular la potencia sobrante; introdúzcalo con la curva, o lea la potencia del motor</translation>
    </message>
    <message>
        <source>the pump&apos;s first point stands at {1} m3/h; the power law needs its first point at zero flow</source>
        <translation>el primer punto de la bomba está en {1} m3/h; la ley potencial necesita el primero a caudal nulo</translation>
    </message>
    <message>
        <source>the pump&apos;s pressure does not fall from {1} kPa between {2} and {3} m3/h; correct these points</source>
        <translation>la presión de la bomba no baja de {1} kPa entre {2} y {3} m3/h; corrija estos puntos</translation>
    </message>
    <message>
        <source>the pump&apos;s specific speed is {1} (rpm, gpm, ft), so its power rises towards shutoff; do not make a shutoff test without the maker&apos;s word</source>
        <translation>la velocidad específica de la bomba es {1} (rpm, gpm, ft), así que su potencia sube hacia caudal nulo; no haga una prueba a caudal nulo sin el visto bueno del fabricante</translation>
    </message>
    <message>
        <source>the pump&apos;s speed is {1} of rated; it must be a number of 0 (stopped) or more</source>
        <translation>la velocidad de la bomba es {1} del nominal; debe ser un número desde 0 (parada)</translation>
    </message>
    <message>
        <source>the pump&apos;s table gives no efficiencies, so its specific speed is not known; make sure that it is a radial pump before it is run shut</source>
        <translation>la tabla de la bomba no da rendimientos, así que su velocidad específica se desconoce; asegúrese de que es una bomba radial antes de que gire cerrada</translation>
    </message>
    <message>
        <source>the range of constant flow is {1} to {2} Pa; the start must be above 0 and the end above it</source>
        <translation>el rango de caudal constante es de {1} a {2} Pa; el inicio debe ser mayor que 0 y el final mayor que él</translation>
    </message>
    <message>
        <source>the ratio of amps is chosen: neither power factor nor no-load amps are known</source>
        <translation>se elige la relación de corriente: no se conocen ni factor de potencia ni corriente en vacío</translation>
    </message>
    <message>
        <source>the ratio of amps reads too high at {1} % load; it holds above about 65 %, prefer another way</source>
        <translation>la relación de corriente lee de más al {1} % de carga; vale por encima del 65 %, prefiera otro método</translation>
    </message>
    <message>
        <source>the readiness list is done</source>
        <translation>la lista de preparación está hecha</translation>
    </message>
    <message>
        <source>the readings and the plate allow none of the five ways to the shaft power; read volts, amps and power factor, or the input power</source>
        <translation>las lecturas y la placa no permiten ninguno de los cinco métodos para la potencia en el eje; lea tensión, corriente y factor de potencia, o la potencia absorbida</translation>
    </message>
    <message>
        <source>the reference has not been read; read it first</source>
        <translation>la referencia no se ha leído; léala primero</translation>
    </message>
    <message>
        <source>the reference went from {1} to {2} % of design between its last two readings, more than the band of {3} %; read it again</source>
        <translation>la referencia pasó del {1} al {2} % del diseño entre sus dos últimas lecturas, más que la banda del {3} %; reléala</translation>
    </message>
    <message>
        <source>the report could not be written to {1} ({2}); choose a folder that exists and may be written, with room on the disk</source>
        <translation>el informe no se pudo escribir en {1} ({2}); elija una carpeta que exista, donde se pueda escribir y con espacio</translation>
    </message>
    <message>
        <source>the report has no page {1}; write the report again</source>
        <translation>el informe no tiene página {1}; escríbalo otra vez</translation>
    </message>
    <message>
        <source>the report is of another workbook, or of a state that this one never had; open the workbook it names</source>
        <translation>el informe es de otro libro, o de un estado que este nunca tuvo; abra el libro que nombra</translation>
    </message>
    <message>
        <source>the report is of this workbook as it stands now</source>
        <translation>el informe es de este libro como está ahora</translation>
    </message>
    <message>
        <source>the report is of this workbook, which was changed since; sign a new report for what stands now</source>
        <translation>el informe es de este libro, que cambió desde entonces; firme un informe nuevo de lo que hay ahora</translation>
    </message>
    <message>
        <source>the report is signed, but the workbook could not note it ({1}); open the workbook for changes and sign again under another name</source>
        <translation>el informe está firmado, pero el libro no pudo anotarlo ({1}); abra el libro para cambios y firme otra vez con otro nombre</translation>
    </message>
    <message>
        <source>the report was changed after it was signed; write it again, then sign that</source>
        <translation>el informe cambió después de firmarse; escríbalo otra vez y firme ese</translation>
    </message>
    <message>
        <source>the resistance is {1} Pa/(m3/s)^2; it must be a number of 0 or more, correct it or close the link</source>
        <translation>la resistencia es {1} Pa/(m3/s)^2; debe ser un número desde 0, corríjala o cierre el enlace</translation>
    </message>
    <message>
        <source>the row at {1} has no impeller diameter; give one on every row of a family of curves or on none</source>
        <translation>la fila a {1} no tiene diámetro de rodete; dé uno en cada fila de una familia de curvas o en ninguna</translation>
    </message>
    <message>
        <source>the row corrects row {1} of its round, which has {2} in this table; give the number of another one</source>
        <translation>la fila corrige la fila {1} de su ronda, que tiene {2} en esta tabla; dé el número de otra</translation>
    </message>
    <message>
        <source>the row has neither setting, dp, flow nor a note; give what was read or take the row out</source>
        <translation>la fila no tiene ajuste, Δp, caudal ni nota; dé lo que se leyó o quítela</translation>
    </message>
    <message>
        <source>the row has no reading at all; give what was read or take the row out</source>
        <translation>la fila no tiene ninguna lectura; dé lo que se leyó o quítela</translation>
    </message>
    <message>
        <source>the row has {1} cells and the header {2}; put a text that has a separator into quotation marks</source>
        <translation>la fila tiene {1} celdas y el encabezado {2}; ponga entre comillas un texto que tenga un separador</translation>
    </message>
    <message>
        <source>the row names no round; give its number, 1 is the survey</source>
        <translation>la fila no nombra ninguna ronda; dé su número, 1 es el levantamiento</translation>
    </message>
    <message>
        <source>the row needs one coefficient; give it in the column Cv or Kv, not in both</source>
        <translation>la fila necesita un coeficiente; delo en la columna Cv o Kv, no en ambas</translation>
    </message>
    <message>
        <source>the sensor reads {1} with the pumps off, more than its accuracy of {2}; have it zeroed before the set-point is taken from it</source>
        <translation>el sensor lee {1} con las bombas paradas, más que su precisión de {2}; haga que lo pongan a cero antes de tomar de él la consigna</translation>
    </message>
    <message>
        <source>the sensor was not read with the pumps off; stop the pumps, read it and enter the value</source>
        <translation>el sensor no se leyó con las bombas paradas; pare las bombas, léalo e introduzca el valor</translation>
    </message>
    <message>
        <source>the set flow is {1} m3/s; it must be a number of 0 or more</source>
        <translation>el caudal ajustado es {1} m3/s; debe ser un número desde 0</translation>
    </message>
    <message>
        <source>the set-point follows the flow, but the flow at which it was found is not entered; enter it</source>
        <translation>la consigna sigue al caudal, pero no consta el caudal al que se halló; introdúzcalo</translation>
    </message>
    <message>
        <source>the set-point of {1} is {2} % of what the index circuit needs at design flow, above 110 %; lower it</source>
        <translation>la consigna de {1} es el {2} % de lo que necesita el circuito más desfavorable a caudal de diseño, más del 110 %; bájela</translation>
    </message>
    <message>
        <source>the setting needed, {1}, is below {2}, where tables and marks are not reliable; set it by the dp, or fit a smaller valve</source>
        <translation>el ajuste necesario, {1}, está bajo {2}, donde tablas y marcas no son fiables; ajústelo por la Δp, o monte una válvula menor</translation>
    </message>
    <message>
        <source>the signature does not fit the certificate of {1}; do not rely on this file, ask for it again</source>
        <translation>la firma no corresponde al certificado de {1}; no se fíe de este archivo, pídalo otra vez</translation>
    </message>
    <message>
        <source>the signature is not written as it must be ({1}); do not rely on this file, ask for it again</source>
        <translation>la firma no está escrita como debe ({1}); no se fíe de este archivo, pídalo otra vez</translation>
    </message>
    <message>
        <source>the signed report could not be written; choose a place with room that can be written</source>
        <translation>el informe firmado no se pudo escribir; elija un lugar con espacio donde se pueda escribir</translation>
    </message>
    <message>
        <source>the signed report there belongs to another workbook; give the report another name</source>
        <translation>el informe firmado que hay allí es de otro libro; dé otro nombre al informe</translation>
    </message>
    <message>
        <source>the signed report there does not verify ({1}); keep it aside and sign a new report under another name</source>
        <translation>el informe firmado que hay allí no se verifica ({1}); apártelo y firme un informe nuevo con otro nombre</translation>
    </message>
    <message>
        <source>the slip is chosen: nothing better was read</source>
        <translation>se elige el deslizamiento: no se leyó nada mejor</translation>
    </message>
    <message>
        <source>the speed would be {1} % of rated, below the least of {2} %; trim or throttle instead, or ask the maker</source>
        <translation>la velocidad sería el {1} % del nominal, bajo el mínimo del {2} %; recorte o estrangule en su lugar, o pregunte al fabricante</translation>
    </message>
    <message>
        <source>the standard uncertainty of this reading is {1} of its value; it must be above 0, state the instrument&apos;s accuracy</source>
        <translation>la incertidumbre típica de esta lectura es {1} de su valor; debe ser mayor que 0, dé la precisión del instrumento</translation>
    </message>
    <message>
        <source>the static lift is {1} Pa; give a number</source>
        <translation>la altura estática es {1} Pa; dé un número</translation>
    </message>
    <message>
        <source>the straight pipe before and behind the device is not recorded; it needs {1} and {2} diameters, look and enter it</source>
        <translation>no constan los tramos rectos aguas arriba y aguas abajo del dispositivo; necesita {1} y {2} diámetros, mire e introdúzcalos</translation>
    </message>
    <message>
        <source>the sum of minor loss coefficients is {1}; it must not be below 0</source>
        <translation>la suma de coeficientes de pérdidas singulares es {1}; no puede ser menor que 0</translation>
    </message>
    <message>
        <source>the table cannot be written; check room and permissions there</source>
        <translation>no se puede escribir la tabla; compruebe allí espacio y permisos</translation>
    </message>
    <message>
        <source>the table has no branches; give at least one row</source>
        <translation>la tabla no tiene ramales; dé al menos una fila</translation>
    </message>
    <message>
        <source>the tables of the file are not those of a workbook ({1}); keep it as it is and open a copy from before</source>
        <translation>las tablas del archivo no son las de un libro ({1}); déjelo como está y abra una copia anterior</translation>
    </message>
    <message>
        <source>the tag &quot;{1}&quot; is not among the branches; did you mean &quot;{2}&quot;?</source>
        <translation>la etiqueta «{1}» no está entre los ramales; ¿quiso decir «{2}»?</translation>
    </message>
    <message>
        <source>the tag &quot;{1}&quot; stands already in row {2}; give every one its own</source>
        <translation>la etiqueta «{1}» ya está en la fila {2}; dé a cada uno la suya</translation>
    </message>
    <message>
        <source>the tag {1} is taken; type another</source>
        <translation>la etiqueta {1} está ocupada; escriba otra</translation>
    </message>
    <message>
        <source>the text has more than {1} characters; shorten it</source>
        <translation>el texto tiene más de {1} caracteres; acórtelo</translation>
    </message>
    <message>
        <source>the text is not UTF-8; save the file as &quot;CSV UTF-8&quot;</source>
        <translation>el texto no es UTF-8; guarde el archivo como «CSV UTF-8»</translation>
    </message>
    <message>
        <source>the three-way valve stands at {1}; its position must lie between 0 and 1</source>
        <translation>la válvula de tres vías está en {1}; su posición debe estar entre 0 y 1</translation>
    </message>
    <message>
        <source>the valve &quot;{1}&quot; has a range of dp and no table, which only a limiter or a picv can do with; give its table in valves.csv or correct the kind</source>
        <translation>la válvula «{1}» tiene rango de Δp y no tabla, lo que solo vale para un limitador o una PICV; dé su tabla en valves.csv o corrija el tipo</translation>
    </message>
    <message>
        <source>the valve &quot;{1}&quot; of size &quot;{2}&quot; is not in valves.csv; did you mean &quot;{3}&quot;?</source>
        <translation>la válvula «{1}» de tamaño «{2}» no está en valves.csv; ¿quiso decir «{3}»?</translation>
    </message>
    <message>
        <source>the valve of {1} was moved after the reference was read; read the reference again</source>
        <translation>la válvula de {1} se movió después de leer la referencia; relea la referencia</translation>
    </message>
    <message>
        <source>the valve takes so little here that its side hardly matters for air; what counts is straight pipe</source>
        <translation>la válvula toma aquí tan poco que su lado apenas importa para el aire; lo que cuenta es el tramo recto</translation>
    </message>
    <message>
        <source>the viscosity is {1} m2/s; it must be above 0</source>
        <translation>la viscosidad es {1} m2/s; debe ser mayor que 0</translation>
    </message>
    <message>
        <source>the voltage is {1} % of the plate&apos;s; motors are made for 90 to 110 %, have the supply checked</source>
        <translation>la tensión es el {1} % de la placa; los motores son para 90 a 110 %, haga revisar la alimentación</translation>
    </message>
    <message>
        <source>the voltages of the phases differ by {1} % of their mean, more than {2} %; have the supply checked by a licensed electrician before the pump runs on</source>
        <translation>las tensiones de las fases difieren un {1} % de su media, más del {2} %; haga revisar la alimentación por un electricista autorizado antes de que la bomba siga</translation>
    </message>
    <message>
        <source>the water is {1}: gauges and vents scald, and a shut pump boils soon; have the permission of whoever runs the plant</source>
        <translation>el agua está a {1}: manómetros y purgadores escaldan, y una bomba cerrada hierve pronto; tenga el permiso de quien lleva la instalación</translation>
    </message>
    <message>
        <source>the way with no-load amps is chosen: no power factor was measured, and it follows the load down</source>
        <translation>se elige el método con corriente en vacío: no se midió factor de potencia, y sigue siendo válido a poca carga</translation>
    </message>
    <message>
        <source>the witness round confirms {1} of {2} terminals</source>
        <translation>la ronda testigo confirma {1} de {2} terminales</translation>
    </message>
    <message>
        <source>the witness round found {1} of {2} terminals more than 10 % off; read all again, or give the reason</source>
        <translation>la ronda testigo halló {1} de {2} terminales desviados más del 10 %; relea todos, o dé el motivo</translation>
    </message>
    <message>
        <source>the workbook was changed after that report was signed; sign a new report under another name</source>
        <translation>el libro cambió después de firmar ese informe; firme un informe nuevo con otro nombre</translation>
    </message>
    <message>
        <source>there is a branch with this tag already; give the new one another tag</source>
        <translation>ya hay un ramal con esta etiqueta; dé otra al nuevo</translation>
    </message>
    <message>
        <source>there is a round {1} already; give this one another number</source>
        <translation>ya hay una ronda {1}; dé otro número a esta</translation>
    </message>
    <message>
        <source>there is neither readings.csv nor pump_readings.csv with rows; put one into the folder</source>
        <translation>no hay readings.csv ni pump_readings.csv con filas; ponga uno en la carpeta</translation>
    </message>
    <message>
        <source>there is no action that can be taken back; go on with the work</source>
        <translation>no hay acción que se pueda deshacer; siga con el trabajo</translation>
    </message>
    <message>
        <source>there is no plain file &quot;{1}&quot; in the folder attachments; put it there or take the row out</source>
        <translation>no hay archivo simple «{1}» en la carpeta attachments; póngalo allí o quite la fila</translation>
    </message>
    <message>
        <source>there is no reading to learn from; enter at least one dp at a valve</source>
        <translation>no hay lectura de la que aprender; introduzca al menos una Δp en una válvula</translation>
    </message>
    <message>
        <source>there is no round of readings yet; open one</source>
        <translation>aún no hay ronda de lecturas; abra una</translation>
    </message>
    <message>
        <source>there is no such file; check its name and folder</source>
        <translation>no existe tal archivo; compruebe su nombre y carpeta</translation>
    </message>
    <message>
        <source>there is no such folder; give the folder that holds job.csv and the other tables</source>
        <translation>no existe tal carpeta; dé la que contiene job.csv y las demás tablas</translation>
    </message>
    <message>
        <source>this branch feeds others; choose a terminal for the profile of a circuit</source>
        <translation>este ramal alimenta otros; elija un terminal para el perfil de un circuito</translation>
    </message>
    <message>
        <source>this branch has no valve with a table; it cannot be adjusted here</source>
        <translation>este ramal no tiene válvula con tabla; no se puede ajustar aquí</translation>
    </message>
    <message>
        <source>this branch has no valve, so there is no setting; store a reading without one</source>
        <translation>este ramal no tiene válvula, así que no hay ajuste; guarde una lectura sin él</translation>
    </message>
    <message>
        <source>this branch has readings, which stay for the record, so it is not taken out of this job; make a new workbook for the changed building</source>
        <translation>este ramal tiene lecturas, que quedan como constancia, así que no se quita de esta obra; cree un libro nuevo para el edificio cambiado</translation>
    </message>
    <message>
        <source>this branch is fed through itself: {1}; correct one parent, the first is fed at the pump</source>
        <translation>este ramal se alimenta de sí mismo: {1}; corrija un padre, el primero se alimenta en la bomba</translation>
    </message>
    <message>
        <source>this branch is marked as not balanced without a reason; write the reason</source>
        <translation>este ramal está marcado sin equilibrar y sin motivo; escriba el motivo</translation>
    </message>
    <message>
        <source>this branch would be fed from itself by way of its parents; choose another parent</source>
        <translation>este ramal se alimentaría de sí mismo por sus padres; elija otro padre</translation>
    </message>
    <message>
        <source>this conflict is not in the job any more; look at the list again</source>
        <translation>este conflicto ya no está en la obra; mire otra vez la lista</translation>
    </message>
    <message>
        <source>this is a positive displacement pump: running it shut bursts it or its pipe; do not make a shutoff test</source>
        <translation>es una bomba volumétrica: girar cerrada la revienta o revienta su tubo; no haga una prueba a caudal nulo</translation>
    </message>
    <message>
        <source>this is no PKCS#12 key file; choose a file that ends in .p12 or .pfx</source>
        <translation>no es un archivo de clave PKCS#12; elija un archivo que acabe en .p12 o .pfx</translation>
    </message>
    <message>
        <source>this is not a copy of the open workbook: their journals have no record in common; choose the file that the other laptop worked in</source>
        <translation>esto no es una copia del libro abierto: sus diarios no tienen ningún registro común; elija el archivo en que trabajó el otro portátil</translation>
    </message>
    <message>
        <source>this is not a workbook; choose a file that was made as one</source>
        <translation>esto no es un libro de trabajo; elija un archivo creado como tal</translation>
    </message>
    <message>
        <source>this job has no valve &quot;{1}&quot;; type one of {2}, or nothing</source>
        <translation>esta obra no tiene válvula «{1}»; escriba una de {2}, o nada</translation>
    </message>
    <message>
        <source>this job was opened for reading only, so nothing was stored; open it for changes first</source>
        <translation>esta obra se abrió solo para leer, así que no se guardó nada; ábrala antes para cambios</translation>
    </message>
    <message>
        <source>this pump alone keeps water moving through a chiller or boiler; do not make a shutoff test unless whoever runs the plant has shut that down and agrees</source>
        <translation>solo esta bomba mueve el agua por una enfriadora o caldera; no haga una prueba a caudal nulo salvo que quien lleva la instalación la haya parado y esté de acuerdo</translation>
    </message>
    <message>
        <source>this reading was marked doubtful by hand; read again or give the reason</source>
        <translation>esta lectura se marcó dudosa a mano; relea o dé el motivo</translation>
    </message>
    <message>
        <source>this terminal is fully open and takes less of design than the index circuit; match the groups again so that the index is proved</source>
        <translation>este terminal está totalmente abierto y toma menos del diseño que el circuito más desfavorable; iguale otra vez los grupos para demostrar el más desfavorable</translation>
    </message>
    <message>
        <source>this valve has no reading in this round; read it first</source>
        <translation>esta válvula no tiene lectura en esta ronda; léala primero</translation>
    </message>
    <message>
        <source>this valve is on the index circuit and stands at {1}, not fully open at {2}; open it and match the others to it</source>
        <translation>esta válvula está en el circuito más desfavorable y se halla en {1}, no totalmente abierta en {2}; ábrala e iguale las demás a ella</translation>
    </message>
    <message>
        <source>this valve is the reference of its group; read it as a try, or find another valve</source>
        <translation>esta válvula es la referencia de su grupo; léala como intento, o busque otra válvula</translation>
    </message>
    <message>
        <source>this valve stands before the unit, where it lowers the pressure in it: air comes out there, and makes noise and false readings; move it to the return side, or vent at the unit</source>
        <translation>esta válvula está antes de la unidad, donde baja su presión: allí sale aire, que hace ruido y lecturas falsas; muévala al retorno, o purgue en la unidad</translation>
    </message>
    <message>
        <source>this workbook can only be read here; save a copy and work in that</source>
        <translation>este libro aquí solo se puede leer; guarde una copia y trabaje en ella</translation>
    </message>
    <message>
        <source>this would answer an answer; answer the first comment instead</source>
        <translation>esto respondería a una respuesta; responda al primer comentario</translation>
    </message>
    <message>
        <source>throttling takes {1} more than a reduced pump would, above the limit of {2}; trim the impeller or slow the pump, and open its valve</source>
        <translation>estrangular toma {1} más que una bomba reducida, sobre el límite de {2}; recorte el rodete o baje la velocidad de la bomba, y abra su válvula</translation>
    </message>
    <message>
        <source>throttling takes {1} more than a reduced pump would, not above the limit of {2}: the throttle may stay; write down its position</source>
        <translation>estrangular toma {1} más que una bomba reducida, no sobre el límite de {2}: la estrangulación puede quedar; anote su posición</translation>
    </message>
    <message>
        <source>too weak at full speed; see below</source>
        <translation>insuficiente a plena velocidad; vea abajo</translation>
    </message>
    <message>
        <source>trusted: its chain leads to a certificate you gave</source>
        <translation>fiable: su cadena lleva a un certificado que usted indicó</translation>
    </message>
    <message>
        <source>two gauges were read but their heights are not known, so no correction for height is made; enter the heights, or read both taps with one gauge</source>
        <translation>se leyeron dos manómetros pero sus cotas se desconocen, así que no se corrige la cota; introduzca las cotas, o lea ambas tomas con un manómetro</translation>
    </message>
    <message>
        <source>unchanged, the whole file</source>
        <translation>sin cambios, todo el archivo</translation>
    </message>
    <message>
        <source>unchanged, up to this signature</source>
        <translation>sin cambios, hasta esta firma</translation>
    </message>
    <message>
        <source>under the readable minimum, so that the flow is only a range: {1} ({2}); read them another way</source>
        <translation>bajo el mínimo legible, con el caudal solo como rango: {1} ({2}); mídalos de otro modo</translation>
    </message>
    <message>
        <source>volts, amps and power factor are chosen: the input power was not metered</source>
        <translation>se eligen tensión, corriente y factor de potencia: no se midió la potencia absorbida</translation>
    </message>
    <message>
        <source>waiting for review</source>
        <translation>a la espera de revisión</translation>
    </message>
    <message>
        <source>waiting for signature</source>
        <translation>a la espera de firma</translation>
    </message>
    <message>
        <source>what is known beforehand of factor {1} is no number; correct its design loss</source>
        <translation>lo que se sabe de antemano del factor {1} no es un número; corrija su pérdida de diseño</translation>
    </message>
    <message>
        <source>what was read here does not fit the other readings and is left out; read it again</source>
        <translation>lo leído aquí no casa con las demás lecturas y se deja fuera; reléalo</translation>
    </message>
    <message>
        <source>what was signed has been changed since; do not rely on this file, ask for it again</source>
        <translation>lo firmado ha cambiado después; no se fíe de este archivo, pídalo otra vez</translation>
    </message>
    <message>
        <source>windows that are open keep their words; start Waterwright again to see it in {1}</source>
        <translation>las ventanas abiertas conservan sus palabras; inicie Waterwright otra vez para verlo en {1}</translation>
    </message>
    <message>
        <source>with everything open it takes {1} % of design flow; verify its setting, its valve table, air and strainer before adjusting</source>
        <translation>con todo abierto toma el {1} % del caudal de diseño; compruebe su ajuste, su tabla, aire y filtro antes de ajustar</translation>
    </message>
    <message>
        <source>with its corrections the head is {1}; check the gauge heights and the zero reading</source>
        <translation>con sus correcciones la altura es {1}; compruebe las cotas de los manómetros y la lectura del cero</translation>
    </message>
    <message>
        <source>with the pump off the gauges differ by {1} after correction for height; use one gauge for both taps, or have them calibrated</source>
        <translation>con la bomba parada los manómetros difieren en {1} tras corregir la cota; use un manómetro para ambas tomas, o hágalos calibrar</translation>
    </message>
    <message>
        <source>with the pumps off the highest point stands at {1}, below the {2} that keep air out; raise the fill pressure, within what vessel and relief valve allow</source>
        <translation>con las bombas paradas el punto más alto está a {1}, bajo los {2} que impiden el aire; suba la presión de llenado, dentro de lo que permiten vaso y válvula de seguridad</translation>
    </message>
    <message>
        <source>with the valve behind the unit its water stands {1} higher and holds {2} mL/L more air; keep the valve on the return side</source>
        <translation>con la válvula detrás de la unidad su agua está {1} más alta y retiene {2} mL/L más de aire; deje la válvula en el retorno</translation>
    </message>
    <message>
        <source>with {1} terminals the readings are not compared with a learned loop here; use advise for that</source>
        <translation>con {1} terminales las lecturas no se comparan aquí con una red aprendida; use advise para eso</translation>
    </message>
    <message>
        <source>{1} % of design flow in the last round</source>
        <translation>{1} % del caudal de diseño en la última ronda</translation>
    </message>
    <message>
        <source>{1} (clock of the signing computer)</source>
        <translation>{1} (reloj del ordenador que firma)</translation>
    </message>
    <message>
        <source>{1} (self-made certificate)</source>
        <translation>{1} (certificado autofirmado)</translation>
    </message>
    <message>
        <source>{1} C is outside 0 to 150 C, where the solubility of air is computed; correct the temperature</source>
        <translation>{1} C está fuera de 0 a 150 C, donde se calcula la solubilidad del aire; corrija la temperatura</translation>
    </message>
    <message>
        <source>{1} across a shut valve is not above zero; check hoses and valves and read again</source>
        <translation>{1} en una válvula cerrada no es mayor que cero; compruebe mangueras y válvulas y relea</translation>
    </message>
    <message>
        <source>{1} across the valve is above {2}, it may be noisy or cavitate; lower the pump&apos;s head or throttle elsewhere too</source>
        <translation>{1} en la válvula supera {2}, puede hacer ruido o cavitar; baje la altura de la bomba o estrangule también en otro sitio</translation>
    </message>
    <message>
        <source>{1} actions of {2} were taken over, {3} values are left to decide; undo takes all back at once</source>
        <translation>se tomaron {1} acciones de {2}, quedan {3} valores por decidir; deshacer lo retira todo de una vez</translation>
    </message>
    <message>
        <source>{1} answered: &quot;{2}&quot;</source>
        <translation>{1} respondió: «{2}»</translation>
    </message>
    <message>
        <source>{1} asks: &quot;{2}&quot;; correct the reading, or answer on the place Review (Alt+6)</source>
        <translation>{1} pregunta: «{2}»; corrija la lectura, o responda en Revisión (Alt+6)</translation>
    </message>
    <message>
        <source>{1} at the motor is {2} % off its plate&apos;s {3}; have the supply checked</source>
        <translation>{1} en el motor se desvía un {2} % de los {3} de la placa; haga revisar la alimentación</translation>
    </message>
    <message>
        <source>{1} at the unit with the valve on the return, {2} on the supply</source>
        <translation>{1} en la unidad con la válvula en el retorno, {2} en la impulsión</translation>
    </message>
    <message>
        <source>{1} at the unit with the valve on the return, {2} on the supply; its water holds {3} and {4} mL/L of air</source>
        <translation>{1} en la unidad con la válvula en el retorno, {2} en la impulsión; su agua retiene {3} y {4} mL/L de aire</translation>
    </message>
    <message>
        <source>{1} at {2} of {3}, and every valve on its path fully open</source>
        <translation>{1} en {2} de {3}, y cada válvula de su camino totalmente abierta</translation>
    </message>
    <message>
        <source>{1} at {2} of {3}, but not fully open on its path: {4}</source>
        <translation>{1} en {2} de {3}, pero no totalmente abierto en su camino: {4}</translation>
    </message>
    <message>
        <source>{1} branches, of these {2} terminals; index circuit: {3}.</source>
        <translation>{1} ramales, de ellos {2} terminales; circuito más desfavorable: {3}.</translation>
    </message>
    <message>
        <source>{1} by the signer&apos;s clock</source>
        <translation>{1} por el reloj del firmante</translation>
    </message>
    <message>
        <source>{1} could not be read; choose a file that is there</source>
        <translation>{1} no se pudo leer; elija un archivo que exista</translation>
    </message>
    <message>
        <source>{1} has no dp in this round</source>
        <translation>{1} no tiene Δp en esta ronda</translation>
    </message>
    <message>
        <source>{1} has no valve to be read; read its neighbours</source>
        <translation>{1} no tiene válvula que leer; lea sus vecinas</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); read it again</source>
        <translation>{1} en la ronda {2} no casa con las demás lecturas, que esperan {3} (z {4}); reléalo</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); setting {5} instead of {6} would explain it, look at the handle and read it again</source>
        <translation>{1} en la ronda {2} no casa con las demás lecturas, que esperan {3} (z {4}); el ajuste {5} en vez de {6} lo explicaría, mire el volante y reléalo</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); the hoses are probably reversed, swap them and read it again</source>
        <translation>{1} en la ronda {2} no casa con las demás lecturas, que esperan {3} (z {4}); las mangueras estarán invertidas, cámbielas y reléalo</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); the same digits in {5} would, correct the unit or read it again</source>
        <translation>{1} en la ronda {2} no casa con las demás lecturas, que esperan {3} (z {4}); las mismas cifras en {5} casarían, corrija la unidad o reléalo</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); valve {5} instead of {6} would explain it, look at the valve&apos;s size and read it again</source>
        <translation>{1} en la ronda {2} no casa con las demás lecturas, que esperan {3} (z {4}); la válvula {5} en vez de {6} lo explicaría, mire el tamaño de la válvula y reléalo</translation>
    </message>
    <message>
        <source>{1} in round {2} stands out, {3} was expected (z {4}); read it again before anything rests on it, one round alone cannot tell a wrong reading from an obstruction</source>
        <translation>{1} en la ronda {2} llama la atención, se esperaba {3} (z {4}); reléalo antes de basarse en él, una sola ronda no distingue una lectura falsa de una obstrucción</translation>
    </message>
    <message>
        <source>{1} is before a reading of round {2} ({3}); correct the date or the round</source>
        <translation>{1} es anterior a una lectura de la ronda {2} ({3}); corrija la fecha o la ronda</translation>
    </message>
    <message>
        <source>{1} is before the row above it in its round ({2}); correct the time or put the rows in order</source>
        <translation>{1} es anterior a la fila de arriba en su ronda ({2}); corrija la hora u ordene las filas</translation>
    </message>
    <message>
        <source>{1} is below the freezing point {2} of this mixture; correct temperature or concentration</source>
        <translation>{1} está bajo el punto de congelación {2} de esta mezcla; corrija temperatura o concentración</translation>
    </message>
    <message>
        <source>{1} is below zero, the hoses are probably reversed; swap them and read again, or store {2}</source>
        <translation>{1} es menor que cero, las mangueras estarán invertidas; cámbielas y relea, o guarde {2}</translation>
    </message>
    <message>
        <source>{1} is below zero; a loss is zero or more</source>
        <translation>{1} es menor que cero; una pérdida es cero o más</translation>
    </message>
    <message>
        <source>{1} is below zero; type zero or more, or nothing</source>
        <translation>{1} es menor que cero; escriba cero o más, o nada</translation>
    </message>
    <message>
        <source>{1} is far from the expected {2}, in {3} it would be {4}; correct the unit, read again or give the reason</source>
        <translation>{1} está lejos de {2} esperado, en {3} sería {4}; corrija la unidad, relea o dé el motivo</translation>
    </message>
    <message>
        <source>{1} is far from {2} read at the same setting in round {3}; read again or give the reason</source>
        <translation>{1} está lejos de {2} leído con el mismo ajuste en la ronda {3}; relea o dé el motivo</translation>
    </message>
    <message>
        <source>{1} is far from {2} that the design flow needs at this setting; read again or give the reason</source>
        <translation>{1} está lejos de {2} que el caudal de diseño necesita con este ajuste; relea o dé el motivo</translation>
    </message>
    <message>
        <source>{1} is fed by this branch itself; choose a branch nearer the pump</source>
        <translation>{1} se alimenta de este mismo ramal; elija un ramal más cerca de la bomba</translation>
    </message>
    <message>
        <source>{1} is in table {2} but not in the journal; another program put it there, do not trust it</source>
        <translation>{1} está en la tabla {2} pero no en el diario; otro programa lo puso ahí, no se fíe</translation>
    </message>
    <message>
        <source>{1} is in the journal but not in table {2}; another program removed it, open a copy from before</source>
        <translation>{1} está en el diario pero no en la tabla {2}; otro programa lo quitó, abra una copia anterior</translation>
    </message>
    <message>
        <source>{1} is negative; this value must be {2}, correct it</source>
        <translation>{1} es negativo; este valor debe ser {2}, corríjalo</translation>
    </message>
    <message>
        <source>{1} is no height of a building above the sea; type one within -500 and 6000 m</source>
        <translation>{1} no es la altitud de un edificio; escriba una entre -500 y 6000 m</translation>
    </message>
    <message>
        <source>{1} is not a number that a deficiency can have; give one that is free, from 1</source>
        <translation>{1} no es un número que pueda tener una deficiencia; dé uno libre, desde 1</translation>
    </message>
    <message>
        <source>{1} is not above zero; type a value above zero</source>
        <translation>{1} no es mayor que cero; escriba un valor mayor que cero</translation>
    </message>
    <message>
        <source>{1} is not after the calibration of {2}; correct one of the dates</source>
        <translation>{1} no es posterior a la calibración del {2}; corrija una de las fechas</translation>
    </message>
    <message>
        <source>{1} is not below zero; type the lower limit as -10</source>
        <translation>{1} no es menor que cero; escriba el límite inferior como -10</translation>
    </message>
    <message>
        <source>{1} is not on the scale, {2} to {3}; type what the handle shows</source>
        <translation>{1} no está en la escala, {2} a {3}; escriba lo que muestra el volante</translation>
    </message>
    <message>
        <source>{1} is not on this valve&apos;s scale, {2} to {3}, and is not stored; correct the setting</source>
        <translation>{1} no está en la escala de esta válvula, {2} a {3}, y no se guarda; corrija el ajuste</translation>
    </message>
    <message>
        <source>{1} is off the valve&apos;s scale, {2} to {3}; correct the setting or the valve</source>
        <translation>{1} está fuera de la escala de la válvula, {2} a {3}; corrija el ajuste o la válvula</translation>
    </message>
    <message>
        <source>{1} is off this valve&apos;s scale, {2} to {3}; correct the setting</source>
        <translation>{1} está fuera de la escala de esta válvula, {2} a {3}; corrija el ajuste</translation>
    </message>
    <message>
        <source>{1} is out of reason; type a value within {2} %</source>
        <translation>{1} no es razonable; escriba un valor dentro del {2} %</translation>
    </message>
    <message>
        <source>{1} is outside this valve&apos;s scale, {2} to {3}; type what the handle shows</source>
        <translation>{1} está fuera de la escala de esta válvula, {2} a {3}; escriba lo que muestra el volante</translation>
    </message>
    <message>
        <source>{1} is outside {2} to {3}; correct it</source>
        <translation>{1} está fuera de {2} a {3}; corríjalo</translation>
    </message>
    <message>
        <source>{1} is too large to be true; check digits and unit</source>
        <translation>{1} es demasiado grande para ser cierto; compruebe cifras y unidad</translation>
    </message>
    <message>
        <source>{1} is {2} % of the range {3} of instrument {4}; read between 10 and 95 % of it with another instrument</source>
        <translation>{1} es el {2} % del rango {3} del instrumento {4}; lea entre el 10 y el 95 % con otro instrumento</translation>
    </message>
    <message>
        <source>{1} lies on the index circuit and its valve stands at {2} of {3}; open it fully and match the others to it</source>
        <translation>{1} está en el circuito más desfavorable y su válvula está en {2} de {3}; ábrala del todo e iguale las demás a ella</translation>
    </message>
    <message>
        <source>{1} of {2} dps are digit for digit those of round {3}; check that they were read and not copied</source>
        <translation>{1} de {2} Δp son cifra a cifra las de la ronda {3}; compruebe que se leyeron y no se copiaron</translation>
    </message>
    <message>
        <source>{1} of {2} dps read the same {3}; check that they were read and not copied</source>
        <translation>{1} de {2} Δp dicen lo mismo, {3}; compruebe que se leyeron y no se copiaron</translation>
    </message>
    <message>
        <source>{1} of {2} flows equal their design flow to a tenth of a percent; check that they were read and not copied</source>
        <translation>{1} de {2} caudales igualan su caudal de diseño a una décima de por ciento; compruebe que se leyeron y no se copiaron</translation>
    </message>
    <message>
        <source>{1} of {2} lines that must hold are done or do not apply.</source>
        <translation>{1} de {2} líneas obligatorias están hechas o no proceden.</translation>
    </message>
    <message>
        <source>{1} of {2} terminals have neither a reading nor a reason; read them or say why not</source>
        <translation>{1} de {2} terminales no tienen ni lectura ni motivo; léalos o diga por qué no</translation>
    </message>
    <message>
        <source>{1} of {2} terminals on share (of target within 100 ± {3} %)</source>
        <translation>{1} de {2} terminales en cuota (del objetivo dentro de 100 ± {3} %)</translation>
    </message>
    <message>
        <source>{1} on record, of these open: {2}.</source>
        <translation>{1} anotadas, de ellas abiertas: {2}.</translation>
    </message>
    <message>
        <source>{1} pumps share this duty; trim all alike, and the stand-by with them</source>
        <translation>{1} bombas comparten este punto de trabajo; recorte todas igual, y la de reserva con ellas</translation>
    </message>
    <message>
        <source>{1} read it again who had read it before; have somebody else read the sample</source>
        <translation>{1} releyó lo que había leído antes; que otra persona lea la muestra</translation>
    </message>
    <message>
        <source>{1} readings of this round are dated before the one entered before them, the first is of {2} after {3}; check the clock and correct the time</source>
        <translation>{1} lecturas de esta ronda tienen fecha anterior a la introducida antes, la primera es del {2} tras {3}; compruebe el reloj y corrija la hora</translation>
    </message>
    <message>
        <source>{1} was read in {2}, most readings of instrument {3} in this round are in {4}; check the unit</source>
        <translation>{1} se leyó en {2}, la mayoría de lecturas del instrumento {3} en esta ronda están en {4}; compruebe la unidad</translation>
    </message>
    <message>
        <source>{1} {4}, {2} % of the design flow of {3} {4}</source>
        <translation>{1} {4}, {2} % del caudal de diseño de {3} {4}</translation>
    </message>
    <message>
        <source>{1}, certificate by {2}</source>
        <translation>{1}, certificado de {2}</translation>
    </message>
    <message>
        <source>{1}, listed in section {2}</source>
        <translation>{1}, listadas en la sección {2}</translation>
    </message>
    <message>
        <source>{1}. {2}; press Ctrl+U to store {3}</source>
        <translation>{1}. {2}; pulse Ctrl+U para guardar {3}</translation>
    </message>
    <message>
        <source>{1}: {3} of table {2} is not what the journal says ({4} instead of {5}); another program changed it, do not trust it</source>
        <translation>{1}: {3} de la tabla {2} no es lo que dice el diario ({4} en vez de {5}); otro programa lo cambió, no se fíe</translation>
    </message>
    <message>
        <source>P₂/P₁ = (n₂/n₁)³ = {1}: {2} % {3w}</source>
        <translation>P₂/P₁ = (n₂/n₁)³ = {1}: {2} % {3w}</translation>
    </message>
    <message>
        <source>Reason given: {1}</source>
        <translation>Motivo dado: {1}</translation>
    </message>
    <message>
        <source>Round {1} ({2w}), {3}</source>
        <translation>Ronda {1} ({2w}), {3}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no kind of branch; type one of {2w}</source>
        <translation>«{1}» no es un tipo de ramal; escriba uno de {2w}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is none of the words of this column; type one of {2w}</source>
        <translation>«{1}» no es ninguna de las palabras de esta columna; escriba una de {2w}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit of this value; use one of {2}</source>
        <translation>«{1}» no es una unidad de este valor; use una de {2}</translation>
    </message>
    <message>
        <source>a reading of round {1}, which is {2w}, is neither changed nor removed; enter a reading that corrects it</source>
        <translation>una lectura de la ronda {1} ({2w}) no se cambia ni se quita; introduzca una lectura que la corrija</translation>
    </message>
    <message>
        <source>could not be read: no reason given</source>
        <translation>no se pudo leer: sin motivo dado</translation>
    </message>
    <message>
        <source>doubtful reading {1w} kept: no reason given</source>
        <translation>lectura dudosa {1w} mantenida: sin motivo dado</translation>
    </message>
    <message>
        <source>doubtful reading {1w} kept: {2}</source>
        <translation>lectura dudosa {1w} mantenida: {2}</translation>
    </message>
    <message>
        <source>flow by {1w} is {2} and by {3w} is {4}, z = {5}: more apart than their uncertainties allow; find out which is wrong</source>
        <translation>el caudal según {1w} es {2} y según {3w} es {4}, z = {5}: más lejos de lo que permiten sus incertidumbres; averigüe cuál falla</translation>
    </message>
    <message>
        <source>round {1} is {2w} and is neither removed nor numbered anew; open a new round</source>
        <translation>la ronda {1} está en el estado «{2w}» y no se quita ni se renumera; abra una ronda nueva</translation>
    </message>
    <message>
        <source>round {1} is {2w} and takes only readings that correct one of its own; say which reading this one corrects, or open a new round</source>
        <translation>la ronda {1} está en el estado «{2w}» y solo admite lecturas que corrijan una suya; diga cuál corrige esta, o abra una ronda nueva</translation>
    </message>
    <message>
        <source>round {1} is {2w}, and withdrawing that needs a reason; give it</source>
        <translation>la ronda {1} está en el estado «{2w}», y retirarlo necesita un motivo; delo</translation>
    </message>
    <message>
        <source>round {1} is {2w}, so nothing in it is chosen; withdraw that first, with a reason</source>
        <translation>la ronda {1} está en el estado «{2w}», así que en ella no se elige nada; retire antes eso, con un motivo</translation>
    </message>
    <message>
        <source>spread {1} %</source>
        <translation>dispersión {1} %</translation>
    </message>
    <message>
        <source>tested again {1}</source>
        <translation>comprobada de nuevo el {1}</translation>
    </message>
    <message>
        <source>tested by {1w}, {2w}; the authority having jurisdiction decides</source>
        <translation>probado según: {1w}, {2w}; decide la autoridad competente</translation>
    </message>
    <message>
        <source>the PDF is damaged or not whole ({1w}); ask for the file again from whoever wrote it</source>
        <translation>el PDF está dañado o incompleto ({1w}); pida otra vez el archivo a quien lo escribió</translation>
    </message>
    <message>
        <source>the PDF is of a form that is not read here ({1w}); give the report as Waterwright wrote it</source>
        <translation>el PDF tiene una forma que aquí no se lee ({1w}); dé el informe como lo escribió Waterwright</translation>
    </message>
    <message>
        <source>the file cannot be read ({1w}); check its rights and the disk it is on</source>
        <translation>no se puede leer el archivo ({1w}); compruebe sus permisos y el disco</translation>
    </message>
    <message>
        <source>the file cannot be written ({1w}); check its rights, its folder and the free space, nothing was changed</source>
        <translation>no se puede escribir el archivo ({1w}); compruebe sus permisos, su carpeta y el espacio libre, no se cambió nada</translation>
    </message>
    <message>
        <source>the fluid is {1w} but its concentration is 0 %, so flows are computed as for water; enter the concentration</source>
        <translation>el fluido es {1w} pero su concentración es 0 %, así que los caudales se calculan como agua; introduzca la concentración</translation>
    </message>
    <message>
        <source>the readings do not fit the loop as designed (probability {1w} %); look for a control valve that moves, air, a strainer or a pipe that the schedule lacks, the uncertainties given are too small</source>
        <translation>las lecturas no casan con la red diseñada (probabilidad {1w} %); busque una válvula de control que se mueve, aire, un filtro o un tubo que falta en la lista, las incertidumbres son demasiado pequeñas</translation>
    </message>
    <message>
        <source>the signature could not be made ({1w}); nothing was changed, try another key</source>
        <translation>no se pudo firmar ({1w}); no se cambió nada, pruebe otra clave</translation>
    </message>
    <message>
        <source>the throttle keeps wasting {1} of head, {2w} at the shaft; leave it only where the energy code exempts the pump</source>
        <translation>la estrangulación sigue desperdiciando {1} de altura, {2w} en el eje; déjela solo donde el código energético exime a la bomba</translation>
    </message>
    <message>
        <source>there is a {1w} of this name already; choose another name</source>
        <translation>ya existe este nombre ({1w}); elija otro</translation>
    </message>
    <message>
        <source>this refers to a {1w} that is not in the job; add it first or choose another</source>
        <translation>esto se refiere a algo que no está en la obra ({1w}); añádalo antes o elija otro</translation>
    </message>
    <message>
        <source>withdrawn: {1}</source>
        <translation>retirado: {1}</translation>
    </message>
    <message>
        <source>{1w} corrected to {2w} at {3w} by a person not written</source>
        <translation>{1w} corregido a {2w} ({3w}), persona sin anotar</translation>
    </message>
    <message>
        <source>{1w} corrected to {2w} at {3w} by {4}</source>
        <translation>{1w} corregido a {2w} ({3w}) por {4}</translation>
    </message>
    <message>
        <source>{1w} struck: no reason given</source>
        <translation>{1w} tachado: sin motivo dado</translation>
    </message>
    <message>
        <source>{1w} struck: {2}</source>
        <translation>{1w} tachado: {2}</translation>
    </message>
    <message>
        <source>{1w} {2} by mass at {3}, density {4} kg/m³</source>
        <translation>{1w} {2} en masa a {3}, densidad {4} kg/m³</translation>
    </message>
    <message>
        <source>{1w} {2} is still used by {3w} {4}; remove that first or let it use another</source>
        <translation>{1w} {2} aún se usa: {3w} {4}; quite antes eso o haga que use otro</translation>
    </message>
    <message>
        <source>{1w}, round {2}</source>
        <translation>{1w}, ronda {2}</translation>
    </message>
    <message>
        <source>{1w}; limits {2w} to {3w}; flow {4w}, speed {5w}</source>
        <translation>{1w}; límites {2w} a {3w}; caudal {4w}, velocidad {5w}</translation>
    </message>
    <message>
        <source>{1} (the same)</source>
        <translation>{1} (el mismo)</translation>
    </message>
    <message>
        <source>{1} by the head at shutoff; the record says {2w}</source>
        <translation>{1} por la altura a caudal nulo; consta {2w}</translation>
    </message>
    <message>
        <source>{1} file</source>
        <translation>{1} archivo</translation>
    </message>
    <message>
        <source>{1} files</source>
        <translation>{1} archivos</translation>
    </message>
    <message>
        <source>{1} kWh and {2w} more than with the pump reduced</source>
        <translation>{1} kWh y {2w} más que con la bomba reducida</translation>
    </message>
    <message>
        <source>{1} of {2}</source>
        <translation>{1} de {2}</translation>
    </message>
    <message>
        <source>{1} open</source>
        <translation>{1} abierta</translation>
    </message>
    <message>
        <source>{1} self-made</source>
        <translation>{1} propio</translation>
    </message>
    <message>
        <source>{1}, behind {2w}</source>
        <translation>{1}, detrás de {2w}</translation>
    </message>
    <message>
        <source>{1}, index</source>
        <translation>{1}, más desfavorable</translation>
    </message>
    <message>
        <source>the cell has a formula whose result was not stored; open the file in a spreadsheet program and save it</source>
        <translation>la celda tiene una fórmula cuyo resultado no se guardó; abra el archivo en una hoja de cálculo y guárdelo</translation>
    </message>
    <message>
        <source>the cell {1} lies beyond column {2}, where no table reaches; clear it</source>
        <translation>la celda {1} está más allá de la columna {2}, adonde no llega ninguna tabla; vacíela</translation>
    </message>
    <message>
        <source>the file has a password or is of the older binary kind; save it as XLSX without a password</source>
        <translation>el archivo tiene contraseña o es del tipo binario antiguo; guárdelo como XLSX sin contraseña</translation>
    </message>
    <message>
        <source>the file has {1} MB, more than the {2} MB that a spreadsheet may have; take out what is not needed</source>
        <translation>el archivo tiene {1} MB, más de los {2} MB que admite una hoja de cálculo; quite lo que no haga falta</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; cannot be understood (line {2}); open the file in a spreadsheet program and save it anew as XLSX</source>
        <translation>la parte «{1}» no se entiende (línea {2}); abra el archivo en una hoja de cálculo y guárdelo otra vez como XLSX</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; declares a document type, which no spreadsheet does, so it is not read; save it anew</source>
        <translation>la parte «{1}» declara un tipo de documento, lo que ninguna hoja hace, así que no se lee; guárdela otra vez</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; is missing; open the file in a spreadsheet program and save it anew as XLSX</source>
        <translation>falta la parte «{1}»; abra el archivo en una hoja de cálculo y guárdelo otra vez como XLSX</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; unpacks to more than a sheet of tables can need, so it is not read; save the tables alone as a new XLSX</source>
        <translation>la parte «{1}» descomprimida ocupa más de lo que puede necesitar una hoja de tablas, así que no se lee; guarde solo las tablas como un XLSX nuevo</translation>
    </message>
    <message>
        <source>the sheet &quot;{1}&quot; has more than {2} cells; take out what is not needed</source>
        <translation>la hoja «{1}» tiene más de {2} celdas; quite lo que no haga falta</translation>
    </message>
    <message>
        <source>the sheet is empty; give it a row of headings and data</source>
        <translation>la hoja está vacía; póngale encabezado y datos</translation>
    </message>
    <message>
        <source>there is no sheet &quot;{1}&quot; in the spreadsheet; add it, or give a sheet that name</source>
        <translation>no hay hoja «{1}» en el libro de cálculo; añádala, o dé ese nombre a una hoja</translation>
    </message>
    <message>
        <source>there is no such file; give the name of a spreadsheet or a folder of tables</source>
        <translation>no existe tal archivo; dé el nombre de una hoja de cálculo o de una carpeta de tablas</translation>
    </message>
    <message>
        <source>A forecast, not a reading: nothing was built or turned. Pipe sizes, expansion, relief and the electrical supply of a changed loop are for licensed engineers and local codes to decide.</source>
        <translation>Un pronóstico, no una lectura: no se construyó ni se giró nada. Tamaños de tubo, expansión, alivio y alimentación eléctrica de una red cambiada los deciden ingenieros autorizados y las normas locales.</translation>
    </message>
    <message>
        <source>No round was read yet: settings are those entered, resistances those of the design.</source>
        <translation>Aún no se leyó ninguna ronda: los ajustes son los introducidos, las resistencias las del diseño.</translation>
    </message>
    <message>
        <source>Settings are those of round {1}; resistances are learned from the readings where there are enough, else taken from the design.</source>
        <translation>Los ajustes son los de la ronda {1}; las resistencias se aprenden de las lecturas donde hay bastantes, si no se toman del diseño.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is in the job already; leave the row out, or give it another name</source>
        <translation>«{1}» ya está en la obra; deje fuera la fila o dele otro nombre</translation>
    </message>
    <message>
        <source>a valve model needs a name; type it as its maker&apos;s table has it</source>
        <translation>un modelo de válvula necesita un nombre; escríbalo como en la tabla del fabricante</translation>
    </message>
    <message>
        <source>added at the pump, {1} at design</source>
        <translation>añadido en la bomba, {1} en diseño</translation>
    </message>
    <message>
        <source>added below {1}, {2} at design</source>
        <translation>añadido aguas abajo de {1}, {2} en diseño</translation>
    </message>
    <message>
        <source>line {1} has no two columns; copy the settings and the coefficients beside them</source>
        <translation>la línea {1} no tiene dos columnas; copie los ajustes con los coeficientes al lado</translation>
    </message>
    <message>
        <source>line {1}: &quot;{2}&quot; is not a number from 0; correct it where it was copied from</source>
        <translation>línea {1}: «{2}» no es un número desde 0; corríjalo donde se copió</translation>
    </message>
    <message>
        <source>no branch of the same pipe is before or after this one; move it to another pipe by &quot;Fed by&quot;</source>
        <translation>ningún ramal del mismo tubo está antes o después de este; llévelo a otro tubo con «Alimentado por»</translation>
    </message>
    <message>
        <source>round {1} is closed, so this corrects its reading and the old value stays in the history; for new readings take it back (Ctrl+Z) and open the next round (Ctrl+Shift+N)</source>
        <translation>la ronda {1} está cerrada, así que esto corrige su lectura y el valor anterior queda en el historial; para lecturas nuevas deshágalo (Ctrl+Z) y abra la ronda siguiente (Ctrl+Mayús+N)</translation>
    </message>
    <message>
        <source>round {1} is with the supervisor and takes no more readings here; open the next round</source>
        <translation>la ronda {1} la tiene el supervisor y aquí no admite más lecturas; abra la ronda siguiente</translation>
    </message>
    <message>
        <source>taken away with all below it</source>
        <translation>quitado con todo lo que hay aguas abajo</translation>
    </message>
    <message>
        <source>the checkpoint &quot;{1}&quot; is stored; Ctrl+Shift+H shows the job as it stood there</source>
        <translation>el punto de control «{1}» está guardado; Ctrl+Mayús+H muestra la obra como estaba ahí</translation>
    </message>
    <message>
        <source>the most dp {1} is not above the least dp {2}; type another</source>
        <translation>la Δp máxima {1} no supera la mínima {2}; escriba otra</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; has its curve in the job already; leave its rows out</source>
        <translation>la bomba «{1}» ya tiene su curva en la obra; deje fuera sus filas</translation>
    </message>
    <message>
        <source>the table has no rows below its headings; fill it in</source>
        <translation>la tabla no tiene filas bajo sus encabezados; rellénela</translation>
    </message>
    <message>
        <source>this valve has no scale or no setting to step from; type its setting (Tab)</source>
        <translation>esta válvula no tiene escala o ajuste del que partir; escriba su ajuste (Tab)</translation>
    </message>
    <message>
        <source>{2} at design instead of {1}</source>
        <translation>{2} en diseño en vez de {1}</translation>
    </message>
    <message>
        <source>Last dp</source>
        <translation>Última Δp</translation>
    </message>
    <message>
        <source>Meter: {1}    Serial: ____________    Zero before: __________    Zero after: __________</source>
        <translation>Medidor: {1}    Serie: ____________    Cero antes: __________    Cero después: __________</translation>
    </message>
    <message>
        <source>Read by: ____________________    Date: ______________    Unit of dp: {1}</source>
        <translation>Leído por: ____________________    Fecha: ______________    Unidad de Δp: {1}</translation>
    </message>
    <message>
        <source>Round {1} ({2w}): readings in the order of the route</source>
        <translation>Ronda {1} ({2w}): lecturas en el orden del recorrido</translation>
    </message>
    <message>
        <source>Set now</source>
        <translation>Puesto en</translation>
    </message>
    <message>
        <source>Setting found</source>
        <translation>Ajuste hallado</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Válvula</translation>
    </message>
    <message>
        <source>dp read</source>
        <translation>Δp leída</translation>
    </message>
    <message>
        <source>the handbook does not stand beside the program; install the program anew</source>
        <translation>el manual no está junto al programa; instale el programa otra vez</translation>
    </message>
    <message>
        <source>the sample jobs do not stand beside the program; install the program anew</source>
        <translation>las obras de ejemplo no están junto al programa; instale el programa otra vez</translation>
    </message>
    <message>
        <source>there is no row to import; choose a CSV or XLSX file with headings and rows</source>
        <translation>no hay fila que importar; elija un archivo CSV o XLSX con encabezados y filas</translation>
    </message>
    <message>
        <source>what was asked for is in {1}; open it from there</source>
        <translation>lo pedido está en {1}; ábralo desde ahí</translation>
    </message>
    <message>
        <source>{1} cannot be written ({2}); choose a place with room</source>
        <translation>{1} no se puede escribir ({2}); elija un lugar con espacio</translation>
    </message>
    <message>
        <source>{1} is in the job; Ctrl+Z takes it back</source>
        <translation>{1} está en la obra; Ctrl+Z lo deshace</translation>
    </message>
    <message>
        <source>Not shown that this circuit governs the pump head: the part that is missing is marked above; mend it, or sign with the reason.</source>
        <translation>No consta que este circuito determine la altura de la bomba: lo que falta está marcado arriba; corríjalo o firme con el motivo.</translation>
    </message>
    <message>
        <source>Not shown that {1} is the index: it takes {2} % of design, and fully open too with less are {3}; match groups and risers, read again, or sign with the reason</source>
        <translation>No consta que {1} sea el punto más desfavorable: toma el {2} % del diseño, también totalmente abiertos con menos: {3}; equilibre grupos y montantes, lea de nuevo o firme con el motivo</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no supervisor or engineer of this job; let one of them work at this desk, menu Round, Person: {2}</source>
        <translation>«{1}» no es supervisor ni ingeniero de esta obra; ponga a uno de ellos en este puesto, menú Ronda, Persona: {2}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is typed and not stored; store it with Enter or clear it with Esc before the handle moves</source>
        <translation>«{1}» está tecleado y sin guardar; guárdelo con Intro o bórrelo con Esc antes de mover el volante</translation>
    </message>
    <message>
        <source>a step of a review is not undone; withdraw it with a reason on the place Review (Alt+6), below the rounds</source>
        <translation>un paso de revisión no se deshace; retírelo con un motivo en Revisión (Alt+6), debajo de las rondas</translation>
    </message>
    <message>
        <source>done again: {1}; Ctrl+Z takes it back</source>
        <translation>rehecho: {1}; Ctrl+Z lo deshace</translation>
    </message>
    <message>
        <source>every valve of the walk is read; close the round (Ctrl+Shift+W), or read this one again (Ctrl+R)</source>
        <translation>cada válvula del recorrido está leída; cierre la ronda (Ctrl+Mayús+W) o relea esta (Ctrl+R)</translation>
    </message>
    <message>
        <source>every valve on the path to {1} is fully open, but it is not shown to be the index</source>
        <translation>todas las válvulas del camino a {1} están totalmente abiertas, pero no consta que sea el punto más desfavorable</translation>
    </message>
    <message>
        <source>its flow changed by {1} % against its neighbours since round {2}, with no valve moved around it; look for air, a clogged strainer or a moving control valve</source>
        <translation>su caudal cambió un {1} % frente a los vecinos desde la ronda {2}, sin mover válvulas a su alrededor; busque aire, un filtro obstruido o una válvula de control que se mueve</translation>
    </message>
    <message>
        <source>its valve is fully open and it takes {1} % of design, less than {2} on the index circuit with {3} %; match groups and risers, read both again, or give the reason</source>
        <translation>su válvula está totalmente abierta y toma el {1} % del diseño, menos que {2} en el circuito más desfavorable con el {3} %; equilibre grupos y montantes, lea ambas de nuevo o dé el motivo</translation>
    </message>
    <message>
        <source>no comment is open and no item waits; close round {1} with Ctrl+Shift+W</source>
        <translation>no hay comentario abierto ni nada pendiente; cierre la ronda {1} con Ctrl+Mayús+W</translation>
    </message>
    <message>
        <source>no comment is open and no item waits; open the next round (Ctrl+Shift+N), or go on with the report (Alt+7)</source>
        <translation>no hay comentario abierto ni nada pendiente; abra la ronda siguiente (Ctrl+Mayús+N) o siga con el informe (Alt+7)</translation>
    </message>
    <message>
        <source>no key file is chosen; choose one, or make a certificate</source>
        <translation>no se ha elegido archivo de clave; elija uno o cree un certificado</translation>
    </message>
    <message>
        <source>no person is chosen at this desk, so readings name nobody; choose one in the menu Round, Person</source>
        <translation>no hay persona elegida en este puesto, así que las lecturas no nombran a nadie; elija una en el menú Ronda, Persona</translation>
    </message>
    <message>
        <source>read-and-set leaves {1} more across the index valve {2} than its open drop, {3w} at the shaft</source>
        <translation>leer y ajustar deja {1} más en la válvula más desfavorable {2} que su pérdida con la válvula abierta, {3w} en el eje</translation>
    </message>
    <message>
        <source>readings of the final round that name no person: {1} of {2}; choose the person (Round, Person) before reading</source>
        <translation>lecturas de la ronda final que no nombran a nadie: {1} de {2}; elija la persona (Ronda, Persona) antes de leer</translation>
    </message>
    <message>
        <source>round {1} opened; close it (Ctrl+Shift+W) once its valves are held and read</source>
        <translation>ronda {1} abierta; ciérrela (Ctrl+Mayús+W) cuando sus válvulas estén mantenidas y leídas</translation>
    </message>
    <message>
        <source>round {1} opened; look at this first: {2}</source>
        <translation>ronda {1} abierta; mire primero esto: {2}</translation>
    </message>
    <message>
        <source>the impeller in the pump is not known, the trimmed one would have {1} % of its diameter; find it with a shutoff test or enter it</source>
        <translation>el rodete de la bomba se desconoce, recortado tendría el {1} % de su diámetro; hállelo con una prueba a caudal nulo o introdúzcalo</translation>
    </message>
    <message>
        <source>the job open here last is {1}; the menu File, Open Recent opens it</source>
        <translation>la última obra abierta aquí es {1}; el menú Archivo, Abrir recientes, la abre</translation>
    </message>
    <message>
        <source>the passphrase of the key is missing; type it here</source>
        <translation>falta la contraseña de la clave; escríbala aquí</translation>
    </message>
    <message>
        <source>undone: {1}; Ctrl+Shift+Z does it again</source>
        <translation>deshecho: {1}; Ctrl+Mayús+Z lo rehace</translation>
    </message>
    <message>
        <source>{1} is above the range of instrument {2}, which ends at {3}; read again, with another instrument if need be, or give the reason</source>
        <translation>{1} supera el rango del instrumento {2}, que termina en {3}; relea, con otro instrumento si hace falta, o dé el motivo</translation>
    </message>
    <message>
        <source>{1} is named elsewhere in the job ({2w}) and stays; correct the row, or add another person</source>
        <translation>{1} se nombra en otra parte de la obra ({2w}) y se queda; corrija la fila o añada otra persona</translation>
    </message>
    <message>
        <source>{1}; press Ctrl+R to read it again</source>
        <translation>{1}; pulse Ctrl+R para releer</translation>
    </message>
    <message>
        <source>{1}; press Ctrl+U to store {2}</source>
        <translation>{1}; pulse Ctrl+U para guardar {2}</translation>
    </message>
    <message>
        <source>{1} was not written: this can be written with the ending {2}; give the file one of these</source>
        <translation>{1} no se escribió: la extensión posible es {2}; dé una de estas al archivo</translation>
    </message>
    <message>
        <source>1 pasted reading</source>
        <translation>1 lectura pegada</translation>
    </message>
    <message>
        <source>Caution: hot or chilled water and pressure. Check rating and fittings of the hoses, open test ports slowly, vent the meter, keep clear of moving and live parts; local codes and the site&apos;s rules come first.</source>
        <translation>Precaución: agua caliente o fría y presión. Compruebe la presión nominal y los racores de las mangueras, abra despacio las tomas, purgue el medidor, manténgase lejos de partes móviles y con tensión; las normas locales y las reglas de la instalación van primero.</translation>
    </message>
    <message>
        <source>Change of zones</source>
        <translation>Cambio de zonas</translation>
    </message>
    <message>
        <source>Computed from</source>
        <translation>Calculado con</translation>
    </message>
    <message>
        <source>DP {1} at the reference, {2}</source>
        <translation>Δp {1} en la referencia, {2}</translation>
    </message>
    <message>
        <source>DP {1} at {2}, {3}</source>
        <translation>Δp {1} en {2}, {3}</translation>
    </message>
    <message>
        <source>DP {1} in place of {2}, {3}</source>
        <translation>Δp {1} en lugar de {2}, {3}</translation>
    </message>
    <message>
        <source>DP {1} read again, {2}</source>
        <translation>Δp {1} leída otra vez, {2}</translation>
    </message>
    <message>
        <source>DP {1} with the valve shut, {2}</source>
        <translation>Δp {1} con la válvula cerrada, {2}</translation>
    </message>
    <message>
        <source>DP {1}, {2}</source>
        <translation>Δp {1}, {2}</translation>
    </message>
    <message>
        <source>Import from {1}</source>
        <translation>Importación de {1}</translation>
    </message>
    <message>
        <source>Last round read</source>
        <translation>Última ronda leída</translation>
    </message>
    <message>
        <source>New job {1}</source>
        <translation>Nueva obra {1}</translation>
    </message>
    <message>
        <source>New practice job</source>
        <translation>Nueva obra de práctica</translation>
    </message>
    <message>
        <source>Record readings from {1}</source>
        <translation>Lecturas tomadas de {1}</translation>
    </message>
    <message>
        <source>Sign the report</source>
        <translation>Firmar el informe</translation>
    </message>
    <message>
        <source>The loop in the last round read</source>
        <translation>La red en la última ronda leída</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit of {2w}; use one of {3}</source>
        <translation>«{1}» no es una unidad de {2w}; use una de {3}</translation>
    </message>
    <message>
        <source>accept round {1}</source>
        <translation>aceptar la ronda {1}</translation>
    </message>
    <message>
        <source>all {1} terminals were read in the last round</source>
        <translation>los {1} terminales se leyeron en la última ronda</translation>
    </message>
    <message>
        <source>answer to comment on {1w}</source>
        <translation>respuesta al comentario sobre {1w}</translation>
    </message>
    <message>
        <source>branch {1}</source>
        <translation>ramal {1}</translation>
    </message>
    <message>
        <source>cannot be read, {1}</source>
        <translation>no se puede leer, {1}</translation>
    </message>
    <message>
        <source>checkpoint {1}</source>
        <translation>punto de control {1}</translation>
    </message>
    <message>
        <source>choice of both, {1}</source>
        <translation>elegidos ambos, {1}</translation>
    </message>
    <message>
        <source>choice of {1}, {2}</source>
        <translation>elegido {1}, {2}</translation>
    </message>
    <message>
        <source>clock of {1}, nothing added</source>
        <translation>reloj de {1}, nada añadido</translation>
    </message>
    <message>
        <source>clock of {1}, {2} added</source>
        <translation>reloj de {1}, {2} añadido</translation>
    </message>
    <message>
        <source>close round {1}</source>
        <translation>cerrar la ronda {1}</translation>
    </message>
    <message>
        <source>comment on {1w}</source>
        <translation>comentario sobre {1w}</translation>
    </message>
    <message>
        <source>curve of {1}</source>
        <translation>curva de {1}</translation>
    </message>
    <message>
        <source>deficiency {1}</source>
        <translation>deficiencia {1}</translation>
    </message>
    <message>
        <source>device at {1}</source>
        <translation>dispositivo en {1}</translation>
    </message>
    <message>
        <source>doubtful, {1}</source>
        <translation>dudoso, {1}</translation>
    </message>
    <message>
        <source>flow {1}, {2}</source>
        <translation>caudal {1}, {2}</translation>
    </message>
    <message>
        <source>fluid of the job</source>
        <translation>fluido de la obra</translation>
    </message>
    <message>
        <source>form of the energy code&apos;s clause</source>
        <translation>forma de la cláusula del código energético</translation>
    </message>
    <message>
        <source>gauge rise {1}, {2}</source>
        <translation>subida en el manómetro {1}, {2}</translation>
    </message>
    <message>
        <source>hold at {1}, {2}</source>
        <translation>mantener en {1}, {2}</translation>
    </message>
    <message>
        <source>instrument {1}</source>
        <translation>instrumento {1}</translation>
    </message>
    <message>
        <source>load of a year</source>
        <translation>carga de un año</translation>
    </message>
    <message>
        <source>merge of 1 action of {1}</source>
        <translation>fusión de 1 acción de {1}</translation>
    </message>
    <message>
        <source>merge of {1} actions of {2}</source>
        <translation>fusión de {1} acciones de {2}</translation>
    </message>
    <message>
        <source>meter {1} was due for calibration on {2}, {3} days ago; readings are kept and listed in the report, take another meter (menu Round, Meter) or give the reason (Job, If overdue, why)</source>
        <translation>el medidor {1} debía calibrarse el {2}, hace {3} días; las lecturas se conservan y constan en el informe, tome otro medidor (menú Ronda, Medidor) o dé el motivo (Obra, Si venció, por qué)</translation>
    </message>
    <message>
        <source>new branch {1}</source>
        <translation>nuevo ramal {1}</translation>
    </message>
    <message>
        <source>new instrument {1}</source>
        <translation>nuevo instrumento {1}</translation>
    </message>
    <message>
        <source>new job</source>
        <translation>nueva obra</translation>
    </message>
    <message>
        <source>new person</source>
        <translation>nueva persona</translation>
    </message>
    <message>
        <source>new pump {1}</source>
        <translation>nueva bomba {1}</translation>
    </message>
    <message>
        <source>new set-point {1}</source>
        <translation>nueva consigna {1}</translation>
    </message>
    <message>
        <source>new valve model {1}</source>
        <translation>nuevo modelo de válvula {1}</translation>
    </message>
    <message>
        <source>no reason, {1}</source>
        <translation>sin motivo, {1}</translation>
    </message>
    <message>
        <source>not doubtful, {1}</source>
        <translation>no dudoso, {1}</translation>
    </message>
    <message>
        <source>not stored, this is only in memory: {1}; Save a Copy Elsewhere, on the strip above, keeps it</source>
        <translation>sin guardar, solo en memoria: {1}; Guardar copia en otro sitio, en la franja de arriba, lo conserva</translation>
    </message>
    <message>
        <source>note, {1}</source>
        <translation>nota, {1}</translation>
    </message>
    <message>
        <source>notes, {1}</source>
        <translation>notas, {1}</translation>
    </message>
    <message>
        <source>nothing is added to this laptop&apos;s clock; times are its own from now on</source>
        <translation>no se suma nada al reloj de este portátil; desde ahora valen sus propias horas</translation>
    </message>
    <message>
        <source>open round {1}</source>
        <translation>abrir la ronda {1}</translation>
    </message>
    <message>
        <source>open round {1}, witness of {2} terminals</source>
        <translation>abrir la ronda {1}, testigo de {2} terminales</translation>
    </message>
    <message>
        <source>pasted table of {1}</source>
        <translation>tabla pegada de {1}</translation>
    </message>
    <message>
        <source>person {1}</source>
        <translation>persona {1}</translation>
    </message>
    <message>
        <source>photo {1}</source>
        <translation>foto {1}</translation>
    </message>
    <message>
        <source>readiness: {1}</source>
        <translation>preparación: {1}</translation>
    </message>
    <message>
        <source>reason, {1}</source>
        <translation>motivo, {1}</translation>
    </message>
    <message>
        <source>reason: {1}</source>
        <translation>motivo: {1}</translation>
    </message>
    <message>
        <source>remove instrument {1}</source>
        <translation>quitar el instrumento {1}</translation>
    </message>
    <message>
        <source>remove person {1}</source>
        <translation>quitar la persona {1}</translation>
    </message>
    <message>
        <source>remove photo</source>
        <translation>quitar la foto</translation>
    </message>
    <message>
        <source>remove readiness line: {1}</source>
        <translation>quitar la línea de preparación: {1}</translation>
    </message>
    <message>
        <source>remove set-point {1}</source>
        <translation>quitar la consigna {1}</translation>
    </message>
    <message>
        <source>reopen comment on {1w}</source>
        <translation>reabrir el comentario sobre {1w}</translation>
    </message>
    <message>
        <source>resolve comment on {1w}</source>
        <translation>resolver el comentario sobre {1w}</translation>
    </message>
    <message>
        <source>route of {1}</source>
        <translation>ruta de {1}</translation>
    </message>
    <message>
        <source>send back round {1}</source>
        <translation>devolver la ronda {1}</translation>
    </message>
    <message>
        <source>send round {1}</source>
        <translation>enviar la ronda {1}</translation>
    </message>
    <message>
        <source>set-point of {1}</source>
        <translation>consigna de {1}</translation>
    </message>
    <message>
        <source>setting {1} in place of {2}, {3}</source>
        <translation>ajuste {1} en lugar de {2}, {3}</translation>
    </message>
    <message>
        <source>setting {1}, {2}</source>
        <translation>ajuste {1}, {2}</translation>
    </message>
    <message>
        <source>table of {1}</source>
        <translation>tabla de {1}</translation>
    </message>
    <message>
        <source>test of {1}, {2w}: {3w} = {4}</source>
        <translation>prueba de {1}, {2w}: {3w} = {4}</translation>
    </message>
    <message>
        <source>the PDF has no place for the signature of the {1w}; write the report again</source>
        <translation>el PDF no tiene lugar para la firma «{1w}»; escriba otra vez el informe</translation>
    </message>
    <message>
        <source>the cell holds {1w} and not a value; mend its formula or write the value</source>
        <translation>la celda contiene {1w} y no un valor; corrija su fórmula o escriba el valor</translation>
    </message>
    <message>
        <source>the design losses: no learned loop that fits the readings was there</source>
        <translation>las pérdidas de diseño: no había una red aprendida que encaje con las lecturas</translation>
    </message>
    <message>
        <source>the file cannot be read ({1w}); check its permissions</source>
        <translation>no se puede leer el archivo ({1w}); compruebe sus permisos</translation>
    </message>
    <message>
        <source>the file is damaged ({1w}); keep it as it is and open a copy from before</source>
        <translation>el archivo está dañado ({1w}); déjelo como está y abra una copia anterior</translation>
    </message>
    <message>
        <source>the file is no XLSX spreadsheet, or is damaged ({1w}); save it anew as XLSX</source>
        <translation>el archivo no es una hoja XLSX o está dañado ({1w}); guárdelo otra vez como XLSX</translation>
    </message>
    <message>
        <source>the learned loop for all that stays, the losses entered here for what is new</source>
        <translation>la red aprendida para todo lo que queda, las pérdidas introducidas aquí para lo nuevo</translation>
    </message>
    <message>
        <source>the spreadsheet cannot be written ({1w}); choose a place with room</source>
        <translation>no se puede escribir la hoja de cálculo ({1w}); elija un lugar con espacio</translation>
    </message>
    <message>
        <source>the {1w} has signed already; a signed report is not signed over, write a new one</source>
        <translation>«{1w}» ya firmó; un informe firmado no se firma otra vez, escriba uno nuevo</translation>
    </message>
    <message>
        <source>this clock is {1} h {2} min before the last stored action, so times of readings are uncertain; Ctrl+Alt+O, Set Clock Offset, sets it right</source>
        <translation>este reloj está {1} h {2} min antes de la última acción guardada, así que las horas de las lecturas son inciertas; Ctrl+Alt+O, Corregir el reloj, lo arregla</translation>
    </message>
    <message>
        <source>units of the job</source>
        <translation>unidades de la obra</translation>
    </message>
    <message>
        <source>usual readiness list</source>
        <translation>lista de preparación usual</translation>
    </message>
    <message>
        <source>valve model {1} removed</source>
        <translation>modelo de válvula {1} quitado</translation>
    </message>
    <message>
        <source>withdraw revision {1} of the report</source>
        <translation>retirar la revisión {1} del informe</translation>
    </message>
    <message>
        <source>withdraw round {1}</source>
        <translation>retirar la ronda {1}</translation>
    </message>
    <message>
        <source>work goes on in the copy {1}; later open the first file and take this in with Ctrl+Shift+M, Merge Another Laptop</source>
        <translation>el trabajo sigue en la copia {1}; abra después el primer archivo e incorpore esta con Ctrl+Mayús+M, Fusionar otro portátil</translation>
    </message>
    <message>
        <source>written between {1} and {2} by the clock of {3}, which was set right later; the order of entry holds, not the times</source>
        <translation>escrito entre {1} y {2} por el reloj de {3}, corregido después; vale el orden de entrada, no las horas</translation>
    </message>
    <message>
        <source>{1w} of the job</source>
        <translation>{1w} de la obra</translation>
    </message>
    <message>
        <source>{1w} of {2}</source>
        <translation>{1w} de {2}</translation>
    </message>
    <message>
        <source>{1} % by mass is outside the range of {2w}, {3} to {4} %; correct the concentration</source>
        <translation>{1} % en masa está fuera del rango de {2w}, de {3} a {4} %; corrija la concentración</translation>
    </message>
    <message>
        <source>{1} are added to this laptop&apos;s clock in this job; once its own clock is right, Ctrl+Alt+O takes that back</source>
        <translation>en esta obra se suman {1} al reloj de este portátil; cuando su propio reloj esté bien, Ctrl+Alt+O lo retira</translation>
    </message>
    <message>
        <source>{1} is outside the range of {2w}, {3} to {4}; correct the temperature</source>
        <translation>{1} está fuera del rango de {2w}, {3} a {4}; corrija la temperatura</translation>
    </message>
    <message>
        <source>{1} pasted readings</source>
        <translation>{1} lecturas pegadas</translation>
    </message>
    <message>
        <source>{3} took back what was added to this laptop&apos;s clock: it showed {1} when it was {2}; times written before stay as they were</source>
        <translation>{3} retiró lo que se sumaba al reloj de este portátil: marcaba {1} cuando eran {2}; las horas escritas antes quedaron como estaban</translation>
    </message>
    <message>
        <source>{4} set this laptop&apos;s clock right: it showed {1} when it was {2}; from then on {3} are added, times written before stay as they were</source>
        <translation>{4} corrigió el reloj de este portátil: marcaba {1} cuando eran {2}; desde entonces se suman {3}, las horas escritas antes quedaron como estaban</translation>
    </message>
    <message>
        <source>1 reading more or changed</source>
        <translation>1 lectura más o cambiada</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>alimentado por</translation>
    </message>
    <message>
        <source>kept, changed or used</source>
        <translation>conservado, cambiado o usado</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>pump readings</source>
        <translation>lecturas de bomba</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>lecturas</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>revision {1}</source>
        <translation>revisión {1}</translation>
    </message>
    <message>
        <source>round {1}</source>
        <translation>ronda {1}</translation>
    </message>
    <message>
        <source>signed report</source>
        <translation>informe firmado</translation>
    </message>
    <message>
        <source>the pump</source>
        <translation>la bomba</translation>
    </message>
    <message>
        <source>the report was stopped before its last page and nothing was written; make it again when there is time</source>
        <translation>el informe se detuvo antes de su última página y no se escribió nada; hágalo de nuevo cuando haya tiempo</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>{1w} without them</source>
        <translation>{1w} sin ellas</translation>
    </message>
    <message>
        <source>{1} bytes</source>
        <translation>{1} bytes</translation>
    </message>
    <message>
        <source>{1} readings more or changed</source>
        <translation>{1} lecturas más o cambiadas</translation>
    </message>
    <message>
        <source>{1} rows</source>
        <translation>{1} filas</translation>
    </message>
    <message>
        <source>Excess as read</source>
        <translation>Sobrante leído</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Demostración</translation>
    </message>
    <message>
        <source>The building of this report is simulated: a program made up every reading, for practice. Nothing was measured, and nothing here is true of any real plant.</source>
        <translation>El edificio de este informe es simulado: un programa inventó cada lectura, para practicar. Nada se midió, y nada de aquí vale para una instalación real.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is typed in Adjust and not stored; store it there with Enter, or clear it with Esc</source>
        <translation>«{1}» está escrito en Ajustar y no está guardado; guárdelo allí con Intro o bórrelo con Esc</translation>
    </message>
    <message>
        <source>a flow of {1} is below zero and is not stored; turn the flow meter round and type the flow without a sign</source>
        <translation>un caudal de {1} está por debajo de cero y no se guarda; dé la vuelta al caudalímetro y escriba el caudal sin signo</translation>
    </message>
    <message>
        <source>flow measured otherwise</source>
        <translation>caudal medido de otro modo</translation>
    </message>
    <message>
        <source>flow measured otherwise, method not noted</source>
        <translation>caudal medido de otro modo, método no anotado</translation>
    </message>
    <message>
        <source>flow measured otherwise, with {1}</source>
        <translation>caudal medido de otro modo, con {1}</translation>
    </message>
    <message>
        <source>not chosen when merging; {1w} was</source>
        <translation>no elegido al fusionar; se eligió {1w}</translation>
    </message>
    <message>
        <source>not seen when round {1} was {2w} on {3}</source>
        <translation>no visto cuando la ronda {1} quedó en el estado «{2w}» en {3}</translation>
    </message>
    <message>
        <source>readings of the other laptop were taken in</source>
        <translation>se tomaron lecturas del otro portátil</translation>
    </message>
    <message>
        <source>round {1} is closed and not sent; send it and have it accepted by a supervisor</source>
        <translation>la ronda {1} está cerrada y sin enviar; envíela y que la acepte un supervisor</translation>
    </message>
    <message>
        <source>round {1} is sent and not accepted; have it accepted by a supervisor</source>
        <translation>la ronda {1} está enviada y sin aceptar; que la acepte un supervisor</translation>
    </message>
    <message>
        <source>round {1} is still open; close it, send it and have it accepted by a supervisor</source>
        <translation>la ronda {1} sigue abierta; ciérrela, envíela y que la acepte un supervisor</translation>
    </message>
    <message>
        <source>round {1} is {2w} and cannot become {3w}; take the steps in turn: close, send, decide</source>
        <translation>la ronda {1} está en el estado «{2w}» y no puede pasar a «{3w}»; siga los pasos en orden: cerrar, enviar, decidir</translation>
    </message>
    <message>
        <source>round {1} was sent back; answer its comments, send it again and have it accepted by a supervisor</source>
        <translation>la ronda {1} fue devuelta; responda a sus comentarios, envíela otra vez y que la acepte un supervisor</translation>
    </message>
    <message>
        <source>the flow is stored, but not how it was measured; write that into its note (Shift+Enter, Ctrl+M), or choose the flow meter before you read (menu Round)</source>
        <translation>el caudal está guardado, pero no cómo se midió; escríbalo en su nota (Mayús+Intro, Ctrl+M) o elija el caudalímetro antes de leer (menú Ronda)</translation>
    </message>
    <message>
        <source>the job is back as it was stored last, {1}; go on where the cursor stands</source>
        <translation>la obra está de vuelta como se guardó por última vez, {1}; siga donde está el cursor</translation>
    </message>
    <message>
        <source>the next flow typed takes the place of the one before; type it and press Enter</source>
        <translation>el próximo caudal tecleado ocupa el lugar del anterior; escríbalo y pulse Intro</translation>
    </message>
    <message>
        <source>the reference was read {1w}, the limit is {2w}; read it again</source>
        <translation>la referencia se leyó {1w}, el límite es {2w}; reléala</translation>
    </message>
    <message>
        <source>the same revision was signed on two laptops; the other one was chosen</source>
        <translation>la misma revisión se firmó en dos portátiles; se eligió la otra</translation>
    </message>
    <message>
        <source>this branch has no usable valve table, a dp gives no flow here; add the table, or type its flow in Walk</source>
        <translation>este ramal no tiene tabla de válvula útil, una Δp no da caudal aquí; añada la tabla o escriba su caudal en Recorrido</translation>
    </message>
    <message>
        <source>{1w} struck</source>
        <translation>{1w} tachado</translation>
    </message>
    <message>
        <source>{1} (section {2})</source>
        <translation>{1} (sección {2})</translation>
    </message>
    <message>
        <source>*  end of the index circuit</source>
        <translation>*  extremo del circuito más desfavorable</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>Aceptado por</translation>
    </message>
    <message>
        <source>By the readings</source>
        <translation>Según las lecturas</translation>
    </message>
    <message>
        <source>By the readings: cannot be decided within the measuring uncertainty</source>
        <translation>Según las lecturas: no se puede decidir dentro de la incertidumbre de medida</translation>
    </message>
    <message>
        <source>By the readings: not within tolerance</source>
        <translation>Según las lecturas: fuera de la tolerancia</translation>
    </message>
    <message>
        <source>By the readings: within tolerance</source>
        <translation>Según las lecturas: dentro de la tolerancia</translation>
    </message>
    <message>
        <source>By the readings: within tolerance; index circuit not proved</source>
        <translation>Según las lecturas: dentro de la tolerancia; circuito más desfavorable no demostrado</translation>
    </message>
    <message>
        <source>Files kept in the workbook: {1}; the pictures among them follow.</source>
        <translation>Archivos guardados en el libro: {1}; siguen las imágenes.</translation>
    </message>
    <message>
        <source>Nobody yet: round {1} waits for the supervisor</source>
        <translation>Nadie aún: la ronda {1} espera al supervisor</translation>
    </message>
    <message>
        <source>Nobody yet: round {1} was not sent to a supervisor</source>
        <translation>Nadie aún: la ronda {1} no se envió a un supervisor</translation>
    </message>
    <message>
        <source>Nobody: the supervisor sent round {1} back</source>
        <translation>Nadie: el supervisor devolvió la ronda {1}</translation>
    </message>
    <message>
        <source>Not known: {1} of {2} terminals read in this round</source>
        <translation>No se sabe: {1} de {2} terminales leídos en esta ronda</translation>
    </message>
    <message>
        <source>Trim or slow</source>
        <translation>Recortar o bajar la velocidad</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is typed in Walk and not entered; store it there with Enter, or clear it with Esc</source>
        <translation>«{1}» está tecleado en el recorrido y no introducido; guárdelo allí con Intro, o bórrelo con Esc</translation>
    </message>
    <message>
        <source>at the sum of the flows, {1}, the gauges read {2} and the pump&apos;s curve gives {3}: farther apart than their uncertainty of {4}; check gauges, speed and impeller and read again before the pump is changed</source>
        <translation>en la suma de los caudales, {1}, los manómetros leen {2} y la curva de la bomba da {3}: más separados que su incertidumbre de {4}; compruebe manómetros, velocidad y rodete y lea de nuevo antes de modificar la bomba</translation>
    </message>
    <message>
        <source>by the loop&apos;s readings the pump makes {1} too much at design flow, {2w}; lower its speed or trim its impeller after the valves are set, by a licensed person and within the limits of the maker and the local code. The number under Decision in Pump is another one: from the pump&apos;s curve, at full speed</source>
        <translation>según las lecturas de la red la bomba da {1} de más al caudal de diseño, {2w}; baje su velocidad o haga recortar su rodete tras ajustar las válvulas, por una persona habilitada y dentro de los límites del fabricante y la norma local. El número de Decisión en Bomba es otro: según la curva de la bomba, a plena velocidad</translation>
    </message>
    <message>
        <source>by the readings the last round is within tolerance</source>
        <translation>según las lecturas, la última ronda está dentro de la tolerancia</translation>
    </message>
    <message>
        <source>by the readings the last round is within tolerance; its index circuit is not proved</source>
        <translation>según las lecturas, la última ronda está dentro de la tolerancia; su circuito más desfavorable no está demostrado</translation>
    </message>
    <message>
        <source>by the readings the last round is {1w}; go on balancing, or give the reason why it stays so</source>
        <translation>según las lecturas, la última ronda está {1w}; siga equilibrando, o dé el motivo de que quede así</translation>
    </message>
    <message>
        <source>every round is accepted by a supervisor</source>
        <translation>cada ronda está aceptada por un supervisor</translation>
    </message>
    <message>
        <source>follow the word now; {1} is expected once all valves are set</source>
        <translation>siga ahora la palabra; se espera {1} cuando todas las válvulas estén ajustadas</translation>
    </message>
    <message>
        <source>hold at {1} for now; the learned loop advises {2} with the others set, read it again then</source>
        <translation>mantenga {1} por ahora; la red aprendida aconseja {2} con las demás ajustadas, léala entonces de nuevo</translation>
    </message>
    <message>
        <source>hold at {1} for now; {2} % of target expected here with the others set, turn to {3} then</source>
        <translation>mantenga {1} por ahora; se espera aquí el {2} % del objetivo con las demás ajustadas, gire entonces a {3}</translation>
    </message>
    <message>
        <source>in round {1}, which is open, no valve may be turned; close it first</source>
        <translation>en la ronda {1}, abierta, no se gira ninguna válvula; ciérrela primero</translation>
    </message>
    <message>
        <source>leave it at {1}; {2} % of target expected here with the others set</source>
        <translation>déjela en {1}; se espera aquí el {2} % del objetivo con las demás ajustadas</translation>
    </message>
    <message>
        <source>no pump or static lift is joined to this part, its nodes: {1}; join it to the loop or add its pump</source>
        <translation>ni bomba ni altura estática está unida a esta parte, sus nudos: {1}; únala a la red o añada su bomba</translation>
    </message>
    <message>
        <source>not done yet, {1w}</source>
        <translation>aún sin hacer, {1w}</translation>
    </message>
    <message>
        <source>not proved; points against it, listed below: {1}</source>
        <translation>no demostrado; puntos en contra, listados abajo: {1}</translation>
    </message>
    <message>
        <source>nothing to do, {1w}</source>
        <translation>nada que hacer, {1w}</translation>
    </message>
    <message>
        <source>points of the pump curve: {1}; give at least two of falling head</source>
        <translation>puntos de la curva de la bomba: {1}; dé al menos dos de altura decreciente</translation>
    </message>
    <message>
        <source>points of the pump&apos;s curve: {1}; this law needs {2w}, add or remove points</source>
        <translation>puntos de la curva de esta bomba: {1}; esta ley necesita {2w}, añada o quite puntos</translation>
    </message>
    <message>
        <source>points of the valve table: {1}; give at least two, the highest being fully open</source>
        <translation>puntos de la tabla de la válvula: {1}; dé al menos dos, el mayor es totalmente abierta</translation>
    </message>
    <message>
        <source>proved: every valve on the index path {1} fully open, and one in every group; no discharge valve is on record</source>
        <translation>demostrado: cada válvula del camino más desfavorable {1} totalmente abierta, y una en cada grupo; no consta válvula de impulsión</translation>
    </message>
    <message>
        <source>readings taken after its calibration ran out on {2}: {1}</source>
        <translation>lecturas tomadas después de vencer su calibración el {2}: {1}</translation>
    </message>
    <message>
        <source>reference of its group, at {1}; open it fully to {2}, the others are set to it</source>
        <translation>referencia de su grupo, en {1}; ábrala totalmente hasta {2}, las demás se ajustan según ella</translation>
    </message>
    <message>
        <source>reference of its group, fully open; leave it, the others are set to it</source>
        <translation>referencia de su grupo, totalmente abierta; déjela, las demás se ajustan según ella</translation>
    </message>
    <message>
        <source>round {2} was sent back, and comments that nobody has answered: {1}, the first is &quot;{3}&quot;; answer or resolve each, then send it</source>
        <translation>la ronda {2} fue devuelta, y comentarios que nadie ha contestado: {1}, el primero es «{3}»; conteste o resuelva cada uno y luego envíela</translation>
    </message>
    <message>
        <source>terminals of the witness round that are not read again: {1}; read them</source>
        <translation>terminales de la ronda testigo que no se han releído: {1}; léalos</translation>
    </message>
    <message>
        <source>the oldest reading the aim rests on is {1w} old, the limit is {2w}; read it again</source>
        <translation>la lectura más antigua de la meta tiene {1w}, el límite es {2w}; léala de nuevo</translation>
    </message>
    <message>
        <source>this circuit shares its flow with others ({1}) and has no balancing device; put one on its return, or say why it is not balanced</source>
        <translation>este circuito comparte su caudal con otros ({1}) y no tiene dispositivo de equilibrado; ponga uno en su retorno o diga por qué no se equilibra</translation>
    </message>
    <message>
        <source>{1} is held although its word is {2}; go back and turn it, or take the hold back with Ctrl+Z</source>
        <translation>{1} está mantenida aunque su palabra es {2}; vuelva y gírela, o deshaga con Ctrl+Z</translation>
    </message>
    <message>
        <source>{1} is the head available here with the valve shut; set the handle back to {2}</source>
        <translation>{1} es la altura disponible aquí con la válvula cerrada; vuelva a poner el volante en {2}</translation>
    </message>
    <message>
        <source>{1} was turned to {2} but not read there; the record still says {3}, go back and read it</source>
        <translation>{1} se giró a {2} pero no se leyó allí; el registro aún dice {3}, vuelva y léala</translation>
    </message>
    <message>
        <source>{1} {2} at {3} {4} in round {5}; {6} % of design flow, {7w}</source>
        <translation>{1} {2} a {3} {4} en la ronda {5}; {6} % del caudal de diseño, {7w}</translation>
    </message>
    <message>
        <source>values to choose between after merging: {1}; choose in File, Decide Conflicts</source>
        <translation>valores por elegir tras fusionar: {1}; elija en Archivo, Decidir conflictos</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; names no {2w} of this folder; correct it or leave the cell empty</source>
        <translation>«{1}» no se encuentra en esta carpeta ({2w}); corríjalo o deje vacía la celda</translation>
    </message>
    <message>
        <source>round {1} is {2w} and takes no further readings; record them in a new round</source>
        <translation>la ronda {1} está en el estado «{2w}» y no admite más lecturas; anótelas en una ronda nueva</translation>
    </message>
    <message>
        <source>No speed or impeller is proposed: the gauges and the pump&apos;s curve contradict each other (section {1})</source>
        <translation>No se propone velocidad ni rodete: los manómetros y la curva de la bomba se contradicen (sección {1})</translation>
    </message>
    <message>
        <source>Options at design flow for the need of the index circuit, {1w}</source>
        <translation>Opciones a caudal de diseño para lo que necesita el circuito más desfavorable, {1w}</translation>
    </message>
    <message>
        <source>Pressure behind each element against the fill pressure, in the direction of flow</source>
        <translation>Presión tras cada elemento respecto al llenado, en sentido del flujo</translation>
    </message>
    <message>
        <source>Pressure round the circuit against the fill pressure, pump on</source>
        <translation>Presión en el circuito respecto al llenado, bomba en marcha</translation>
    </message>
    <message>
        <source>The loop with its valves as they stood in round {5} takes {1} {4} and the pump makes {2} {4} {7w}: excess {3} {4} {6w}</source>
        <translation>La red con sus válvulas como estaban en la ronda {5} toma {1} {4} y la bomba da {2} {4} {7w}: sobrante {3} {4} {6w}</translation>
    </message>
    <message>
        <source>Undecidable whether {1} is the index: it takes {2} % of design, and fully open too with less are {3}, nearer than these readings tell ({4} %); read them again with a finer meter, or sign with the reason</source>
        <translation>No se puede decidir si {1} es el punto más desfavorable: toma el {2} % del diseño, también totalmente abiertos con menos: {3}, más cerca de lo que distinguen estas lecturas ({4} %); léalos con un instrumento más fino o firme con el motivo</translation>
    </message>
    <message>
        <source>Undecidable: dp {1} at {2} is below the readable minimum of {3} by no more than its uncertainty of {4}; read it again with a finer meter</source>
        <translation>No se puede decidir: la Δp {1} en {2} está bajo el mínimo legible de {3} por no más que su incertidumbre de {4}; léala con un instrumento más fino</translation>
    </message>
    <message>
        <source>With the pump on the unit of {1} stands at {2} against the fill pressure, which is not known.</source>
        <translation>Con la bomba en marcha la unidad de {1} está a {2} respecto a la presión de llenado, que no se conoce.</translation>
    </message>
    <message>
        <source>advised {2} instead of {1}; turn it, then read</source>
        <translation>se aconseja {2} en vez de {1}; gírela y luego lea</translation>
    </message>
    <message>
        <source>against the fill pressure, {1} at the unit with the valve on the return, {2} on the supply</source>
        <translation>respecto a la presión de llenado, {1} en la unidad con la válvula en el retorno, {2} en la impulsión</translation>
    </message>
    <message>
        <source>against the fill pressure, {1} behind {2w}</source>
        <translation>respecto a la presión de llenado, {1} detrás de {2w}</translation>
    </message>
    <message>
        <source>at design flow the pump makes {1} of head and the index circuit needs {2}, {3} more; see that the index path is open and its strainers and filters are clean, check speed and impeller: a larger impeller or pump is for the engineer to decide</source>
        <translation>a caudal de diseño la bomba da {1} de altura y el circuito más desfavorable necesita {2}, {3} más; vea que su camino esté abierto y sus filtros limpios, compruebe velocidad y rodete: un rodete o una bomba mayor lo decide el ingeniero</translation>
    </message>
    <message>
        <source>at shutoff one gauge reads {1} % of the curve&apos;s head and at the duty another reads {2} %; which is right is not known, so no excess, trim or speed is proposed: read both taps again with one gauge, and check impeller, speed and direction of turn</source>
        <translation>a caudal nulo un manómetro lee el {1} % de la altura de la curva y en el punto de trabajo otro lee el {2} %; no se sabe cuál es correcto, así que no se propone sobrante, recorte ni velocidad: lea de nuevo ambas tomas con un solo manómetro y compruebe rodete, velocidad y sentido de giro</translation>
    </message>
    <message>
        <source>at shutoff the head is {1} % of the curve&apos;s and at the duty {2} %; the curve counts, as it holds where the loop runs: read the shutoff head again where that is allowed</source>
        <translation>a caudal nulo la altura es el {1} % de la de la curva y en el punto de trabajo el {2} %; se toma la curva, pues es correcta donde trabaja la red: lea de nuevo la altura a caudal nulo donde esté permitido</translation>
    </message>
    <message>
        <source>at shutoff the head is {1} % of the curve&apos;s too, so the gauges are right; look for another impeller, wear, a wrong speed or air before the pump is changed</source>
        <translation>también a caudal nulo la altura es el {1} % de la de la curva, así que los manómetros son correctos; busque otro rodete, desgaste, una velocidad errónea o aire antes de modificar la bomba</translation>
    </message>
    <message>
        <source>at shutoff the same gauge reads {1} % of the curve&apos;s head and at the duty {2} %, so what differs comes with the flow; the duty counts, as it is what the terminals get: look for an open bypass, a strainer between the taps and a wrong valve table</source>
        <translation>a caudal nulo el mismo manómetro lee el {1} % de la altura de la curva y en el punto de trabajo el {2} %, así que la diferencia viene con el caudal; se toma el punto de trabajo, pues es lo que reciben los terminales: busque un baipás abierto, un filtro entre las tomas y una tabla de válvula errónea</translation>
    </message>
    <message>
        <source>done again: {1}</source>
        <translation>rehecho: {1}</translation>
    </message>
    <message>
        <source>from reference {1}, last {2} % of design, read {3w}</source>
        <translation>según la referencia {1}, última {2} % del diseño, leída {3w}</translation>
    </message>
    <message>
        <source>from the flows of {1} other branches while these are not turned, oldest reading {2w}</source>
        <translation>según los caudales de otros {1} ramales mientras no se giren, lectura más antigua {2w}</translation>
    </message>
    <message>
        <source>from the learned loop, {1} is wanted here while the others stand as they do</source>
        <translation>según la red aprendida aquí se quiere {1} mientras las demás sigan como están</translation>
    </message>
    <message>
        <source>its valve is fully open and it takes {1} % of design, {2} on the index circuit {3} %: nearer than these readings tell ({4} %); read both again with a finer meter, or give the reason</source>
        <translation>su válvula está totalmente abierta y toma el {1} % del diseño, {2} en el circuito más desfavorable el {3} %: más cerca de lo que distinguen estas lecturas ({4} %); lea ambas con un instrumento más fino o dé el motivo</translation>
    </message>
    <message>
        <source>leave it at its stop for now; {1} is expected once all valves are set</source>
        <translation>déjela en el tope por ahora; se espera {1} cuando todas las válvulas estén ajustadas</translation>
    </message>
    <message>
        <source>note removed, {1}</source>
        <translation>nota quitada, {1}</translation>
    </message>
    <message>
        <source>notes removed, {1}</source>
        <translation>notas quitadas, {1}</translation>
    </message>
    <message>
        <source>reason before signing</source>
        <translation>motivo antes de firmar</translation>
    </message>
    <message>
        <source>reason before signing removed</source>
        <translation>motivo antes de firmar quitado</translation>
    </message>
    <message>
        <source>reason removed: {1}</source>
        <translation>motivo quitado: {1}</translation>
    </message>
    <message>
        <source>round {1} was accepted by {2}, who also read or sent it: {3}</source>
        <translation>la ronda {1} la aceptó {2}, que también la leyó o envió: {3}</translation>
    </message>
    <message>
        <source>round {1} was read by {2}, at least in part; somebody who read none of it decides on it, menu Round, Person: {3}</source>
        <translation>la ronda {1} la leyó {2}, al menos en parte; decide sobre ella quien no leyó nada, menú Ronda, Persona: {3}</translation>
    </message>
    <message>
        <source>round {1} was sent by {2}; another supervisor or engineer decides on it, menu Round, Person: {3}</source>
        <translation>la ronda {1} la envió {2}; otro supervisor o ingeniero decide sobre ella, menú Ronda, Persona: {3}</translation>
    </message>
    <message>
        <source>rounds accepted by one who read or sent them: {1}; have somebody else accept them or give the reason</source>
        <translation>rondas aceptadas por quien las leyó o envió: {1}; haga que otro las acepte o dé el motivo</translation>
    </message>
    <message>
        <source>taken back: {1}</source>
        <translation>deshecho: {1}</translation>
    </message>
    <message>
        <source>test of {1}, {2w}: {3w} removed</source>
        <translation>prueba de {1}, {2w}: {3w} quitado</translation>
    </message>
    <message>
        <source>the gauges read {1} % of the head of the curve; below {2} or above {3} % a gauge is wrong or the curve is of another impeller, so no excess, trim or speed is proposed: read both taps again with one gauge, test at shutoff where that is allowed, and check impeller, speed and direction of turn</source>
        <translation>los manómetros leen el {1} % de la altura de la curva; por debajo del {2} o por encima del {3} % falla un manómetro o la curva es de otro rodete, así que no se propone sobrante, recorte ni velocidad: lea de nuevo ambas tomas con un solo manómetro, pruebe a caudal nulo donde esté permitido y compruebe rodete, velocidad y sentido de giro</translation>
    </message>
    <message>
        <source>the gauges read {2} % of the curve&apos;s head in round {1} and {4} % in round {3}; something changed or one was misread: read both taps again, and check speed, air and strainers</source>
        <translation>los manómetros leen el {2} % de la altura de la curva en la ronda {1} y el {4} % en la ronda {3}; algo ha cambiado o una lectura es errónea: lea de nuevo ambas tomas y compruebe velocidad, aire y filtros</translation>
    </message>
    <message>
        <source>the numbers here rest on the gauges of round {1}: the pump&apos;s curve counts with its head times {2} at every flow, so that it meets them</source>
        <translation>los números de aquí se basan en los manómetros de la ronda {1}: la curva de la bomba se toma con su altura multiplicada por {2} a cada caudal, para pasar por la lectura</translation>
    </message>
    <message>
        <source>the pump makes {1} at design flow, the index circuit needs {2}, {4} more: all circuits end at {3} % of design; see that the index path is open and its strainers and filters are clean, check speed and impeller: a larger impeller or pump is for the engineer to decide</source>
        <translation>la bomba da {1} a caudal de diseño, el circuito más desfavorable necesita {2}, {4} más: todos los circuitos acaban al {3} % del diseño; vea que su camino esté abierto y sus filtros limpios, compruebe velocidad y rodete: un rodete o una bomba mayor lo decide el ingeniero</translation>
    </message>
    <message>
        <source>the word counts the newest readings of the others</source>
        <translation>palabra según las lecturas más recientes de las demás</translation>
    </message>
    <message>
        <source>the word counts what the others take once they are set</source>
        <translation>palabra según lo que toman las demás una vez ajustadas</translation>
    </message>
    <message>
        <source>the word matches it to the reference {1}, at {2} % of design</source>
        <translation>la palabra la iguala a la referencia {1}, al {2} % del diseño</translation>
    </message>
    <message>
        <source>{1} at the design flow of {2}, {3w}</source>
        <translation>{1} al caudal de diseño de {2}, {3w}</translation>
    </message>
    <message>
        <source>{1} at the design flow of {2}, {3w}; the curve as published gives {4} {5w}</source>
        <translation>{1} al caudal de diseño de {2}, {3w}; la curva como está publicada da {4} {5w}</translation>
    </message>
    <message>
        <source>{1} is above the range of instrument {2} and is left out of the learning; read it again, or give the reason</source>
        <translation>{1} supera el rango del instrumento {2} y no entra en el aprendizaje; lea de nuevo o dé el motivo</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}, for comparison</source>
        <translation>{1} {2w}, {3w}, para comparar</translation>
    </message>
    <message>
        <source>{1} {4}, {2} % of the design flow of {3} {4}; {5} doubtful in it</source>
        <translation>{1} {4}, {2} % del caudal de diseño de {3} {4}; {5} en duda</translation>
    </message>
    <message>
        <source>{1}, who also read or sent it: {2}</source>
        <translation>{1}, que también la leyó o envió: {2}</translation>
    </message>
    <message>
        <source>{1}, who also read or sent it; no reason given</source>
        <translation>{1}, que también la leyó o envió; sin motivo</translation>
    </message>
    <message>
        <source>{2} read or sent round {1} and is the only person of this job; write the reason why nobody else accepts it</source>
        <translation>{2} leyó o envió la ronda {1} y es la única persona de esta obra; escriba el motivo por el que nadie más la acepta</translation>
    </message>
    <message>
        <source>{2} read or sent round {1}, and no other person of this job is supervisor or engineer; add one on the place Job</source>
        <translation>{2} leyó o envió la ronda {1}, y nadie más de esta obra es supervisor o ingeniero; añada a uno en el área Obra</translation>
    </message>
    <message>
        <source>readings of {1} rounds and {2} branches are too many to learn the loop from; for advice make a job of each riser</source>
        <translation>las lecturas de {1} rondas y {2} ramales son demasiadas para aprender la red; para tener consejos haga una obra por cada montante</translation>
    </message>
    <message>
        <source>{1} readings taken while valves were being turned are too many for a loop of this size and are left out of the learning; read the next round without turning valves in between</source>
        <translation>{1} lecturas tomadas mientras se giraban válvulas son demasiadas para una red de este tamaño y quedan fuera del aprendizaje; lea la próxima ronda sin girar válvulas entre lecturas</translation>
    </message>
    <message>
        <source>No change of speed or impeller called for: the pump makes what the index circuit needs, as near as can be told</source>
        <translation>No hace falta cambiar velocidad ni rodete: la bomba da lo que necesita el circuito más desfavorable, hasta donde puede saberse</translation>
    </message>
    <message>
        <source>Valves as read</source>
        <translation>Válvulas como se leyeron</translation>
    </message>
    <message>
        <source>it must not be made yet; get the consent that is named below first</source>
        <translation>aún no puede hacerse; obtenga primero el consentimiento indicado abajo</translation>
    </message>
    <message>
        <source>may be made only once the consent named in the cautions is given</source>
        <translation>solo cuando se dé el consentimiento indicado en las precauciones</translation>
    </message>
    <message>
        <source>no change: at design flow the pump makes {1} and the index circuit needs {2}, no further apart than can be told; leave impeller and speed as they are</source>
        <translation>sin cambio: al caudal de diseño la bomba da {1} y el circuito más desfavorable necesita {2}, diferencia no apreciable; deje el rodete y la velocidad como están</translation>
    </message>
    <message>
        <source>round {1} is open; close it first (Ctrl+Shift+W), then it is sent and decided on</source>
        <translation>la ronda {1} está abierta; ciérrela primero (Ctrl+Mayús+W), después se envía y se decide</translation>
    </message>
    <message>
        <source>Every step of review, round by round</source>
        <translation>Cada paso de la revisión, ronda por ronda</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>comments open on round {1}: {2}, the first is &quot;{3}&quot;; answer and resolve each, or send the round back</source>
        <translation>comentarios abiertos en la ronda {1}: {2}, el primero es «{3}»; responda y resuelva cada uno, o devuelva la ronda</translation>
    </message>
    <message>
        <source>in all: {1}; at circuits: {2}, at pumps: {3}</source>
        <translation>en total: {1}; en circuitos: {2}, en bombas: {3}</translation>
    </message>
    <message>
        <source>items open in round {2}: {1}, the first is {3}; give each a reading or a reason</source>
        <translation>puntos abiertos en la ronda {2}: {1}, el primero es {3}; dé a cada uno una lectura o un motivo</translation>
    </message>
    <message>
        <source>round {1} is accepted already; open the next round (Ctrl+Shift+N), or go on with the report (Alt+7)</source>
        <translation>la ronda {1} ya está aceptada; abra la ronda siguiente (Ctrl+Mayús+N), o siga con el informe (Alt+7)</translation>
    </message>
    <message>
        <source>round {1} is not sent; send it first (Ctrl+Alt+R), then a supervisor or engineer accepts it</source>
        <translation>la ronda {1} no está enviada; envíela primero (Ctrl+Alt+R), después la acepta un supervisor o ingeniero</translation>
    </message>
    <message>
        <source>round {1} is sent already; have it accepted or sent back on the place Review (Alt+6)</source>
        <translation>la ronda {1} ya está enviada; haga que la acepten o la devuelvan en el área Revisión (Alt+6)</translation>
    </message>
    <message>
        <source>Not shown that {1} is the index: it takes {2} % of design, and fully open too with less are {5}, and nearer than these readings tell ({4} %): {3}; match groups and risers, read again with a finer meter, or sign with the reason</source>
        <translation>No se demuestra que {1} sea el punto más desfavorable: toma el {2} % del diseño, también totalmente abiertos con menos: {5}, y más cerca de lo que distinguen estas lecturas ({4} %): {3}; equilibre grupos y montantes, lea de nuevo con un instrumento más fino o firme con el motivo</translation>
    </message>
    <message>
        <source>Pressures here rest on the fill pressure entered, {1} at the expansion vessel; {2} is what the suction gauge showed with the pump off, with its own height and zero</source>
        <translation>Las presiones de aquí parten de la presión de llenado introducida, {1} en el vaso de expansión; {2} es lo que mostró el manómetro de aspiración con la bomba parada, con su propia altura y su cero</translation>
    </message>
    <message>
        <source>Whether the pump is short cannot be told; read its gauges and every terminal again with finer meters (section {1})</source>
        <translation>No se puede decir si a la bomba le falta altura; lea de nuevo sus manómetros y cada terminal con instrumentos más finos (sección {1})</translation>
    </message>
    <message>
        <source>a round read at the settings that stand has every share within the band, but not the proof of the index circuit; turn the valve named, then read a final round</source>
        <translation>una ronda leída con los ajustes actuales tiene cada cuota en la banda, pero el circuito más desfavorable no queda demostrado; gire la válvula nombrada y lea una ronda final</translation>
    </message>
    <message>
        <source>an old reading, with the others not set; advised {2} instead of {1}: turn it, then read</source>
        <translation>una lectura antigua, con las demás sin ajustar; se aconseja {2} en vez de {1}: gírela y luego lea</translation>
    </message>
    <message>
        <source>lies on the index circuit at {1}; open it fully to {2}, or the index is not proved</source>
        <translation>está en el circuito más desfavorable, en {1}; ábrala totalmente hasta {2}, o el más desfavorable no queda demostrado</translation>
    </message>
    <message>
        <source>round {1} was read while valves were turned, so its shares may still change; read every valve in the next round</source>
        <translation>la ronda {1} se leyó mientras se giraban válvulas, así que sus cuotas aún pueden cambiar; lea cada válvula en la próxima ronda</translation>
    </message>
    <message>
        <source>the pump makes {1} at design flow, the index circuit needs {2}: whether it is short cannot be told; read its gauges and every terminal again once all valves are set</source>
        <translation>la bomba da {1} al caudal de diseño, el circuito más desfavorable necesita {2}: no se puede decir si le falta altura; lea de nuevo sus manómetros y cada terminal cuando todas las válvulas estén ajustadas</translation>
    </message>
    <message>
        <source>this terminal is fully open, and whether it takes less of design than the index circuit cannot be told; read both again with a finer meter</source>
        <translation>este terminal está totalmente abierto y no se puede decir si toma menos del diseño que el circuito más desfavorable; lea ambos de nuevo con un instrumento más fino</translation>
    </message>
    <message>
        <source>whether the pump is short cannot be told: at design flow it makes {1} and the index circuit needs {2}; read its gauges and every terminal again with finer meters, leave impeller and speed until then</source>
        <translation>no se puede decir si a la bomba le falta altura: al caudal de diseño da {1} y el circuito más desfavorable necesita {2}; lea de nuevo sus manómetros y cada terminal con instrumentos más finos y deje hasta entonces el rodete y la velocidad</translation>
    </message>
    <message>
        <source>{3} below it takes {4} % of design, the index {5} {6} %; open it from {1} to {2}, then read</source>
        <translation>{3}, aguas abajo, toma el {4} % del diseño, el más desfavorable {5} el {6} %; ábrala de {1} a {2} y luego lea</translation>
    </message>
    <message>
        <source>At design flow the shaft takes {2} slowed instead of {1} throttled: {3} % less</source>
        <translation>A caudal de diseño el eje toma {2} ralentizada en lugar de {1} estrangulada: {3} % menos</translation>
    </message>
    <message>
        <source>Computed, not read: no round was read yet, settings and losses are those entered.</source>
        <translation>Calculado, no leído: aún no se leyó ninguna ronda, ajustes y pérdidas son los introducidos.</translation>
    </message>
    <message>
        <source>Computed, not read: settings and pump as in round {1}, losses by the learned loop where the readings taught one, else by the design.</source>
        <translation>Calculado, no leído: ajustes y bomba como en la ronda {1}, pérdidas según la red aprendida si las lecturas dan una, si no según el diseño.</translation>
    </message>
    <message>
        <source>Difference / uncertainty</source>
        <translation>Diferencia / incertidumbre</translation>
    </message>
    <message>
        <source>Difference / uncertainty: how far two ways to the flow differ, as a multiple of their uncertainty together; above 2 one of them is wrong.</source>
        <translation>Diferencia / incertidumbre: cuánto difieren dos métodos de caudal, en múltiplos de su incertidumbre conjunta; por encima de 2 uno es falso.</translation>
    </message>
    <message>
        <source>Digits and units exactly as entered. A value that was corrected or struck stays, struck out. A setting that was entered before its reading stands in the row of that reading.</source>
        <translation>Cifras y unidades exactamente como se introdujeron. Un valor corregido o tachado queda, tachado. Un ajuste introducido antes de su lectura está en la fila de esa lectura.</translation>
    </message>
    <message>
        <source>Duty {1} {2} at {3} {4}; {5} % of design. With these valves {6} % of the speed of the last round gives {7} {2}.</source>
        <translation>Punto de trabajo {1} {2} a {3} {4}; {5} % del diseño. Con estas válvulas el {6} % de la velocidad de la última ronda da {7} {2}.</translation>
    </message>
    <message>
        <source>No change of speed or impeller called for: design flow needs {1} % of the speed of the last round {2w}</source>
        <translation>Sin cambio de velocidad ni rodete: el caudal de diseño pide el {1} % de la velocidad de la última ronda {2w}</translation>
    </message>
    <message>
        <source>No gauge was read in round {1}: its duty is drawn as a dashed ring, with the head of the pump&apos;s curve.</source>
        <translation>En la ronda {1} no se leyó ningún manómetro: su punto es un anillo de trazos, con la altura de la curva de la bomba.</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Motivos</translation>
    </message>
    <message>
        <source>Share: flow over the sum of the terminals. A riser or branch is read at its own valve, so that these shares need not add up to 100 %</source>
        <translation>Cuota: caudal entre la suma de los terminales. Un montante o ramal se lee en su propia válvula, por eso estas cuotas no tienen que sumar 100 %</translation>
    </message>
    <message>
        <source>Short by {4} of head: design flow on this system needs {1} % of the speed of the last round {3w}. See that the index path is open and strainers and filters are clean; a larger impeller or pump is for the engineer to decide (section {2})</source>
        <translation>Faltan {4} de altura: el caudal de diseño pide aquí el {1} % de la velocidad de la última ronda {3w}. Compruebe que el camino más desfavorable está abierto y los filtros limpios; un rodete o bomba mayor lo decide el ingeniero (sección {2})</translation>
    </message>
    <message>
        <source>Test by each form of the clause</source>
        <translation>Prueba según cada forma de la cláusula</translation>
    </message>
    <message>
        <source>That is {1} rpm where full speed is {2} rpm</source>
        <translation>Son {1} rpm con plena velocidad de {2} rpm</translation>
    </message>
    <message>
        <source>What would hold up a signature, and the reason why it stands</source>
        <translation>Lo que impediría una firma, y por qué queda así</translation>
    </message>
    <message>
        <source>below 60 % of full speed the efficiency falls by 1 to 3 points and the drive loses more; take the saving as an upper limit</source>
        <translation>por debajo del 60 % de la plena velocidad el rendimiento baja de 1 a 3 puntos y el variador pierde más; tome el ahorro como límite superior</translation>
    </message>
    <message>
        <source>design flow would need {1} % of full speed; ask the maker first, motor and shaft may not bear it</source>
        <translation>el caudal de diseño pediría el {1} % de la plena velocidad; pregunte antes al fabricante, motor y eje quizá no lo aguanten</translation>
    </message>
    <message>
        <source>fully open, its valve makes only {1} at design flow; it reads well from {2} on and not at all below {3}; choose a smaller valve or another way to measure</source>
        <translation>totalmente abierta, su válvula solo da {1} a caudal de diseño; se lee bien desde {2}, y nada por debajo de {3}; elija una válvula menor u otra medición</translation>
    </message>
    <message>
        <source>lines that would hold up a signature and stand with a reason: {1}, listed in section {2}</source>
        <translation>líneas que impedirían una firma y quedan con un motivo: {1}, véase la sección {2}</translation>
    </message>
    <message>
        <source>not turned in this round</source>
        <translation>no girado en esta ronda</translation>
    </message>
    <message>
        <source>n₂/n₁ = Q design / Q where system and pump curve meet = {1} / {2} {6} = {3}: {4} % of the speed of round {5}</source>
        <translation>n₂/n₁ = Q de diseño / Q donde se cruzan las curvas de red y bomba = {1} / {2} {6} = {3}: {4} % de la velocidad de la ronda {5}</translation>
    </message>
    <message>
        <source>the form of the energy code&apos;s clause is not chosen, the one with {1} and {2} is tested; choose it on the page Energy Code of Pump</source>
        <translation>la forma de la cláusula del código energético no está elegida, se prueba la de {1} y {2}; elíjala en la página Código energético de Bomba</translation>
    </message>
    <message>
        <source>the pump was read at {1} % of full speed; a motor does not run above 100 % without a drive that allows it, check the reading and the rated speed entered</source>
        <translation>la bomba se leyó al {1} % de la plena velocidad; un motor no pasa del 100 % sin un variador que lo permita, revise la lectura y la velocidad nominal introducida</translation>
    </message>
    <message>
        <source>the speed was not read, so full speed is assumed; read it</source>
        <translation>la velocidad no se leyó, así que se supone plena velocidad; léala</translation>
    </message>
    <message>
        <source>valves not turned in round {1}: {2}</source>
        <translation>válvulas no giradas en la ronda {1}: {2}</translation>
    </message>
    <message>
        <source>{1} % of the speed of the last round {6w}, or a trim, brings {2} {3}: it takes away the excess {4w} (section {5})</source>
        <translation>El {1} % de la velocidad de la última ronda {6w}, o un recorte, da {2} {3}: quita el sobrante {4w} (sección {5})</translation>
    </message>
    <message>
        <source>{1} at {2} in round {3}, {4} % of full speed; shaft power there {5w}, efficiency {6w}</source>
        <translation>{1} a {2} en la ronda {3}, {4} % de la plena velocidad; potencia en el eje ahí {5w}, rendimiento {6w}</translation>
    </message>
    <message>
        <source>Short by {1} of head at design flow {2w}: do not slow or trim the pump. See that the index path is open and strainers and filters are clean; a larger impeller or pump is for the engineer to decide (section {3})</source>
        <translation>Faltan {1} de altura a caudal de diseño {2w}: no baje la velocidad de la bomba ni recorte su rodete. Vea si el camino más desfavorable está abierto y los filtros limpios; un rodete o una bomba mayor lo decide el ingeniero (sección {3})</translation>
    </message>
    <message>
        <source>round {1} takes no new readings any more; open the next round (Ctrl+Shift+N), then read</source>
        <translation>la ronda {1} ya no admite lecturas nuevas; abra la ronda siguiente (Ctrl+Mayús+N) y lea después</translation>
    </message>
    <message>
        <source>In the figure the upright line at a tee is what is available there, supply less return; the bracket is the dp of the valve.</source>
        <translation>En la figura, la línea vertical en una te es lo disponible allí, impulsión menos retorno; el corchete es la Δp de la válvula.</translation>
    </message>
    <message>
        <source>Revision {1}: {2} signed as reviewer, and read or sent rounds {3} too.</source>
        <translation>Revisión {1}: {2} firmó como revisor, y también leyó o envió las rondas {3}.</translation>
    </message>
    <message>
        <source>The index valve {1} ended at {2} of {3}, not fully open, and takes {4}.</source>
        <translation>La válvula más desfavorable {1} acabó en {2} de {3}, no totalmente abierta, y toma {4}.</translation>
    </message>
    <message>
        <source>The index valve {1} ended fully open and takes {2}.</source>
        <translation>La válvula más desfavorable {1} acabó totalmente abierta y toma {2}.</translation>
    </message>
    <message>
        <source>The setting of valve {1} is not known, so it counts as fully open; enter it with its reading.</source>
        <translation>El ajuste de la válvula {1} no se conoce, por lo que cuenta como totalmente abierta; introdúzcalo con su lectura.</translation>
    </message>
    <message>
        <source>The valve {1} ended at {2} of {3} and takes {4}.</source>
        <translation>La válvula {1} acabó en {2} de {3} y toma {4}.</translation>
    </message>
    <message>
        <source>The valve {1} ended fully open and takes {2}.</source>
        <translation>La válvula {1} acabó totalmente abierta y toma {2}.</translation>
    </message>
    <message>
        <source>branches added after round {1} was closed: {2}; rounds up to {1} are judged without them: read a new round</source>
        <translation>se añadieron ramales después de cerrar la ronda {1}: {2}; las rondas hasta la {1} se juzgan sin ellos: lea una ronda nueva</translation>
    </message>
    <message>
        <source>design flows changed after round {1} was closed: {2}; rounds up to {1} are judged by those before: read a new round</source>
        <translation>caudales de diseño cambiados después de cerrar la ronda {1}: {2}; las rondas hasta la {1} se juzgan por los anteriores: lea una ronda nueva</translation>
    </message>
    <message>
        <source>it goes no further in the working order; move another valve</source>
        <translation>no va más allá en el orden de trabajo; mueva otra válvula</translation>
    </message>
    <message>
        <source>it is number {1} of {2} in the working order now; Ctrl+Alt+B goes back to the advised order</source>
        <translation>ahora es la número {1} de {2} en el orden de trabajo; Ctrl+Alt+B vuelve al orden aconsejado</translation>
    </message>
    <message>
        <source>its design flow is {1} to begin with; type its own, and by which branch it is fed</source>
        <translation>su caudal de diseño es {1} para empezar; escriba el suyo y de qué ramal se alimenta</translation>
    </message>
    <message>
        <source>limits changed after round {1} was closed: share ±{2} %, was ±{3} %; of design {4} to {5} %, was {6} to {7} %; round {1} was accepted by those before</source>
        <translation>límites cambiados después de cerrar la ronda {1}: cuota ±{2} %, era ±{3} %; del diseño {4} a {5} %, era {6} a {7} %; la ronda {1} se aceptó por los anteriores</translation>
    </message>
    <message>
        <source>limits changed after round {1} was closed: share ±{2} %, was ±{3} %; of design {4} to {5} %, was {6} to {7} %; rounds up to {1} are judged by those before</source>
        <translation>límites cambiados después de cerrar la ronda {1}: cuota ±{2} %, era ±{3} %; del diseño {4} a {5} %, era {6} a {7} %; las rondas hasta la {1} se juzgan por los anteriores</translation>
    </message>
    <message>
        <source>not read in round {1}, {2} of {3} valves are; read it, or say why not when the round is closed (Ctrl+Shift+W)</source>
        <translation>sin leer en la ronda {1}, {2} de {3} válvulas lo están; léala, o diga por qué no al cerrar la ronda (Ctrl+Mayús+W)</translation>
    </message>
    <message>
        <source>open comments: {1}, the first on {2}; Ctrl+Shift+Down goes to it, and from one to the next along the route</source>
        <translation>comentarios abiertos: {1}, el primero en {2}; Ctrl+Mayús+Abajo lleva a él, y de uno al siguiente por la ruta</translation>
    </message>
    <message>
        <source>read or sent these rounds too: {1}</source>
        <translation>también leyó o envió estas rondas: {1}</translation>
    </message>
    <message>
        <source>round {1} was sent back, so this corrects its reading and the old value stays in the history; say why in a note (Ctrl+M)</source>
        <translation>la ronda {1} fue devuelta, esto corrige pues su lectura y el valor anterior queda en el historial; diga por qué en una nota (Ctrl+M)</translation>
    </message>
    <message>
        <source>round {1}: {2} of {3} terminals are on share and the index circuit is proved; send it for review, then look at the report</source>
        <translation>ronda {1}: {2} de {3} terminales en cuota y el circuito más desfavorable está demostrado; envíela a revisión y mire después el informe</translation>
    </message>
    <message>
        <source>round {1}: {2} of {3} terminals are on share, but the index circuit is not proved; see on the place Adjust which valve to open, then read a final round</source>
        <translation>ronda {1}: {2} de {3} terminales en cuota, pero el circuito más desfavorable no está demostrado; vea en Ajustar qué válvula abrir y lea después una ronda final</translation>
    </message>
    <message>
        <source>round {1}: {2} of {3} terminals are on share; go on in Adjust, then read a final round</source>
        <translation>ronda {1}: {2} de {3} terminales en cuota; siga en Ajustar y lea después una ronda final</translation>
    </message>
    <message>
        <source>the valves are taken in the advised order again; Alt+Shift+Up and Down change it</source>
        <translation>las válvulas se toman otra vez en el orden aconsejado; Alt+Mayús+Arriba y Abajo lo cambian</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); with the point moved {5} would, correct it or read it again</source>
        <translation>{1} en la ronda {2} no casa con las demás lecturas, que esperan {3} (z {4}); con el punto decimal corrido, {5} casaría, corríjalo o reléalo</translation>
    </message>
    <message>
        <source>{1} is far from the expected {2}, with the point moved it would be {3}; correct it, read again or give the reason</source>
        <translation>{1} está lejos de {2} esperado, con el punto decimal corrido sería {3}; corríjalo, relea o dé el motivo</translation>
    </message>
    <message>
        <source>{1} is under the readable minimum of {2}, the flow is only known to lie between {3} and {4}; close the valve {5w} to read, take another instrument or give the reason</source>
        <translation>{1} está bajo el mínimo legible de {2}, solo se sabe que el caudal está entre {3} y {4}; cierre la válvula {5w} para leer, use otro instrumento o dé el motivo</translation>
    </message>
    <message>
        <source>{1} read or sent rounds {2}, and the report tells it beside the signature; let somebody else review them, or sign once more</source>
        <translation>{1} leyó o envió las rondas {2}, y el informe lo dice junto a la firma; haga que otro las revise, o firme otra vez</translation>
    </message>
    <message>
        <source>{1} was added after the reference was read; read the reference again</source>
        <translation>{1} se añadió después de leer la referencia; relea la referencia</translation>
    </message>
    <message>
        <source>there is no row to paste; copy rows with their headings in the spreadsheet first</source>
        <translation>no hay ninguna fila que pegar; copie antes en la hoja de cálculo filas con sus encabezados</translation>
    </message>
    <message>
        <source>An impeller of {1} with a first cut to {2}, as decided</source>
        <translation>Un rodete de {1} con un primer recorte a {2}, como se decidió</translation>
    </message>
    <message>
        <source>Duty {1} {2} at {3} {4}; {5} % of design. Drawn as decided: speed {6} % of full speed.</source>
        <translation>Punto de trabajo {1} {2} a {3} {4}; {5} % del diseño. Dibujado como se decidió: velocidad {6} % de la plena.</translation>
    </message>
    <message>
        <source>For information: {1} % of the speed of the last round {6w} brings {2} {3}: it takes away the excess {4w}; order no speed or impeller by it (section {5})</source>
        <translation>Para información: el {1} % de la velocidad de la última ronda {6w} da {2} {3}: quita el sobrante {4w}; no pida velocidad ni rodete según esto (sección {5})</translation>
    </message>
    <message>
        <source>No change: the pump runs at {1} % of full speed, as decided</source>
        <translation>Sin cambio: la bomba gira al {1} % de la velocidad plena, como se decidió</translation>
    </message>
    <message>
        <source>Speed {1} % of full speed, as decided</source>
        <translation>Velocidad {1} % de la plena, como se decidió</translation>
    </message>
    <message>
        <source>Speed {1} % of full speed, or an impeller of {2} with a first cut to {3}, as decided</source>
        <translation>Velocidad {1} % de la plena, o un rodete de {2} con un primer recorte a {3}, como se decidió</translation>
    </message>
    <message>
        <source>The loop with its valves as they stood in round {5} takes {1} {4} and the pump makes {2} {4} {7w}: excess {3} {4} {6w}. The pump decision uses {8} {4} {9w}</source>
        <translation>La red con sus válvulas como estaban en la ronda {5} toma {1} {4} y la bomba da {2} {4} {7w}: sobrante {3} {4} {6w}. La decisión sobre la bomba usa {8} {4} {9w}</translation>
    </message>
    <message>
        <source>What to order</source>
        <translation>Qué pedir</translation>
    </message>
    <message>
        <source>Write x as the dp where a valve cannot be read, and note why; closing the round asks for the reason.</source>
        <translation>Escriba x como Δp donde una válvula no se pueda leer, y anote por qué; al cerrar la ronda se pide el motivo.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no number of a practice building; give a whole number from 1 to 999999999</source>
        <translation>«{1}» no es un número de edificio de práctica; dé un número entero de 1 a 999999999</translation>
    </message>
    <message>
        <source>a first look: in round {1}, {2} of {3} terminals are on share and the index circuit is {4w}; leave the pump as it is until all are on share with the index proved</source>
        <translation>una primera vista: en la ronda {1}, en cuota: {2} de {3} terminales, circuito más desfavorable {4w}; deje la bomba como está hasta que todos estén en cuota con el punto más desfavorable demostrado</translation>
    </message>
    <message>
        <source>a power factor of {1} is above 1; check the reading and its unit</source>
        <translation>un factor de potencia de {1} supera 1; revise la lectura y su unidad</translation>
    </message>
    <message>
        <source>all dps of round {1} are about {2} % higher than round {3} makes expect, as with {4} % more speed: was the pump set faster, or another valve opened? Read the speed on the drive and look at the valves of the main; no single valve is to blame</source>
        <translation>todos los Δp de la ronda {1} son un {2} % más altos de lo que la ronda {3} hace esperar, como con un {4} % más de velocidad: ¿se aceleró la bomba o se abrió otra válvula? Lea la velocidad en el variador y mire las válvulas de la tubería principal; ninguna válvula sola tiene la culpa</translation>
    </message>
    <message>
        <source>all dps of round {1} are about {2} % lower than round {3} makes expect, as with {4} % less speed: was the pump slowed, or another valve closed? Read the speed on the drive and look at the valves of the main; no single valve is to blame</source>
        <translation>todos los Δp de la ronda {1} son un {2} % más bajos de lo que la ronda {3} hace esperar, como con un {4} % menos de velocidad: ¿se ralentizó la bomba o se cerró otra válvula? Lea la velocidad en el variador y mire las válvulas de la tubería principal; ninguna válvula sola tiene la culpa</translation>
    </message>
    <message>
        <source>for information: what follows is for the loop with its valves as they were read; order no speed or impeller by it</source>
        <translation>para información: lo que sigue vale para la red con sus válvulas como se leyeron; no pida velocidad ni rodete según esto</translation>
    </message>
    <message>
        <source>in round {1} the index circuit ends at {3}, no more at {2}; see that every valve on its path is fully open</source>
        <translation>en la ronda {1} el circuito más desfavorable termina en {3}, ya no en {2}; vea que cada válvula de su camino esté totalmente abierta</translation>
    </message>
    <message>
        <source>no gauge with a known accuracy is named, so the usual 2 % of each reading are counted; name the gauge here and its accuracy on the place Job</source>
        <translation>no se nombra ningún manómetro de precisión conocida, se cuenta el 2 % usual de cada lectura; nombre aquí el manómetro y su precisión en Obra</translation>
    </message>
    <message>
        <source>no speed was read in round {1}, so full speed is taken and no number here is certain; read it on the drive before the pump is changed</source>
        <translation>en la ronda {1} no se leyó la velocidad, se toma la plena y ningún número aquí es seguro; léala en el variador antes de cambiar la bomba</translation>
    </message>
    <message>
        <source>no speed was read in round {1}, so the {2} % of full speed of round {3} are taken and no number here is certain; read it on the drive before the pump is changed</source>
        <translation>en la ronda {1} no se leyó la velocidad, se toma el {2} % de la plena de la ronda {3} y ningún número aquí es seguro; léala en el variador antes de cambiar la bomba</translation>
    </message>
    <message>
        <source>nothing was pasted: {1}</source>
        <translation>no se pegó nada: {1}</translation>
    </message>
    <message>
        <source>round {1} was read while valves were turned, so its shares may still change; the index circuit ends at {3} now, no more at {2}; read every valve in the next round</source>
        <translation>la ronda {1} se leyó mientras se giraban válvulas, así que sus cuotas aún pueden cambiar; el circuito más desfavorable termina ahora en {3}, ya no en {2}; lea cada válvula en la próxima ronda</translation>
    </message>
    <message>
        <source>suction {1} is above discharge {2} with the pump running; swap the two readings, or check the direction of turn and the gauges</source>
        <translation>la aspiración {1} supera la impulsión {2} con la bomba en marcha; intercambie las dos lecturas o revise el sentido de giro y los manómetros</translation>
    </message>
    <message>
        <source>terminals without a flow in this round: {1} ({2}); closed like this it has no total flow, so no share of any branch and no index circuit: read them, or a valve above them, first</source>
        <translation>terminales sin caudal en esta ronda: {1} ({2}); cerrada así no tiene caudal total, ni cuota de ningún ramal ni circuito más desfavorable: léalos antes, o una válvula superior</translation>
    </message>
    <message>
        <source>the instrument was due for calibration on {1}, readings of this round taken with it later: {2}, the last on {3}; use another one, or give one reason for all (Job, If overdue, why)</source>
        <translation>el instrumento debía calibrarse el {1}, lecturas de esta ronda tomadas después con él: {2}, la última el {3}; use otro o dé un motivo para todas (Obra, Si venció, por qué)</translation>
    </message>
    <message>
        <source>{1w} 0 with the pump running; check the clamp, the phases and the range, read again or leave it empty</source>
        <translation>{1w} 0 con la bomba en marcha; revise la pinza, las fases y el rango, relea o déjelo vacío</translation>
    </message>
    <message>
        <source>{1w} gives {2} of head and {3w}, with less flow, only {4}; a pump&apos;s head falls as flow rises: read both taps again with one gauge</source>
        <translation>{1w} da {2} de altura y {3w}, con menos caudal, solo {4}; la altura de una bomba baja cuando sube el caudal: relea las dos tomas con un solo manómetro</translation>
    </message>
    <message>
        <source>{1w} {2} is far from {3} at the other points of this pump, with the point moved it would be {4}; correct it, read again or give the reason</source>
        <translation>{1w} {2} está lejos de {3} en los demás puntos de esta bomba, con la coma movida sería {4}; corríjalo, relea o dé el motivo</translation>
    </message>
    <message>
        <source>{1w} {2} is far from {3} at the other points of this pump; check the point and the unit, read again or give the reason</source>
        <translation>{1w} {2} está lejos de {3} en los demás puntos de esta bomba; revise la coma y la unidad, relea o dé el motivo</translation>
    </message>
    <message>
        <source>{1} at {2} in round {3}; no speed was read, full speed is taken: read it on the drive; shaft power there {5w}, efficiency {6w}</source>
        <translation>{1} con {2} en la ronda {3}; no se leyó la velocidad, se toma la plena: léala en el variador; potencia en el eje {5w}, rendimiento {6w}</translation>
    </message>
    <message>
        <source>{1} at {2} in round {3}; no speed was read, the {4} % of full speed of round {7} are taken: read it on the drive; shaft power there {5w}, efficiency {6w}</source>
        <translation>{1} con {2} en la ronda {3}; no se leyó la velocidad, se toma el {4} % de la plena de la ronda {7}: léala en el variador; potencia en el eje {5w}, rendimiento {6w}</translation>
    </message>
    <message>
        <source>{1} is {2} % of the rated speed; check the reading and the rated speed entered, or give the reason</source>
        <translation>{1} es el {2} % de la velocidad nominal; revise la lectura y la velocidad nominal introducida, o dé el motivo</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}: the pump decision uses this one</source>
        <translation>{1} {2w}, {3w}: la que usa la decisión sobre la bomba</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}: the pump decision uses this one (section {4})</source>
        <translation>{1} {2w}, {3w}: la que usa la decisión sobre la bomba (sección {4})</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}: the pump decision uses this one, speed {5} % of full speed takes it away (section {4})</source>
        <translation>{1} {2w}, {3w}: la que usa la decisión sobre la bomba, el {5} % de la velocidad plena la elimina (sección {4})</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a speed; type 0 to 120 % of rated</source>
        <translation>«{1}» no es una velocidad; teclee de 0 a 120 % de la nominal</translation>
    </message>
    <message>
        <source>no row is in hand; go to the row to remove first</source>
        <translation>ninguna fila está elegida; vaya primero a la fila que quitará</translation>
    </message>
    <message>
        <source>the row with {1} has no {2}; type it, or take the row out with its button</source>
        <translation>a la fila con {1} le falta: {2}; tecléelo o quite la fila con su botón</translation>
    </message>
    <message>
        <source>there is no table of advice here; do first what the page says</source>
        <translation>aquí no hay tabla de consejos; haga primero lo que dice la página</translation>
    </message>
    <message>
        <source>{1} is off the scale of {2}; type a setting from {3} to {4}</source>
        <translation>{1} está fuera de la escala de {2}; teclee un ajuste de {3} a {4}</translation>
    </message>
    <message>
        <source>this survey begins without a readiness list; see that the loop is clean, filled, vented and safe to run, and note it: Job, Readiness, Take Usual List</source>
        <translation>este levantamiento empieza sin lista de preparación; vea que la red esté limpia, llena, purgada y segura para funcionar, y anótelo: Obra, Preparación, Tomar la lista usual</translation>
    </message>
    <message>
        <source>Each terminal and each valve on the way before rebalancing, and its new setting</source>
        <translation>Cada terminal y cada válvula en el camino antes de reequilibrar, y su nuevo ajuste</translation>
    </message>
    <message>
        <source>In {1} hours a year at the flow as read: {2} kWh or {4} {5} {3w}</source>
        <translation>En {1} horas al año con el caudal leído: {2} kWh o {4} {5} {3w}</translation>
    </message>
    <message>
        <source>In {1} hours a year at the flow as read: {2} kWh {3w}</source>
        <translation>En {1} horas al año con el caudal leído: {2} kWh {3w}</translation>
    </message>
    <message>
        <source>No report of this job was signed before this one.</source>
        <translation>Antes de este no se firmó ningún informe de esta obra.</translation>
    </message>
    <message>
        <source>Power from the mains</source>
        <translation>Potencia de la red eléctrica</translation>
    </message>
    <message>
        <source>a further change of speed brings no saving that could be told</source>
        <translation>otro cambio de velocidad no aporta ningún ahorro apreciable</translation>
    </message>
    <message>
        <source>edition and clause of the adopted energy code are not entered, so the report names none; enter them</source>
        <translation>edición y cláusula del código energético vigente sin introducir, el informe no nombra ninguna; introdúzcalas</translation>
    </message>
    <message>
        <source>only for sending back: round {1} has no open comment that says what to correct; choose a cell of the comparison, press Ctrl+Alt+C and write it</source>
        <translation>solo para devolver: la ronda {1} no tiene ningún comentario abierto que diga qué corregir; elija una celda de la comparación, pulse Ctrl+Alt+C y escríbalo</translation>
    </message>
    <message>
        <source>round {1} is closed and has no reading of this point; open the next round (Ctrl+Shift+N) and read it there</source>
        <translation>la ronda {1} está cerrada y no tiene lectura de este punto; abra la ronda siguiente (Ctrl+Mayús+N) y léalo en ella</translation>
    </message>
    <message>
        <source>round {1} was sent back, so this corrects its reading and the old value stays on record; say why in the field Note</source>
        <translation>la ronda {1} fue devuelta, esto corrige pues su lectura y el valor anterior queda registrado; diga por qué en el campo Nota</translation>
    </message>
    <message>
        <source>the study is saved as {1}</source>
        <translation>el estudio está guardado como {1}</translation>
    </message>
    <message>
        <source>{1} is more than a whole; type an efficiency of 100 % at most</source>
        <translation>{1} es más que el todo; escriba un rendimiento de 100 % como máximo</translation>
    </message>
    <message>
        <source>{1}: {2} in round {3}, {4} in round {5}: {6} {7w}, {8} %</source>
        <translation>{1}: {2} en la ronda {3}, {4} en la ronda {5}: {6} {7w}, {8} %</translation>
    </message>
    <message>
        <source>A copy of revision {1}, signed by {2}; nothing was changed since. The signed file counts.</source>
        <translation>Una copia de la revisión {1}, firmada por {2}; nada se cambió desde entonces. Vale el archivo firmado.</translation>
    </message>
    <message>
        <source>Revision {1}: {2} signed both the readings and the review.</source>
        <translation>Revisión {1}: {2} firmó las lecturas y la revisión.</translation>
    </message>
    <message>
        <source>signed the readings too</source>
        <translation>firmó también las lecturas</translation>
    </message>
    <message>
        <source>signed the review too</source>
        <translation>firmó también la revisión</translation>
    </message>
    <message>
        <source>the report tests the energy code&apos;s clause and cannot name it; type code, edition and clause on Pump, Energy Code</source>
        <translation>el informe examina la cláusula del código energético y no puede nombrarla; escriba código, edición y cláusula en Bomba, Código energético</translation>
    </message>
    <message>
        <source>{1} signed this revision in the other role too, and the report tells it beside the signature; let somebody else sign, or sign once more</source>
        <translation>{1} firmó esta revisión también en el otro papel, y el informe lo dice junto a la firma; haga que firme otra persona o firme otra vez</translation>
    </message>
    <message>
        <source>Speed {1} % of full speed, as decided; the pump has no drive, so by a drive or other sheaves</source>
        <translation>Velocidad {1} % de la plena, como se decidió; la bomba no tiene variador, así que con un variador u otras poleas</translation>
    </message>
    <message>
        <source>The uncertainty of this difference is not known: no accuracy of the power meter is recorded</source>
        <translation>La incertidumbre de esta diferencia no se conoce: no consta la exactitud del vatímetro</translation>
    </message>
    <message>
        <source>a head of {1} is far above the {2} of the pump&apos;s curve at no flow; check the gauges, the field and the unit, read again or give the reason</source>
        <translation>una altura de {1} supera con mucho los {2} de la curva de la bomba sin caudal; revise los manómetros, el campo y la unidad, lea de nuevo o dé el motivo</translation>
    </message>
    <message>
        <source>every valve of the working order is held, but {1} of {2} valves are not read in this round, the next along the route is {3}; go to each in Walk (Alt+3, Ctrl+Shift+Down), then close the round (Ctrl+Shift+W)</source>
        <translation>cada válvula del orden de trabajo está mantenida, pero {1} de {2} válvulas no están leídas en esta ronda, la siguiente en el recorrido es {3}; lea cada una en Recorrido (Alt+3, Ctrl+Mayús+Abajo) y cierre la ronda (Ctrl+Mayús+W)</translation>
    </message>
    <message>
        <source>the gauges of {1} show a rise of {2} at {3}; both were stored</source>
        <translation>los manómetros de {1} muestran una subida de {2} a {3}; ambos se guardaron</translation>
    </message>
    <message>
        <source>the number is missing; write it in digits</source>
        <translation>falta el número; escríbalo con cifras</translation>
    </message>
    <message>
        <source>this value must be above 0, not {1}; correct it</source>
        <translation>este valor debe ser mayor que 0, no {1}; corríjalo</translation>
    </message>
    <message>
        <source>{1} is more than a whole; give an efficiency of 100 % at most</source>
        <translation>{1} es más que el total; indique un rendimiento de 100 % como máximo</translation>
    </message>
    <message>
        <source>the pressure rises to that of no flow; make sure that casing, gauges and pipe bear it, and that a boiler or chiller on this loop is off</source>
        <translation>la presión sube a la de caudal nulo; asegúrese de que la carcasa, los manómetros y la tubería la resisten y de que una caldera o enfriadora de esta red está apagada</translation>
    </message>
</context>
<context>
    <name>PagesProgress</name>
    <message>
        <source>Balance report</source>
        <translation>Informe de equilibrado</translation>
    </message>
    <message>
        <source>Progress of the report</source>
        <translation>Progreso del informe</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>The report is being made.</source>
        <translation>Se está haciendo el informe.</translation>
    </message>
    <message>
        <source>Pages laid out: %1</source>
        <translation>Páginas compuestas: %1</translation>
    </message>
    <message>
        <source>Pages written: %1 of %2</source>
        <translation>Páginas escritas: %1 de %2</translation>
    </message>
</context>
<context>
    <name>PumpChart</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>slowed</source>
        <translation>a menor velocidad</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>recortada</translation>
    </message>
    <message>
        <source>%1 % speed</source>
        <translation>%1 % de velocidad</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 sola</translation>
    </message>
    <message>
        <source>pump, round %1</source>
        <translation>bomba, ronda %1</translation>
    </message>
    <message>
        <source>pump as found</source>
        <translation>bomba como se halló</translation>
    </message>
    <message>
        <source>%1 pumps as found</source>
        <translation>%1 bombas como se hallaron</translation>
    </message>
    <message>
        <source>system, round %1</source>
        <translation>sistema, ronda %1</translation>
    </message>
    <message>
        <source>design</source>
        <translation>diseño</translation>
    </message>
    <message>
        <source>Line or point</source>
        <translation>Línea o punto</translation>
    </message>
    <message>
        <source>Flow, %1</source>
        <translation>Caudal, %1</translation>
    </message>
    <message>
        <source>Head, %1</source>
        <translation>Altura, %1</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertidumbre</translation>
    </message>
    <message>
        <source>Duty, round %1</source>
        <translation>Punto de trabajo, ronda %1</translation>
    </message>
    <message>
        <source>Design</source>
        <translation>Diseño</translation>
    </message>
    <message>
        <source>Duty %1 %2 at %3 %4; %5 % of design.</source>
        <translation>Punto de trabajo %1 %2 a %3 %4; %5 % del diseño.</translation>
    </message>
    <message>
        <source>Pump and system</source>
        <translation>Bomba y sistema</translation>
    </message>
    <message>
        <source>head from the pump&apos;s curve, no gauge read</source>
        <translation>altura según la curva de la bomba, ningún manómetro leído</translation>
    </message>
    <message>
        <source>curve as published</source>
        <translation>curva publicada</translation>
    </message>
    <message>
        <source>curve through the gauges</source>
        <translation>curva ajustada a los manómetros</translation>
    </message>
    <message>
        <source>No change of speed or impeller called for.</source>
        <translation>No hace falta cambiar velocidad ni rodete.</translation>
    </message>
    <message>
        <source>Trimmed it has %1 of impeller.</source>
        <translation>Recortada tiene un rodete de %1.</translation>
    </message>
    <message>
        <source>Shaft power about %1 % against the last round.</source>
        <translation>Potencia en el eje aprox. %1 % frente a la última ronda.</translation>
    </message>
    <message>
        <source>Shaft power at design flow: %1 throttled, %2 slowed.</source>
        <translation>Potencia en el eje a caudal de diseño: %1 estrangulada, %2 ralentizada.</translation>
    </message>
    <message>
        <source>With these valves %1 % of the speed of the last round gives %2 %3.</source>
        <translation>Con estas válvulas el %1 % de la velocidad de la última ronda da %2 %3.</translation>
    </message>
    <message>
        <source>Dashed ring: no gauge read, head from the pump&apos;s curve.</source>
        <translation>Anillo de trazos: ningún manómetro leído, altura de la curva de la bomba.</translation>
    </message>
    <message>
        <source>The pump runs at %1 % of full speed, which the decision counts.</source>
        <translation>La bomba gira al %1 % de la velocidad plena, que la decisión cuenta.</translation>
    </message>
    <message>
        <source>Slowed to %1 % of full speed it meets the head that the pump decision uses.</source>
        <translation>A %1 % de la velocidad plena da la altura que usa la decisión sobre la bomba.</translation>
    </message>
</context>
<context>
    <name>PumpPage</name>
    <message>
        <source>The pumps are being computed.</source>
        <translation>Se calculan las bombas.</translation>
    </message>
</context>
<context>
    <name>PumpRoomChart</name>
    <message>
        <source>Pressure along the circuit</source>
        <translation>Presión a lo largo del circuito</translation>
    </message>
    <message>
        <source>valve on return, pump on</source>
        <translation>válvula en retorno, bomba en marcha</translation>
    </message>
    <message>
        <source>valve on supply, pump on</source>
        <translation>válvula en impulsión, bomba en marcha</translation>
    </message>
    <message>
        <source>pump off</source>
        <translation>bomba parada</translation>
    </message>
    <message>
        <source>Element, in the direction of flow</source>
        <translation>Elemento, en sentido del flujo</translation>
    </message>
    <message>
        <source>Gauge pressure, %1</source>
        <translation>Presión manométrica, %1</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Behind</source>
        <translation>Detrás de</translation>
    </message>
    <message>
        <source>Pump on, as it stands</source>
        <translation>Bomba en marcha, tal cual</translation>
    </message>
    <message>
        <source>Valve on the other side</source>
        <translation>Válvula en el otro lado</translation>
    </message>
    <message>
        <source>Pump off</source>
        <translation>Bomba parada</translation>
    </message>
    <message>
        <source>The unit of %1 stands at %2 %4 with the pump on and at %3 %4 with it off.</source>
        <translation>La unidad de %1 está a %2 %4 con la bomba en marcha y a %3 %4 parada.</translation>
    </message>
    <message>
        <source>Dp left across the valves</source>
        <translation>Δp que queda en las válvulas</translation>
    </message>
    <message>
        <source>fully open</source>
        <translation>totalmente abierta</translation>
    </message>
    <message>
        <source>proportional</source>
        <translation>proporcional</translation>
    </message>
    <message>
        <source>read-and-set</source>
        <translation>leer y ajustar</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Válvula</translation>
    </message>
    <message>
        <source>Fully open</source>
        <translation>Totalmente abierta</translation>
    </message>
    <message>
        <source>Proportional</source>
        <translation>Proporcional</translation>
    </message>
    <message>
        <source>Read-and-set</source>
        <translation>Leer y ajustar</translation>
    </message>
    <message>
        <source>%1, index</source>
        <translation>%1, más desfavorable</translation>
    </message>
    <message>
        <source>Valve, in walking order</source>
        <translation>Válvula, en orden de recorrido</translation>
    </message>
    <message>
        <source>Dp, %1</source>
        <translation>Δp, %1</translation>
    </message>
    <message>
        <source>Dp at design flow that each way leaves across every valve.</source>
        <translation>Δp a caudal de diseño que deja cada método en cada válvula.</translation>
    </message>
    <message>
        <source>Read-and-set leaves %1 %2 across the index valve %3, a proportional balance with the pump reduced leaves %4 %2.</source>
        <translation>Leer y ajustar deja %1 %2 en la válvula más desfavorable %3, un equilibrado proporcional con la bomba reducida deja %4 %2.</translation>
    </message>
    <message>
        <source>before the pump</source>
        <translation>antes de la bomba</translation>
    </message>
    <message>
        <source>Pressure against fill, %1</source>
        <translation>Presión respecto al llenado, %1</translation>
    </message>
    <message>
        <source>With the pump on the unit of %1 stands at %2%3 %4 against the fill pressure, which is not known.</source>
        <translation>Con la bomba en marcha la unidad de %1 está a %2%3 %4 respecto a la presión de llenado, que no se conoce.</translation>
    </message>
    <message>
        <source>supply, pump on</source>
        <translation>impulsión, bomba en marcha</translation>
    </message>
    <message>
        <source>return, pump on</source>
        <translation>retorno, bomba en marcha</translation>
    </message>
    <message>
        <source>Available at the tee</source>
        <translation>Disponible en la te</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>Workbooks (*.wwj)</source>
        <translation>Libros de trabajo (*.wwj)</translation>
    </message>
    <message>
        <source>Open a Workbook</source>
        <translation>Abrir un libro de trabajo</translation>
    </message>
    <message>
        <source>Nothing Was Made</source>
        <translation>No se creó nada</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) in the tables must be mended first. Each line names the file, the row and the column.</source>
        <translation>
            <numerusform>Antes hay que corregir %n lugar de las tablas. Cada línea dice archivo, fila y columna.</numerusform>
            <numerusform>Antes hay que corregir %n lugares de las tablas. Cada línea dice archivo, fila y columna.</numerusform>
        </translation>
    </message>
    <message>
        <source>Faults in the tables</source>
        <translation>Errores en las tablas</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>First: 3 terminals</source>
        <translation>Primera: 3 terminales</translation>
    </message>
    <message>
        <source>One ladder of three terminals. Instruments scatter; nothing else is wrong.</source>
        <translation>Una línea de tres terminales. Los instrumentos dispersan; nada más falla.</translation>
    </message>
    <message>
        <source>Steady: 12 terminals</source>
        <translation>Estable: 12 terminales</translation>
    </message>
    <message>
        <source>Three branches of four terminals. Nothing is wrong but the design&apos;s losses.</source>
        <translation>Tres ramales de cuatro terminales. Solo fallan las pérdidas de diseño.</translation>
    </message>
    <message>
        <source>Faulty: 12 terminals</source>
        <translation>Con fallos: 12 terminales</translation>
    </message>
    <message>
        <source>As Steady, with errors in the valve tables, a control valve that does not open and a slip of reading.</source>
        <translation>Como Estable, con errores en las tablas de válvulas, una válvula de control que no abre y un fallo de lectura.</translation>
    </message>
    <message>
        <source>Large: 120 terminals</source>
        <translation>Grande: 120 terminales</translation>
    </message>
    <message>
        <source>Six risers of five branches of four terminals. Nothing is wrong but the design&apos;s losses.</source>
        <translation>Seis montantes de cinco ramales de cuatro terminales. Solo fallan las pérdidas de diseño.</translation>
    </message>
    <message>
        <source>Large and faulty: 120 terminals</source>
        <translation>Grande con fallos: 120 terminales</translation>
    </message>
    <message>
        <source>As Large, with air, a clogging strainer, a stuck control valve, a misread handle and slips of reading.</source>
        <translation>Como Grande, con aire, un filtro que se obstruye, una válvula de control atascada, un volante mal leído y fallos de lectura.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>a terminal is shut</source>
        <translation>un terminal está cerrado</translation>
    </message>
    <message>
        <source>air in the coil</source>
        <translation>aire en la batería</translation>
    </message>
    <message>
        <source>a strainer clogged during the job</source>
        <translation>un filtro se obstruyó durante el trabajo</translation>
    </message>
    <message>
        <source>the control valve does not open fully</source>
        <translation>la válvula de control no abre del todo</translation>
    </message>
    <message>
        <source>the handle stood a turn off in round %1</source>
        <translation>el volante estaba una vuelta desviado en la ronda %1</translation>
    </message>
    <message>
        <source>the meter stood on another unit in round %1</source>
        <translation>el medidor estaba en otra unidad en la ronda %1</translation>
    </message>
    <message>
        <source>half the dp was read in round %1</source>
        <translation>en la ronda %1 se leyó la mitad de la Δp</translation>
    </message>
    <message>
        <source>twice the dp was read in round %1</source>
        <translation>en la ronda %1 se leyó el doble de la Δp</translation>
    </message>
    <message>
        <source>Largest spread of a group</source>
        <translation>Mayor dispersión de un grupo</translation>
    </message>
    <message>
        <source>Least flow of design</source>
        <translation>Menor caudal, del diseño</translation>
    </message>
    <message>
        <source>An open valve in every group</source>
        <translation>Una válvula abierta en cada grupo</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Head for design flow everywhere</source>
        <translation>Altura para caudal de diseño en todas partes</translation>
    </message>
    <message>
        <source>Head saved</source>
        <translation>Altura ahorrada</translation>
    </message>
    <message>
        <source>Valves moved</source>
        <translation>Válvulas movidas</translation>
    </message>
    <message>
        <source>Readings taken</source>
        <translation>Lecturas hechas</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rondas</translation>
    </message>
    <message>
        <source>Largest error of a share, true in the building</source>
        <translation>Mayor error de una cuota, real en el edificio</translation>
    </message>
    <message>
        <source>Largest error of a share, as the valves read</source>
        <translation>Mayor error de una cuota, según leen las válvulas</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Ctrl</source>
        <translation>Ctrl</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Mayús</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Arriba</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (continuación)</translation>
    </message>
    <message>
        <source>The loop is too large to be drawn with its names; section %1 lists every branch.</source>
        <translation>La red es demasiado grande para dibujarla con nombres; la sección %1 lista cada ramal.</translation>
    </message>
    <message>
        <source>Part %1 of %2, from the pump outward, top to bottom</source>
        <translation>Parte %1 de %2, desde la bomba hacia fuera, de arriba abajo</translation>
    </message>
    <message>
        <source>This picture cannot be read.</source>
        <translation>Esta imagen no se puede leer.</translation>
    </message>
    <message>
        <source>%1, balance report, round %2, revision %3.pdf</source>
        <translation>%1, informe de equilibrado, ronda %2, revisión %3.pdf</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Workbook %1</source>
        <translation>Libro de trabajo %1</translation>
    </message>
    <message>
        <source>Newest record %1</source>
        <translation>Registro más reciente %1</translation>
    </message>
    <message>
        <source>The signatures cover this file with the tables attached to it. A block is only a picture: the signature panel of a PDF viewer, or Waterwright&apos;s verify, tells whether the file is unchanged and who signed it.</source>
        <translation>Las firmas cubren este archivo con las tablas adjuntas. Un recuadro es solo una imagen: el panel de firmas de un visor de PDF, o la verificación de Waterwright, dice si el archivo no ha cambiado y quién lo firmó.</translation>
    </message>
    <message>
        <source>Balance report</source>
        <translation>Informe de equilibrado</translation>
    </message>
    <message>
        <source>DRAFT, NOT SIGNED</source>
        <translation>BORRADOR, SIN FIRMAR</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>ronda %1</translation>
    </message>
    <message>
        <source>data %1</source>
        <translation>datos %1</translation>
    </message>
    <message>
        <source>draft until signed</source>
        <translation>borrador hasta su firma</translation>
    </message>
    <message>
        <source>%1, study of a changed zone.pdf</source>
        <translation>%1, estudio de una zona cambiada.pdf</translation>
    </message>
    <message>
        <source>A FORECAST, NO READINGS</source>
        <translation>PRONÓSTICO, SIN LECTURAS</translation>
    </message>
    <message>
        <source>Study of a changed zone</source>
        <translation>Estudio de una zona cambiada</translation>
    </message>
    <message>
        <source>a study, never signed</source>
        <translation>un estudio, nunca firmado</translation>
    </message>
    <message>
        <source>%1, balance report, round %2, revision %3 draft.pdf</source>
        <translation>%1, informe de equilibrado, ronda %2, revisión %3 borrador.pdf</translation>
    </message>
    <message>
        <source>SIMULATED</source>
        <translation>SIMULADO</translation>
    </message>
    <message>
        <source>%1, balance report, round %2, revision %3 copy.pdf</source>
        <translation>%1, informe de equilibrado, ronda %2, revisión %3 copia.pdf</translation>
    </message>
    <message>
        <source>COPY, NOT SIGNED</source>
        <translation>COPIA, SIN FIRMAR</translation>
    </message>
    <message>
        <source>copy of the signed report</source>
        <translation>copia del informe firmado</translation>
    </message>
</context>
<context>
    <name>ReviewPlace</name>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregido</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>ajustado</translation>
    </message>
    <message>
        <source>was, corrected</source>
        <translation>era, corregido</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>tachado</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>medidor %1</translation>
    </message>
</context>
<context>
    <name>RowRemoval</name>
    <message>
        <source>This workbook can only be read here.</source>
        <translation>Aquí este libro solo se puede leer.</translation>
    </message>
    <message>
        <source>There is no row here to remove.</source>
        <translation>Aquí no hay fila que quitar.</translation>
    </message>
</context>
<context>
    <name>SchematicView</name>
    <message>
        <source>at %1</source>
        <translation>en %1</translation>
    </message>
</context>
<context>
    <name>Term</name>
    <message>
        <source>SI</source>
        <translation>SI</translation>
    </message>
    <message>
        <source>US</source>
        <translation>US</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>adjusting</source>
        <translation>ajuste</translation>
    </message>
    <message>
        <source>attachment</source>
        <translation>adjunto</translation>
    </message>
    <message>
        <source>both</source>
        <translation>ambos</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>ramal</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>comment</source>
        <translation>comentario</translation>
    </message>
    <message>
        <source>deficiency</source>
        <translation>deficiencia</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>grados</translation>
    </message>
    <message>
        <source>direct</source>
        <translation>directo</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>no procede</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>engineer</source>
        <translation>ingeniero</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimado</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>etilenglicol</translation>
    </message>
    <message>
        <source>final</source>
        <translation>final</translation>
    </message>
    <message>
        <source>full open</source>
        <translation>totalmente abierta</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>mantener</translation>
    </message>
    <message>
        <source>index at design</source>
        <translation>más desfavorable en diseño</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>job</source>
        <translation>obra</translation>
    </message>
    <message>
        <source>left as it is</source>
        <translation>se deja así</translation>
    </message>
    <message>
        <source>limiter</source>
        <translation>limitador</translation>
    </message>
    <message>
        <source>linear</source>
        <translation>lineal</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manual</translation>
    </message>
    <message>
        <source>merge conflict</source>
        <translation>conflicto de fusión</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>not balanced</source>
        <translation>sin equilibrar</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>orifice</source>
        <translation>orificio</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>el nuestro</translation>
    </message>
    <message>
        <source>parallel</source>
        <translation>paralelo</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>por ciento</translation>
    </message>
    <message>
        <source>percent only</source>
        <translation>solo por ciento</translation>
    </message>
    <message>
        <source>percent or floor</source>
        <translation>por ciento o mínimo</translation>
    </message>
    <message>
        <source>person</source>
        <translation>persona</translation>
    </message>
    <message>
        <source>picv</source>
        <translation>PICV</translation>
    </message>
    <message>
        <source>proportional</source>
        <translation>proporcional</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propilenglicol</translation>
    </message>
    <message>
        <source>pump</source>
        <translation>bomba</translation>
    </message>
    <message>
        <source>pump reading</source>
        <translation>lectura de bomba</translation>
    </message>
    <message>
        <source>readiness line</source>
        <translation>línea de preparación</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>reference</source>
        <translation>referencia</translation>
    </message>
    <message>
        <source>remedied</source>
        <translation>subsanado</translation>
    </message>
    <message>
        <source>return</source>
        <translation>retorno</translation>
    </message>
    <message>
        <source>reverse</source>
        <translation>invertido</translation>
    </message>
    <message>
        <source>round</source>
        <translation>ronda</translation>
    </message>
    <message>
        <source>running</source>
        <translation>en marcha</translation>
    </message>
    <message>
        <source>sent</source>
        <translation>enviado</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>series</source>
        <translation>serie</translation>
    </message>
    <message>
        <source>set-point</source>
        <translation>consigna</translation>
    </message>
    <message>
        <source>shut valve</source>
        <translation>válvula cerrada</translation>
    </message>
    <message>
        <source>shutoff</source>
        <translation>caudal nulo</translation>
    </message>
    <message>
        <source>signed report</source>
        <translation>informe firmado</translation>
    </message>
    <message>
        <source>square</source>
        <translation>cuadrática</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>vigente</translation>
    </message>
    <message>
        <source>static</source>
        <translation>estático</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>tachado</translation>
    </message>
    <message>
        <source>superseded</source>
        <translation>sustituido</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>supervisor</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>impulsión</translation>
    </message>
    <message>
        <source>survey</source>
        <translation>levantamiento</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>técnico</translation>
    </message>
    <message>
        <source>theirs</source>
        <translation>el suyo</translation>
    </message>
    <message>
        <source>throttled to design</source>
        <translation>estrangulado a diseño</translation>
    </message>
    <message>
        <source>try</source>
        <translation>intento</translation>
    </message>
    <message>
        <source>turns</source>
        <translation>vueltas</translation>
    </message>
    <message>
        <source>two elbows</source>
        <translation>dos codos</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>válvula</translation>
    </message>
    <message>
        <source>verify limiter</source>
        <translation>verificar limitador</translation>
    </message>
    <message>
        <source>verify pressure-independent valve</source>
        <translation>verificar válvula independiente de la presión</translation>
    </message>
    <message>
        <source>walk</source>
        <translation>recorrido</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>witness</source>
        <translation>testigo</translation>
    </message>
    <message>
        <source>worst coil</source>
        <translation>batería más desfavorable</translation>
    </message>
    <message>
        <source>5 % of the plate</source>
        <translation>5 % de la placa</translation>
    </message>
    <message>
        <source>5 % of the plate or a fixed power</source>
        <translation>5 % de la placa o potencia fija</translation>
    </message>
    <message>
        <source>All isolating and balancing valves are open</source>
        <translation>Todas las válvulas de corte y de equilibrado están abiertas</translation>
    </message>
    <message>
        <source>Bypasses are closed</source>
        <translation>Los baipases están cerrados</translation>
    </message>
    <message>
        <source>Chillers or boilers keep their design temperatures</source>
        <translation>Enfriadoras o calderas mantienen sus temperaturas de diseño</translation>
    </message>
    <message>
        <source>Control valves stand at full flow through their coils, seen at the valve</source>
        <translation>Las válvulas de control están a caudal pleno por la batería, visto en la válvula</translation>
    </message>
    <message>
        <source>Ethylene glycol</source>
        <translation>Etilenglicol</translation>
    </message>
    <message>
        <source>Motor protection is set to the motor&apos;s plate</source>
        <translation>La protección del motor está ajustada a su placa</translation>
    </message>
    <message>
        <source>NO</source>
        <translation>NO</translation>
    </message>
    <message>
        <source>Pipework is complete and pressure tested</source>
        <translation>La tubería está completa y probada a presión</translation>
    </message>
    <message>
        <source>Propylene glycol</source>
        <translation>Propilenglicol</translation>
    </message>
    <message>
        <source>Pumps turn the right way, are aligned and lubricated</source>
        <translation>Las bombas giran bien, están alineadas y lubricadas</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Dispersión</translation>
    </message>
    <message>
        <source>Strainers are cleaned and start-up screens are out</source>
        <translation>Los filtros están limpios y las mallas de arranque retiradas</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Suma</translation>
    </message>
    <message>
        <source>The air side is balanced, where heat is to be checked</source>
        <translation>El lado de aire está equilibrado, donde se compruebe el calor</translation>
    </message>
    <message>
        <source>The controls hold that position until balancing is done</source>
        <translation>El control mantiene esa posición hasta terminar el equilibrado</translation>
    </message>
    <message>
        <source>The expansion vessel works and its pre-charge is checked</source>
        <translation>El vaso de expansión funciona y su precarga está comprobada</translation>
    </message>
    <message>
        <source>The loop is filled and vented at its high points; the pressure with the pumps off is noted</source>
        <translation>La red está llena y purgada en los puntos altos; la presión con bombas paradas está anotada</translation>
    </message>
    <message>
        <source>The loop is flushed and chemically cleaned</source>
        <translation>La red está enjuagada y limpiada químicamente</translation>
    </message>
    <message>
        <source>a cost that is not known</source>
        <translation>un coste desconocido</translation>
    </message>
    <message>
        <source>a power that is not known</source>
        <translation>una potencia desconocida</translation>
    </message>
    <message>
        <source>a reading of</source>
        <translation>una lectura de</translation>
    </message>
    <message>
        <source>a time not written</source>
        <translation>una hora sin anotar</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>como se tecleó</translation>
    </message>
    <message>
        <source>at </source>
        <translation>a las </translation>
    </message>
    <message>
        <source>blocks signing</source>
        <translation>impide firmar</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>chosen for this job</source>
        <translation>elegido para esta obra</translation>
    </message>
    <message>
        <source>comment, OPEN</source>
        <translation>comentario, ABIERTO</translation>
    </message>
    <message>
        <source>comment, resolved</source>
        <translation>comentario, resuelto</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregido</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>corrección</translation>
    </message>
    <message>
        <source>curve</source>
        <translation>curva</translation>
    </message>
    <message>
        <source>design losses</source>
        <translation>pérdidas de diseño</translation>
    </message>
    <message>
        <source>discharge valve</source>
        <translation>válvula de impulsión</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>dudoso</translation>
    </message>
    <message>
        <source>encrypted, or with cross-reference streams</source>
        <translation>cifrado, o con flujos de referencias cruzadas</translation>
    </message>
    <message>
        <source>error</source>
        <translation>error</translation>
    </message>
    <message>
        <source>field</source>
        <translation>campo</translation>
    </message>
    <message>
        <source>for comparison</source>
        <translation>para comparar</translation>
    </message>
    <message>
        <source>its clause on hydronic balancing</source>
        <translation>su cláusula de equilibrado hidráulico</translation>
    </message>
    <message>
        <source>its folder cannot be written</source>
        <translation>no se puede escribir en su carpeta</translation>
    </message>
    <message>
        <source>largest of any group</source>
        <translation>la mayor de los grupos</translation>
    </message>
    <message>
        <source>less</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>medidor</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>model learned from readings</source>
        <translation>modelo aprendido de lecturas</translation>
    </message>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>must be trimmed or slowed</source>
        <translation>hay que recortarla o bajar su velocidad</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>no cross-reference table</source>
        <translation>sin tabla de referencias cruzadas</translation>
    </message>
    <message>
        <source>no right to read it</source>
        <translation>sin permiso de lectura</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>sin valor</translation>
    </message>
    <message>
        <source>no valve</source>
        <translation>sin válvula</translation>
    </message>
    <message>
        <source>not a number</source>
        <translation>no es un número</translation>
    </message>
    <message>
        <source>not allowed</source>
        <translation>no permitido</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>sin decidir</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin introducir</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>no hace falta</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>sin leer</translation>
    </message>
    <message>
        <source>not readable</source>
        <translation>ilegible</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>of max</source>
        <translation>de máx.</translation>
    </message>
    <message>
        <source>of the terminals</source>
        <translation>de los terminales</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>vencido</translation>
    </message>
    <message>
        <source>pipe of </source>
        <translation>tubo de </translation>
    </message>
    <message>
        <source>place not entered</source>
        <translation>lugar sin introducir</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>presión</translation>
    </message>
    <message>
        <source>repeat</source>
        <translation>repetición</translation>
    </message>
    <message>
        <source>return run of </source>
        <translation>tramo de retorno de </translation>
    </message>
    <message>
        <source>round </source>
        <translation>ronda </translation>
    </message>
    <message>
        <source>setting </source>
        <translation>ajuste </translation>
    </message>
    <message>
        <source>slow</source>
        <translation>bajar la velocidad</translation>
    </message>
    <message>
        <source>supply run to </source>
        <translation>tramo de impulsión a </translation>
    </message>
    <message>
        <source>terminals</source>
        <translation>terminales</translation>
    </message>
    <message>
        <source>the adopted energy code</source>
        <translation>el código energético vigente</translation>
    </message>
    <message>
        <source>the curve</source>
        <translation>la curva</translation>
    </message>
    <message>
        <source>the meter</source>
        <translation>el medidor</translation>
    </message>
    <message>
        <source>the pump is reduced already</source>
        <translation>la bomba ya está reducida</translation>
    </message>
    <message>
        <source>the report is too large</source>
        <translation>el informe es demasiado grande</translation>
    </message>
    <message>
        <source>the same, each duty with its own efficiency</source>
        <translation>lo mismo, cada punto con su propio rendimiento</translation>
    </message>
    <message>
        <source>the terminals</source>
        <translation>los terminales</translation>
    </message>
    <message>
        <source>throttle</source>
        <translation>estrangular</translation>
    </message>
    <message>
        <source>too many revisions</source>
        <translation>demasiadas revisiones</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>recortar</translation>
    </message>
    <message>
        <source>undecidable</source>
        <translation>indecidible</translation>
    </message>
    <message>
        <source>under </source>
        <translation>menos de </translation>
    </message>
    <message>
        <source>unit of </source>
        <translation>unidad de </translation>
    </message>
    <message>
        <source>unknown power</source>
        <translation>potencia desconocida</translation>
    </message>
    <message>
        <source>valve </source>
        <translation>válvula </translation>
    </message>
    <message>
        <source>warning</source>
        <translation>aviso</translation>
    </message>
    <message>
        <source>with unit</source>
        <translation>con unidad</translation>
    </message>
    <message>
        <source>without a time</source>
        <translation>sin hora</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source> min ago</source>
        <translation> min antes</translation>
    </message>
    <message>
        <source>DP</source>
        <translation>Δp</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Precisión</translation>
    </message>
    <message>
        <source>Alone guards a boiler or chiller</source>
        <translation>Protege sola caldera o enfriadora</translation>
    </message>
    <message>
        <source>Amps, phase 1</source>
        <translation>Corriente, fase 1</translation>
    </message>
    <message>
        <source>Amps, phase 2</source>
        <translation>Corriente, fase 2</translation>
    </message>
    <message>
        <source>Amps, phase 3</source>
        <translation>Corriente, fase 3</translation>
    </message>
    <message>
        <source>Cv or Kv</source>
        <translation>Cv o Kv</translation>
    </message>
    <message>
        <source>Discharge</source>
        <translation>Impulsión</translation>
    </message>
    <message>
        <source>Discharge bore</source>
        <translation>Diámetro de impulsión</translation>
    </message>
    <message>
        <source>Discharge gauge over shaft</source>
        <translation>Manómetro de impulsión sobre eje</translation>
    </message>
    <message>
        <source>Discharge valve at</source>
        <translation>Válvula de impulsión en</translation>
    </message>
    <message>
        <source>Discharge valve, tag</source>
        <translation>Válvula de impulsión, etiqueta</translation>
    </message>
    <message>
        <source>Flow by meter</source>
        <translation>Caudal por caudalímetro</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manómetro</translation>
    </message>
    <message>
        <source>Has a drive</source>
        <translation>Tiene variador</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Rodete</translation>
    </message>
    <message>
        <source>Input power</source>
        <translation>Potencia absorbida</translation>
    </message>
    <message>
        <source>Least dp</source>
        <translation>Δp mínima</translation>
    </message>
    <message>
        <source>Least impeller</source>
        <translation>Rodete mínimo</translation>
    </message>
    <message>
        <source>Least speed, of rated</source>
        <translation>Velocidad mínima, del nominal</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>More shut</source>
        <translation>Casi cerrada</translation>
    </message>
    <message>
        <source>Most dp</source>
        <translation>Δp máxima</translation>
    </message>
    <message>
        <source>Motor efficiency</source>
        <translation>Rendimiento del motor</translation>
    </message>
    <message>
        <source>Motor power</source>
        <translation>Potencia del motor</translation>
    </message>
    <message>
        <source>Motor speed, plate</source>
        <translation>Velocidad motor, placa</translation>
    </message>
    <message>
        <source>No-load amps</source>
        <translation>Corriente en vacío</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Or rise, one gauge</source>
        <translation>O subida, un manómetro</translation>
    </message>
    <message>
        <source>Plate amps</source>
        <translation>Corriente, placa</translation>
    </message>
    <message>
        <source>Plate power factor</source>
        <translation>Factor de potencia, placa</translation>
    </message>
    <message>
        <source>Plate volts</source>
        <translation>Tensión, placa</translation>
    </message>
    <message>
        <source>Positive displacement</source>
        <translation>Volumétrica</translation>
    </message>
    <message>
        <source>Power factor</source>
        <translation>Factor de potencia</translation>
    </message>
    <message>
        <source>Rated speed</source>
        <translation>Velocidad nominal</translation>
    </message>
    <message>
        <source>Reason, if doubted</source>
        <translation>Motivo, si dudoso</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>En marcha</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>Service factor</source>
        <translation>Factor de servicio</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Suction</source>
        <translation>Aspiración</translation>
    </message>
    <message>
        <source>Suction bore</source>
        <translation>Diámetro de aspiración</translation>
    </message>
    <message>
        <source>Suction gauge over shaft</source>
        <translation>Manómetro de aspiración sobre eje</translation>
    </message>
    <message>
        <source>Synchronous speed</source>
        <translation>Velocidad síncrona</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Volts, phases 1-2</source>
        <translation>Tensión, fases 1-2</translation>
    </message>
    <message>
        <source>Volts, phases 2-3</source>
        <translation>Tensión, fases 2-3</translation>
    </message>
    <message>
        <source>Volts, phases 3-1</source>
        <translation>Tensión, fases 3-1</translation>
    </message>
    <message>
        <source>a date outside the calendar</source>
        <translation>una fecha fuera del calendario</translation>
    </message>
    <message>
        <source>a recorded change does not fit its tables</source>
        <translation>un cambio registrado no encaja en sus tablas</translation>
    </message>
    <message>
        <source>a text that the file does not have</source>
        <translation>un texto que el archivo no tiene</translation>
    </message>
    <message>
        <source>above the index circuit with open valves</source>
        <translation>sobre el circuito más desfavorable con válvulas abiertas</translation>
    </message>
    <message>
        <source>above the loop with its valves as read</source>
        <translation>sobre la red con sus válvulas como se leyeron</translation>
    </message>
    <message>
        <source>age of old readings</source>
        <translation>edad de las lecturas viejas</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation>altitud</translation>
    </message>
    <message>
        <source>at full speed</source>
        <translation>a plena velocidad</translation>
    </message>
    <message>
        <source>at least 2</source>
        <translation>al menos 2</translation>
    </message>
    <message>
        <source>band of target</source>
        <translation>banda del objetivo</translation>
    </message>
    <message>
        <source>by a balanced round</source>
        <translation>según una ronda equilibrada</translation>
    </message>
    <message>
        <source>by the design losses</source>
        <translation>según las pérdidas de diseño</translation>
    </message>
    <message>
        <source>by the learned loop</source>
        <translation>según la red aprendida</translation>
    </message>
    <message>
        <source>clause</source>
        <translation>cláusula</translation>
    </message>
    <message>
        <source>client</source>
        <translation>cliente</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>reloj</translation>
    </message>
    <message>
        <source>clock offset</source>
        <translation>desfase del reloj</translation>
    </message>
    <message>
        <source>code and edition</source>
        <translation>código y edición</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>exactly 3</source>
        <translation>exactamente 3</translation>
    </message>
    <message>
        <source>exception claimed</source>
        <translation>excepción invocada</translation>
    </message>
    <message>
        <source>fill pressure</source>
        <translation>presión de llenado</translation>
    </message>
    <message>
        <source>glycol by mass</source>
        <translation>glicol en masa</translation>
    </message>
    <message>
        <source>highest off design</source>
        <translation>desvío más alto del diseño</translation>
    </message>
    <message>
        <source>hours a year</source>
        <translation>horas al año</translation>
    </message>
    <message>
        <source>it has no sheet</source>
        <translation>no tiene hojas</translation>
    </message>
    <message>
        <source>it names no workbook</source>
        <translation>no nombra ningún libro</translation>
    </message>
    <message>
        <source>lowest off design</source>
        <translation>desvío más bajo del diseño</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>no regular file, or no permission</source>
        <translation>no es un archivo común, o sin permiso</translation>
    </message>
    <message>
        <source>no such folder, or no permission</source>
        <translation>no existe la carpeta, o sin permiso</translation>
    </message>
    <message>
        <source>price of a kWh</source>
        <translation>precio del kWh</translation>
    </message>
    <message>
        <source>rpm</source>
        <translation>rpm</translation>
    </message>
    <message>
        <source>site</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>time uncertain</source>
        <translation>hora incierta</translation>
    </message>
    <message>
        <source>unknown person</source>
        <translation>persona desconocida</translation>
    </message>
    <message>
        <source> days</source>
        <translation> días</translation>
    </message>
    <message>
        <source> days ago</source>
        <translation> días antes</translation>
    </message>
    <message>
        <source> h ago</source>
        <translation> h antes</translation>
    </message>
    <message>
        <source> months</source>
        <translation> meses</translation>
    </message>
    <message>
        <source> months ago</source>
        <translation> meses antes</translation>
    </message>
    <message>
        <source> s ago</source>
        <translation> s antes</translation>
    </message>
    <message>
        <source> years</source>
        <translation> años</translation>
    </message>
    <message>
        <source> years ago</source>
        <translation> años antes</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>caudal</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retirado</translation>
    </message>
    <message>
        <source>by the pump&apos;s curve</source>
        <translation>según la curva de la bomba</translation>
    </message>
    <message>
        <source>by the sum of the flows</source>
        <translation>según la suma de los caudales</translation>
    </message>
    <message>
        <source>exempt as a small excess</source>
        <translation>exento por poco exceso</translation>
    </message>
    <message>
        <source>exempt as a small motor</source>
        <translation>exento por motor pequeño</translation>
    </message>
    <message>
        <source>not within tolerance</source>
        <translation>fuera de la tolerancia</translation>
    </message>
    <message>
        <source>shutoff test</source>
        <translation>prueba a caudal nulo</translation>
    </message>
    <message>
        <source>within tolerance</source>
        <translation>dentro de la tolerancia</translation>
    </message>
    <message>
        <source>by the curve through the gauges of round </source>
        <translation>según la curva ajustada a los manómetros de la ronda </translation>
    </message>
    <message>
        <source>from the pump&apos;s curve</source>
        <translation>según la curva de la bomba</translation>
    </message>
    <message>
        <source>from the pump&apos;s curve through the gauges of round </source>
        <translation>según la curva de la bomba ajustada a los manómetros de la ronda </translation>
    </message>
    <message>
        <source>without a name</source>
        <translation>sin nombre</translation>
    </message>
    <message>
        <source>not proved</source>
        <translation>no demostrado</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>demostrado</translation>
    </message>
    <message>
        <source>withdrawn or sent back</source>
        <translation>retirada o devuelta</translation>
    </message>
    <message>
        <source>With other pumps</source>
        <translation>Con otras bombas</translation>
    </message>
    <message>
        <source>at the speed of the last round</source>
        <translation>a la velocidad de la última ronda</translation>
    </message>
    <message>
        <source>further</source>
        <translation>más</translation>
    </message>
    <message>
        <source>to </source>
        <translation>hasta </translation>
    </message>
    <message>
        <source>Cooling coil {1}</source>
        <translation>Batería de frío {1}</translation>
    </message>
    <message>
        <source>DN 15 low</source>
        <translation>DN 15 reducido</translation>
    </message>
    <message>
        <source>Practice building {1}</source>
        <translation>Edificio de práctica {1}</translation>
    </message>
    <message>
        <source>Practice valve</source>
        <translation>Válvula de práctica</translation>
    </message>
    <message>
        <source>Simulated, no real plant</source>
        <translation>Simulado, no es una instalación real</translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation>Persona en prácticas</translation>
    </message>
    <message>
        <source>as it runs</source>
        <translation>tal como gira</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>dp meter</source>
        <translation>medidor de Δp</translation>
    </message>
    <message>
        <source>input power</source>
        <translation>potencia absorbida</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>práctica</translation>
    </message>
    <message>
        <source>pump gauge</source>
        <translation>manómetro de bomba</translation>
    </message>
    <message>
        <source>throttled</source>
        <translation>estrangulada</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
</context>
<context>
    <name>ValveChart</name>
    <message>
        <source>Flow coefficient over setting</source>
        <translation>Coeficiente de caudal según ajuste</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>A range of dp without a table: for a limiter or a pressure-independent valve.</source>
        <translation>Un rango de Δp sin tabla: para un limitador o una válvula independiente de la presión.</translation>
    </message>
    <message>
        <source>No points yet: type setting and coefficient, or paste two columns from a spreadsheet (Ctrl+V).</source>
        <translation>Aún sin puntos: escriba ajuste y coeficiente, o pegue dos columnas de una hoja de cálculo (Ctrl+V).</translation>
    </message>
    <message>
        <source>Setting, %1</source>
        <translation>Ajuste, %1</translation>
    </message>
    <message>
        <source>%1 %2 fully open, at setting %3.</source>
        <translation>%1 %2 totalmente abierta, con ajuste %3.</translation>
    </message>
    <message>
        <source>No valve model yet: add one, or paste a table (Ctrl+V).</source>
        <translation>Aún no hay modelo de válvula: añada uno o pegue una tabla (Ctrl+V).</translation>
    </message>
</context>
<context>
    <name>WalkSheet</name>
    <message>
        <source>Walk sheet</source>
        <translation>Hoja de recorrido</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>ronda %1</translation>
    </message>
    <message>
        <source>walk sheet</source>
        <translation>hoja de recorrido</translation>
    </message>
    <message>
        <source>Round %1, %2</source>
        <translation>Ronda %1, %2</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Office</source>
        <translation>Oficina</translation>
    </message>
    <message>
        <source>Daylight</source>
        <translation>Luz de día</translation>
    </message>
    <message>
        <source>Plant-room dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>No workbook open</source>
        <translation>Ningún libro abierto</translation>
    </message>
    <message>
        <source>PRACTICE · %1</source>
        <translation>PRÁCTICA · %1</translation>
    </message>
    <message>
        <source>Round %1, %2, %3</source>
        <translation>Ronda %1, %2, %3</translation>
    </message>
    <message>
        <source>Meter %1</source>
        <translation>Medidor %1</translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation>, venció el %1</translation>
    </message>
    <message>
        <source>, calibrated to %1</source>
        <translation>, calibrado hasta %1</translation>
    </message>
    <message>
        <source>Not stored: %1</source>
        <translation>Sin guardar: %1</translation>
    </message>
    <message>
        <source>last stored %1: %2</source>
        <translation>último guardado %1: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>valves read, short</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <comment>meter, short</comment>
        <translation>%1 vencido</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>stored, short</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>read %1 of %2 valves</source>
        <translation>leídas %1 de %2 válvulas</translation>
    </message>
    <message>
        <source>No person chosen, menu Round, Person: the account %1</source>
        <translation>Ninguna persona elegida, menú Ronda, Persona: la cuenta %1</translation>
    </message>
    <message>
        <source>At this desk: %1</source>
        <translation>En este puesto: %1</translation>
    </message>
    <message>
        <source>nobody chosen</source>
        <translation>nadie elegido</translation>
    </message>
    <message>
        <source>Valves to read: %1 of terminals, %2 of branches above them</source>
        <translation>Válvulas por leer: %1 de terminales, %2 de ramales por encima</translation>
    </message>
    <message>
        <source>last stored %1</source>
        <translation>último guardado %1</translation>
    </message>
    <message>
        <source>Rd %1</source>
        <comment>round, short</comment>
        <translation>Rda. %1</translation>
    </message>
</context>
<context>
    <name>Word</name>
    <message>
        <source>Not read</source>
        <translation>Sin leer</translation>
    </message>
    <message>
        <source>Short</source>
        <translation>Falta</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Exceso</translation>
    </message>
    <message>
        <source>On share</source>
        <translation>En cuota</translation>
    </message>
    <message>
        <source>Drifted</source>
        <translation>Desviado</translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation>Dudoso</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation>ABRIR</translation>
    </message>
    <message>
        <source>CLOSE</source>
        <translation>CERRAR</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation>MANTENER</translation>
    </message>
    <message>
        <source>READ AGAIN</source>
        <translation>RELEER</translation>
    </message>
    <message>
        <source>Survey</source>
        <translation>Levantamiento</translation>
    </message>
    <message>
        <source>Adjusting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>Witness</source>
        <translation>Testigo</translation>
    </message>
    <message>
        <source>Manual valve</source>
        <translation>Válvula manual</translation>
    </message>
    <message>
        <source>Orifice</source>
        <translation>Orificio</translation>
    </message>
    <message>
        <source>Flow limiter</source>
        <translation>Limitador de caudal</translation>
    </message>
    <message>
        <source>Pressure-independent</source>
        <translation>Independiente de la presión</translation>
    </message>
    <message>
        <source>No valve</source>
        <translation>Sin válvula</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Ethylene glycol</source>
        <translation>Etilenglicol</translation>
    </message>
    <message>
        <source>Propylene glycol</source>
        <translation>Propilenglicol</translation>
    </message>
    <message>
        <source>In range</source>
        <translation>En rango</translation>
    </message>
    <message>
        <source>At shut stop</source>
        <translation>Tope cerrado</translation>
    </message>
    <message>
        <source>At open stop</source>
        <translation>Tope abierto</translation>
    </message>
    <message>
        <source>NO FURTHER</source>
        <translation>AL TOPE</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>sent</source>
        <translation>enviada</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptada</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>devuelta</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Read, no share</source>
        <translation>Leído, sin cuota</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::AdjustPlace</name>
    <message>
        <source>Share of the valve in hand</source>
        <translation>Cuota de la válvula en mano</translation>
    </message>
    <message>
        <source>What the aim rests on</source>
        <translation>En qué se basa la meta</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Aim DP</source>
        <translation>Δp meta</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Tries</source>
        <translation>Intentos</translation>
    </message>
    <message>
        <source>Setting to try next</source>
        <translation>Próximo ajuste a probar</translation>
    </message>
    <message>
        <source>Hold Here, Next Valve</source>
        <translation>Mantener, válvula siguiente</translation>
    </message>
    <message>
        <source>Next valve</source>
        <translation>Válvula siguiente</translation>
    </message>
    <message>
        <source>Adjust</source>
        <translation>Ajustar</translation>
    </message>
    <message>
        <source>Valve in hand</source>
        <translation>Válvula en mano</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Lo que falta aquí</translation>
    </message>
    <message>
        <source>Find valve to adjust</source>
        <translation>Buscar válvula para ajustar</translation>
    </message>
    <message>
        <source>tag or number</source>
        <translation>etiqueta o número</translation>
    </message>
    <message>
        <source>&amp;Find valve</source>
        <translation>&amp;Buscar válvula</translation>
    </message>
    <message>
        <source>Neighboring settings and their aims</source>
        <translation>Ajustes vecinos y sus metas</translation>
    </message>
    <message>
        <source>DP read at this setting</source>
        <translation>Δp leída con este ajuste</translation>
    </message>
    <message>
        <source>&amp;Setting</source>
        <translation>A&amp;juste</translation>
    </message>
    <message>
        <source>Setting of the handle</source>
        <translation>Ajuste del volante</translation>
    </message>
    <message>
        <source>expect %1</source>
        <translation>se espera %1</translation>
    </message>
    <message>
        <source>&amp;DP %1 at reference %2</source>
        <translation>Δ&amp;p %1 en la referencia %2</translation>
    </message>
    <message>
        <source>No valve in hand</source>
        <translation>Ninguna válvula en mano</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Ningún libro abierto. Abra uno (Ctrl+O) o cree una obra (Ctrl+N).</translation>
    </message>
    <message>
        <source>No valve to adjust yet. Add the branches in System (Alt+2).</source>
        <translation>Aún no hay válvula que ajustar. Añada los ramales en Sistema (Alt+2).</translation>
    </message>
    <message>
        <source>Read one full round first (Alt+3); the aim needs every branch.</source>
        <translation>Lea antes una ronda completa (Alt+3); la meta necesita cada ramal.</translation>
    </message>
    <message>
        <source>This branch has no valve to adjust. Find another (Ctrl+J).</source>
        <translation>Este ramal no tiene válvula que ajustar. Busque otra (Ctrl+J).</translation>
    </message>
    <message>
        <source>%1 Find another valve with Ctrl+J.</source>
        <translation>%1 Busque otra válvula con Ctrl+J.</translation>
    </message>
    <message>
        <source>of %1 %2</source>
        <translation>de %1 %2</translation>
    </message>
    <message>
        <source>not read here yet</source>
        <translation>aún sin leer aquí</translation>
    </message>
    <message>
        <source>Up, Down %1</source>
        <translation>Arriba, Abajo %1</translation>
    </message>
    <message>
        <source>hold %1–%2</source>
        <translation>mantener %1–%2</translation>
    </message>
    <message>
        <source>the valve is shut</source>
        <translation>la válvula está cerrada</translation>
    </message>
    <message>
        <source>aim %1, hold %2 to %3</source>
        <translation>meta %1, mantener %2 a %3</translation>
    </message>
    <message>
        <source>&amp;DP %1</source>
        <translation>Δ&amp;p %1</translation>
    </message>
    <message>
        <source>&amp;DP %1, valve shut</source>
        <translation>Δ&amp;p %1, válvula cerrada</translation>
    </message>
    <message>
        <source>&amp;DP %1, read again</source>
        <translation>Δ&amp;p %1, releer</translation>
    </message>
    <message>
        <source>next: %1, %2</source>
        <translation>siguiente: %1, %2</translation>
    </message>
    <message>
        <source>no valve is left to adjust</source>
        <translation>no queda válvula por ajustar</translation>
    </message>
    <message>
        <source>%1, %2 % of target</source>
        <translation>%1, %2 % del objetivo</translation>
    </message>
    <message>
        <source>digits Enter stores this one reading and returns</source>
        <translation>cifras Intro guarda esta lectura y vuelve</translation>
    </message>
    <message>
        <source>Esc gives it up</source>
        <translation>Esc la deja</translation>
    </message>
    <message>
        <source>Alt+3 walk</source>
        <translation>Alt+3 recorrido</translation>
    </message>
    <message>
        <source>Ctrl+J find</source>
        <translation>Ctrl+J buscar</translation>
    </message>
    <message>
        <source>digits Enter logs a try</source>
        <translation>cifras Intro intento</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W closes the round first</source>
        <translation>Ctrl+Mayús+W cierra antes la ronda</translation>
    </message>
    <message>
        <source>Up, Down setting</source>
        <translation>Arriba, Abajo ajuste</translation>
    </message>
    <message>
        <source>Ctrl+Enter hold, next</source>
        <translation>Ctrl+Intro mantener, siguiente</translation>
    </message>
    <message>
        <source>Ctrl+B reference</source>
        <translation>Ctrl+B referencia</translation>
    </message>
    <message>
        <source>Ctrl+I advice</source>
        <translation>Ctrl+I consejo</translation>
    </message>
    <message>
        <source>Esc clears</source>
        <translation>Esc borra</translation>
    </message>
    <message>
        <source>digits Enter moves the handle</source>
        <translation>cifras Intro gira el volante</translation>
    </message>
    <message>
        <source>Esc back</source>
        <translation>Esc volver</translation>
    </message>
    <message>
        <source>Enter takes the setting</source>
        <translation>Intro toma el ajuste</translation>
    </message>
    <message>
        <source>Enter goes to the valve</source>
        <translation>Intro va a la válvula</translation>
    </message>
    <message>
        <source>Ctrl+Enter hold</source>
        <translation>Ctrl+Intro mantener</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T advised setting</source>
        <translation>Ctrl+Mayús+T ajuste aconsejado</translation>
    </message>
    <message>
        <source>fully open</source>
        <translation>totalmente abierta</translation>
    </message>
    <message>
        <source>lowest setting</source>
        <translation>ajuste mínimo</translation>
    </message>
    <message>
        <source>Hold Here</source>
        <translation>Mantener aquí</translation>
    </message>
    <message>
        <source>no aim while it is read apart</source>
        <translation>sin meta durante esta lectura</translation>
    </message>
    <message>
        <source>no aim here</source>
        <translation>aquí sin meta</translation>
    </message>
    <message>
        <source>dp across %1 while it is shut</source>
        <translation>Δp en %1 mientras está cerrada</translation>
    </message>
    <message>
        <source>Shut %1 and read the dp across it. Enter stores it, then set the handle back to %2; Esc comes back without it.</source>
        <translation>Cierre %1 y lea la Δp en ella. Intro la guarda, luego vuelva el volante a %2; Esc vuelve sin ella.</translation>
    </message>
    <message>
        <source>shut for a moment</source>
        <translation>cerrada un momento</translation>
    </message>
    <message>
        <source>then back to %1</source>
        <translation>luego de vuelta a %1</translation>
    </message>
    <message>
        <source>valve shut</source>
        <translation>válvula cerrada</translation>
    </message>
    <message>
        <source>SHUT</source>
        <translation>CERRADA</translation>
    </message>
    <message>
        <source>dp at the reference %1, not at %2</source>
        <translation>Δp en la referencia %1, no en %2</translation>
    </message>
    <message>
        <source>Reference %1</source>
        <translation>Referencia %1</translation>
    </message>
    <message>
        <source>You read %1 now, not %2. Enter stores it and comes back to %2; Esc comes back without it.</source>
        <translation>Ahora lee %1, no %2. Intro guarda y vuelve a %2; Esc vuelve sin lectura.</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>leave it there</source>
        <translation>déjela ahí</translation>
    </message>
    <message>
        <source>last at %1</source>
        <translation>última en %1</translation>
    </message>
    <message>
        <source>REFERENCE</source>
        <translation>REFERENCIA</translation>
    </message>
    <message>
        <source>only %1 available</source>
        <translation>solo %1 disponibles</translation>
    </message>
    <message>
        <source>Alt+Shift+Up, Alt+Shift+Down working order</source>
        <translation>Alt+Mayús+Arriba, Alt+Mayús+Abajo orden de trabajo</translation>
    </message>
</context>
<context>
    <name>ww::ui::AdviceModel</name>
    <message>
        <source>self-acting</source>
        <translation>automática</translation>
    </message>
    <message>
        <source>cannot be set</source>
        <translation>no ajustable</translation>
    </message>
    <message>
        <source>scale too short</source>
        <translation>escala corta</translation>
    </message>
    <message>
        <source>fully open</source>
        <translation>totalmente abierta</translation>
    </message>
    <message>
        <source>set</source>
        <translation>puesto</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Poner en</translation>
    </message>
    <message>
        <source>As read, %</source>
        <translation>Según lectura, %</translation>
    </message>
    <message>
        <source>In truth, %</source>
        <translation>En realidad, %</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>leave it</source>
        <translation>dejarla</translation>
    </message>
    <message>
        <source>hold for now</source>
        <translation>mantener por ahora</translation>
    </message>
    <message>
        <source>by the reading</source>
        <translation>según lectura</translation>
    </message>
    <message>
        <source>held</source>
        <translation>mantenida</translation>
    </message>
    <message>
        <source>All set %1</source>
        <translation>Todo ajustado %1</translation>
    </message>
    <message>
        <source>open to %1</source>
        <translation>abrir a %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::AdvicePanel</name>
    <message>
        <source>Enter takes the valve in hand at its advised setting</source>
        <translation>Intro toma la válvula con su ajuste aconsejado</translation>
    </message>
    <message>
        <source>State of the advice</source>
        <translation>Estado del consejo</translation>
    </message>
    <message>
        <source>Computing</source>
        <translation>Calculando</translation>
    </message>
    <message>
        <source>About the advice</source>
        <translation>Sobre el consejo</translation>
    </message>
    <message>
        <source>About the advice, scrolled</source>
        <translation>Sobre el consejo, desplazado</translation>
    </message>
    <message>
        <source>computing…</source>
        <translation>calculando…</translation>
    </message>
    <message>
        <source>No advice yet</source>
        <translation>Aún sin consejo</translation>
    </message>
    <message>
        <source>Advice not ready</source>
        <translation>Consejo no listo</translation>
    </message>
    <message>
        <source>Advice, unverified</source>
        <translation>Consejo, sin verificar</translation>
    </message>
    <message>
        <source>Helps most: %1</source>
        <translation>Lo que más ayuda: %1</translation>
    </message>
    <message>
        <source>Advised settings in the working order</source>
        <translation>Ajustes aconsejados en el orden de trabajo</translation>
    </message>
    <message>
        <source>Read the survey first: the advice is made from its readings.</source>
        <translation>Haga primero el levantamiento: el consejo sale de sus lecturas.</translation>
    </message>
    <message>
        <source>Shares confirmed by a round</source>
        <translation>Cuotas confirmadas por una ronda</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>más del 99 %</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>menos del 1 %</translation>
    </message>
    <message>
        <source>at least %1 %</source>
        <translation>al menos %1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Once all are set as advised: chance that every share reads within ±%1 % of target: %2; that it truly is, with the errors of the valve tables: %3.</source>
        <translation>Cuando todas estén ajustadas como se aconseja: probabilidad de que cada cuota se lea en ±%1 % del objetivo: %2; de que lo esté de verdad, con los errores de las tablas de válvula: %3.</translation>
    </message>
    <message>
        <source>Working order: the riser farthest over its target first, in it the valve farthest over, its own valve last.</source>
        <translation>Orden de trabajo: primero el montante más por encima de su objetivo, en él la válvula más por encima, su propia válvula al final.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>The pump makes too little at design flow: see that the index path is open and that strainers and filters are clean, check speed and impeller. How much it lacks: Pump, Decision.</source>
        <translation>La bomba da demasiado poco a caudal de diseño: compruebe que el camino más desfavorable está abierto y los filtros limpios, revise velocidad y rodete. Cuánto falta: Bomba, Decisión.</translation>
    </message>
    <message>
        <source>Whether the pump is short cannot be told: read its gauges and every terminal again once all valves are set. Its figures: Pump, Decision.</source>
        <translation>No puede decirse si a la bomba le falta altura: lea otra vez sus manómetros y cada terminal cuando todas las válvulas estén ajustadas. Sus cifras: Bomba, Decisión.</translation>
    </message>
    <message>
        <source>The pump makes enough at design flow. How much too much, and by which speed or impeller to take it away: Pump, Decision. Change it after the valves are set, by a licensed person and within the limits of the maker and the local code.</source>
        <translation>La bomba da bastante a caudal de diseño. Cuánto sobra, y con qué velocidad o rodete se quita: Bomba, Decisión. Cámbiela tras ajustar las válvulas, por una persona habilitada y dentro de los límites del fabricante y la norma local.</translation>
    </message>
    <message>
        <source>Advice of earlier readings</source>
        <translation>Consejo de lecturas anteriores</translation>
    </message>
    <message>
        <source>Working order: changed here by hand; Ctrl+Alt+B goes back to the advised one.</source>
        <translation>Orden de trabajo: cambiado aquí a mano; Ctrl+Alt+B vuelve al aconsejado.</translation>
    </message>
    <message>
        <source>The pump makes too little at design flow at its present speed: raise it to about %1 % of full speed, by a licensed person and within the limits of the maker. Where that does not help, see that the index path is open and that strainers and filters are clean. Its figures: Pump, Decision.</source>
        <translation>La bomba da demasiado poco con el caudal de diseño a su velocidad actual: súbala hasta cerca del %1 % de la velocidad plena, por una persona autorizada y dentro de los límites del fabricante. Si no ayuda, compruebe que el camino más desfavorable esté abierto y que los filtros estén limpios. Sus cifras: Bomba, Decisión.</translation>
    </message>
</context>
<context>
    <name>ww::ui::AimStripModel</name>
    <message>
        <source>setting %1, %2, %3</source>
        <translation>ajuste %1, %2, %3</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>ajuste</translation>
    </message>
    <message>
        <source>aim %1</source>
        <translation>meta %1</translation>
    </message>
    <message>
        <source>hold %1</source>
        <translation>mantener %1</translation>
    </message>
    <message>
        <source>expect %1</source>
        <translation>se espera %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::CertificateDialog</name>
    <message>
        <source>Make Certificate</source>
        <translation>Crear certificado</translation>
    </message>
    <message>
        <source>Make a Certificate</source>
        <translation>Crear un certificado</translation>
    </message>
    <message>
        <source>A self-made certificate shows that reports come from the same hand. Nobody else vouches for the name, so verifying never calls it trusted: tell its fingerprint to whoever must rely on it, or use a key that an issuer of certificates gave you.</source>
        <translation>Un certificado autofirmado muestra que los informes son de la misma mano. Nadie más responde del nombre, por eso la verificación nunca lo da por fiable: comunique su huella digital a quien deba fiarse de él, o use una clave que le haya dado una autoridad de certificación.</translation>
    </message>
    <message>
        <source>Name of the person</source>
        <translation>Nombre de la persona</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Empresa</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Confírmela</translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation>Contraseña nueva</translation>
    </message>
    <message>
        <source>The same passphrase again</source>
        <translation>Confirme la contraseña</translation>
    </message>
    <message>
        <source>Type the name of the person.</source>
        <translation>Escriba el nombre de la persona.</translation>
    </message>
    <message>
        <source>The passphrase needs %1 characters or more.</source>
        <translation>La contraseña necesita al menos %1 caracteres.</translation>
    </message>
    <message>
        <source>The two passphrases are not the same.</source>
        <translation>Las dos contraseñas no son iguales.</translation>
    </message>
</context>
<context>
    <name>ww::ui::ClockDialog</name>
    <message>
        <source>Set Offset</source>
        <translation>Fijar el desfase</translation>
    </message>
    <message>
        <source>Set Clock Offset</source>
        <translation>Corregir el reloj</translation>
    </message>
    <message>
        <source>What this laptop&apos;s clock is off by is added to every time written in this job from now on, and is told in the report. Times written before stay as they are.</source>
        <translation>Lo que se desvía el reloj de este portátil se suma desde ahora a cada hora escrita en esta obra y consta en el informe. Las horas escritas antes quedan como están.</translation>
    </message>
    <message>
        <source>True date and time here</source>
        <translation>Fecha y hora verdaderas aquí</translation>
    </message>
    <message>
        <source>True &amp;date and time here</source>
        <translation>Fech&amp;a y hora verdaderas aquí</translation>
    </message>
    <message>
        <source>Use Own Clock</source>
        <translation>Usar el reloj del portátil</translation>
    </message>
    <message>
        <source>For a clock that is right again: nothing is added to it any more</source>
        <translation>Para un reloj que vuelve a estar bien: no se le suma nada más</translation>
    </message>
    <message>
        <source>Write day and time as in 2026-03-02 14:05.</source>
        <translation>Escriba día y hora como 2026-03-02 14:05.</translation>
    </message>
    <message>
        <source>That is what is written already; nothing is to be set.</source>
        <translation>Así se escribe ya; no hay nada que fijar.</translation>
    </message>
    <message>
        <source>This laptop&apos;s own clock is right; nothing is added to it any more.</source>
        <translation>El reloj de este portátil está bien; no se le suma nada más.</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>This laptop&apos;s clock is %1 behind.</source>
        <translation>El reloj de este portátil va atrasado %1.</translation>
    </message>
    <message>
        <source>This laptop&apos;s clock is %1 ahead.</source>
        <translation>El reloj de este portátil va adelantado %1.</translation>
    </message>
</context>
<context>
    <name>ww::ui::CloseRoundPanel</name>
    <message>
        <source>Go Back to Grid</source>
        <translation>Volver a la tabla</translation>
    </message>
    <message>
        <source>Open items of the round</source>
        <translation>Puntos abiertos de la ronda</translation>
    </message>
    <message>
        <source>Close Round %1</source>
        <translation>Cerrar la ronda %1</translation>
    </message>
    <message>
        <source>Round %1 has no open items.</source>
        <translation>La ronda %1 no tiene puntos abiertos.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) need a reading or a reason before round %1 is closed.</source>
        <translation>
            <numerusform>%n punto necesita una lectura o un motivo antes de cerrar la ronda %1.</numerusform>
            <numerusform>%n puntos necesitan una lectura o un motivo antes de cerrar la ronda %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>Reason for %1</source>
        <translation>Motivo de %1</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Read %1</source>
        <translation>Leer %1</translation>
    </message>
    <message numerus="yes">
        <source>Round %1 can be closed; %n reading(s) do not fit the others.</source>
        <translation>
            <numerusform>La ronda %1 puede cerrarse; %n lectura no encaja con las demás.</numerusform>
            <numerusform>La ronda %1 puede cerrarse; %n lecturas no encajan con las demás.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Mark %n as Not Turned</source>
        <translation>
            <numerusform>Anotar %n como no girada</numerusform>
            <numerusform>Anotar %n como no giradas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) need a reading or a reason before round %1 is sent.</source>
        <translation>
            <numerusform>%n punto necesita una lectura o un motivo antes de enviar la ronda %1.</numerusform>
            <numerusform>%n puntos necesitan una lectura o un motivo antes de enviar la ronda %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::CodePage</name>
    <message>
        <source>not chosen</source>
        <translation>sin elegir</translation>
    </message>
    <message>
        <source>5 % of the plate</source>
        <translation>5 % de la placa</translation>
    </message>
    <message>
        <source>Form of the clause</source>
        <translation>Forma de la cláusula</translation>
    </message>
    <message>
        <source>&amp;Allowed excess</source>
        <translation>E&amp;xceso permitido</translation>
    </message>
    <message>
        <source>Code and e&amp;dition</source>
        <translation>Código y e&amp;dición</translation>
    </message>
    <message>
        <source>&amp;Clause</source>
        <translation>&amp;Cláusula</translation>
    </message>
    <message>
        <source>E&amp;xception claimed</source>
        <translation>Excepción in&amp;vocada</translation>
    </message>
    <message>
        <source>Copy edition and clause from the code that is adopted where the building stands. An exception needs its number and who grants it.</source>
        <translation>Copie edición y cláusula del código vigente donde está el edificio. Una excepción necesita su número y quién la concede.</translation>
    </message>
    <message>
        <source>5 % of the plate or a fixed power</source>
        <translation>5 % de la placa o una potencia fija</translation>
    </message>
</context>
<context>
    <name>ww::ui::Commands</name>
    <message>
        <source>&amp;New Job…</source>
        <translation>&amp;Nueva obra…</translation>
    </message>
    <message>
        <source>New Job from &amp;Tables…</source>
        <translation>Nueva obra desde &amp;tablas…</translation>
    </message>
    <message>
        <source>New &amp;Practice Job…</source>
        <translation>Nueva obra de &amp;práctica…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open &amp;Recent</source>
        <translation>Abrir &amp;recientes</translation>
    </message>
    <message>
        <source>Save a &amp;Copy…</source>
        <translation>Guardar una &amp;copia…</translation>
    </message>
    <message>
        <source>&amp;Merge Another Laptop…</source>
        <translation>&amp;Fusionar otro portátil…</translation>
    </message>
    <message>
        <source>&amp;Decide Conflicts…</source>
        <translation>&amp;Decidir conflictos…</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>C&amp;errar</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Find Valve…</source>
        <translation>&amp;Buscar válvula…</translation>
    </message>
    <message>
        <source>Write &amp;Note…</source>
        <translation>Escribir &amp;nota…</translation>
    </message>
    <message>
        <source>Show &amp;History…</source>
        <translation>Ver &amp;historial…</translation>
    </message>
    <message>
        <source>Show the Job as It &amp;Stood…</source>
        <translation>Ver la obra como e&amp;staba…</translation>
    </message>
    <message>
        <source>Go to Ne&amp;xt Open Item</source>
        <translation>Ir al punto abierto sig&amp;uiente</translation>
    </message>
    <message>
        <source>Go to Pre&amp;vious Open Item</source>
        <translation>Ir al punto abierto an&amp;terior</translation>
    </message>
    <message>
        <source>&amp;Open New Round…</source>
        <translation>&amp;Abrir nueva ronda…</translation>
    </message>
    <message>
        <source>&amp;Close Round…</source>
        <translation>&amp;Cerrar ronda…</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>Me&amp;didor</translation>
    </message>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Persona</translation>
    </message>
    <message>
        <source>&amp;Read Again</source>
        <translation>&amp;Releer</translation>
    </message>
    <message>
        <source>&amp;Take Offered Fix</source>
        <translation>&amp;Tomar el arreglo ofrecido</translation>
    </message>
    <message>
        <source>&amp;Mark Doubtful</source>
        <translation>Marcar dud&amp;oso</translation>
    </message>
    <message>
        <source>Record as &amp;Not Readable</source>
        <translation>Anotar no &amp;legible</translation>
    </message>
    <message>
        <source>List De&amp;ficiency</source>
        <translation>Anotar de&amp;ficiencia</translation>
    </message>
    <message>
        <source>Take the Meter&apos;s &amp;Value (Practice)</source>
        <translation>Tomar el &amp;valor del medidor (práctica)</translation>
    </message>
    <message>
        <source>Take the Pump&apos;s &amp;Gauges (Practice)</source>
        <translation>Tomar los ma&amp;nómetros de la bomba (práctica)</translation>
    </message>
    <message>
        <source>&amp;Add Branch</source>
        <translation>Aña&amp;dir ramal</translation>
    </message>
    <message>
        <source>Read R&amp;eference</source>
        <translation>Leer la r&amp;eferencia</translation>
    </message>
    <message>
        <source>Read with Valve &amp;Shut</source>
        <translation>Leer con válvula &amp;cerrada</translation>
    </message>
    <message>
        <source>Take Advised Sett&amp;ing</source>
        <translation>Tomar el a&amp;juste aconsejado</translation>
    </message>
    <message>
        <source>Show &amp;Convergence</source>
        <translation>Ver &amp;convergencia</translation>
    </message>
    <message>
        <source>Change Chart and &amp;Table</source>
        <translation>Cambiar &amp;gráfico y tabla</translation>
    </message>
    <message>
        <source>Switch to Next &amp;Display</source>
        <translation>Cambiar d&amp;e pantalla</translation>
    </message>
    <message>
        <source>Make Text &amp;Larger</source>
        <translation>Agrandar te&amp;xto</translation>
    </message>
    <message>
        <source>Show &amp;Full Screen</source>
        <translation>Ver a &amp;pantalla completa</translation>
    </message>
    <message>
        <source>&amp;Export Unsigned Draft…</source>
        <translation>&amp;Exportar borrador sin firmar…</translation>
    </message>
    <message>
        <source>&amp;Sign Report…</source>
        <translation>&amp;Firmar informe…</translation>
    </message>
    <message>
        <source>&amp;Make a Certificate…</source>
        <translation>&amp;Crear un certificado…</translation>
    </message>
    <message>
        <source>&amp;Verify a Report…</source>
        <translation>&amp;Verificar un informe…</translation>
    </message>
    <message>
        <source>Show &amp;Truth against Found (Practice)…</source>
        <translation>Comparar lo &amp;real y lo hallado (práctica)…</translation>
    </message>
    <message>
        <source>Show &amp;Keys</source>
        <translation>Ver &amp;teclas</translation>
    </message>
    <message>
        <source>Show &amp;Version and Licence</source>
        <translation>Ver &amp;versión y licencia</translation>
    </message>
    <message>
        <source>Show &amp;Job</source>
        <translation>Ver &amp;Obra</translation>
    </message>
    <message>
        <source>Show &amp;System</source>
        <translation>Ver &amp;Sistema</translation>
    </message>
    <message>
        <source>Show &amp;Walk</source>
        <translation>Ver &amp;Recorrido</translation>
    </message>
    <message>
        <source>Show &amp;Pump</source>
        <translation>Ver &amp;Bomba</translation>
    </message>
    <message>
        <source>Show Re&amp;view</source>
        <translation>Ver Re&amp;visión</translation>
    </message>
    <message>
        <source>Show &amp;Report</source>
        <translation>Ver &amp;Informe</translation>
    </message>
    <message>
        <source>Show Pump &amp;Curves</source>
        <translation>Ver &amp;curvas de bomba</translation>
    </message>
    <message>
        <source>Enter Pump &amp;Test</source>
        <translation>Introducir &amp;prueba de bomba</translation>
    </message>
    <message>
        <source>Show Test &amp;Results</source>
        <translation>Ver &amp;resultados</translation>
    </message>
    <message>
        <source>Show &amp;Decision</source>
        <translation>Ver &amp;decisión</translation>
    </message>
    <message>
        <source>Compare Read and &amp;Set</source>
        <translation>Comparar &amp;leer y ajustar</translation>
    </message>
    <message>
        <source>Show &amp;Pressures</source>
        <translation>Ver pre&amp;siones</translation>
    </message>
    <message>
        <source>Test &amp;Energy Code</source>
        <translation>Probar código &amp;energético</translation>
    </message>
    <message>
        <source>List De&amp;vices</source>
        <translation>L&amp;istar dispositivos</translation>
    </message>
    <message>
        <source>Enter Set-P&amp;oint</source>
        <translation>Introducir c&amp;onsigna</translation>
    </message>
    <message>
        <source>Enter Pump D&amp;ata</source>
        <translation>Introducir d&amp;atos de bomba</translation>
    </message>
    <message>
        <source>Try &amp;Zones</source>
        <translation>Probar &amp;zonas</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Round</source>
        <translation>&amp;Ronda</translation>
    </message>
    <message>
        <source>&amp;Valve</source>
        <translation>Vá&amp;lvula</translation>
    </message>
    <message>
        <source>P&amp;ump</source>
        <translation>&amp;Bomba</translation>
    </message>
    <message>
        <source>Vie&amp;w</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>Re&amp;port</source>
        <translation>&amp;Informe</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Write Comment</source>
        <translation>Escribir co&amp;mentario</translation>
    </message>
    <message>
        <source>A&amp;djust This Valve</source>
        <translation>&amp;Ajustar esta válvula</translation>
    </message>
    <message>
        <source>Show Adv&amp;ice</source>
        <translation>Ver conse&amp;jo</translation>
    </message>
    <message>
        <source>Make Text S&amp;maller</source>
        <translation>Red&amp;ucir texto</translation>
    </message>
    <message>
        <source>Reset Te&amp;xt Size</source>
        <translation>Volver al tamaño &amp;normal</translation>
    </message>
    <message>
        <source>Sh&amp;ow Adjust</source>
        <translation>Ver &amp;Ajustar</translation>
    </message>
    <message>
        <source>&amp;Save Checkpoint…</source>
        <translation>&amp;Guardar punto de control…</translation>
    </message>
    <message>
        <source>Chan&amp;ge Preferences…</source>
        <translation>Camb&amp;iar preferencias…</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Cort&amp;ar</translation>
    </message>
    <message>
        <source>Cop&amp;y</source>
        <translation>Cop&amp;iar</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Pegar</translation>
    </message>
    <message>
        <source>Move Branch U&amp;p the Route</source>
        <translation>S&amp;ubir ramal en la ruta</translation>
    </message>
    <message>
        <source>Move Branch Do&amp;wn the Route</source>
        <translation>Bajar ra&amp;mal en la ruta</translation>
    </message>
    <message>
        <source>Enter Valve Ta&amp;bles</source>
        <translation>Introducir ta&amp;blas de válvulas</translation>
    </message>
    <message>
        <source>Use Lar&amp;ge Targets</source>
        <translation>Agrandar bo&amp;tones</translation>
    </message>
    <message>
        <source>Langu&amp;age</source>
        <translation>I&amp;dioma</translation>
    </message>
    <message>
        <source>New Job &amp;from a Sample…</source>
        <translation>N&amp;ueva obra de ejemplo…</translation>
    </message>
    <message>
        <source>&amp;Import Table…</source>
        <translation>I&amp;mportar tabla…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>E&amp;xportar</translation>
    </message>
    <message>
        <source>Export CSV &amp;Tables…</source>
        <translation>Exportar &amp;tablas CSV…</translation>
    </message>
    <message>
        <source>Export &amp;Spreadsheet…</source>
        <translation>Exportar &amp;hoja de cálculo…</translation>
    </message>
    <message>
        <source>Export &amp;JSON…</source>
        <translation>Exportar &amp;JSON…</translation>
    </message>
    <message>
        <source>Print &amp;Walk Sheet…</source>
        <translation>Imprimir &amp;hoja de recorrido…</translation>
    </message>
    <message>
        <source>Show &amp;Handbook</source>
        <translation>Ver &amp;manual</translation>
    </message>
    <message>
        <source>Show &amp;Release Notes</source>
        <translation>Ver n&amp;ovedades</translation>
    </message>
    <message>
        <source>Write Walk S&amp;heet to File…</source>
        <translation>Escribir h&amp;oja en un archivo…</translation>
    </message>
    <message>
        <source>&amp;Send Round to Supervisor</source>
        <translation>&amp;Enviar ronda al supervisor</translation>
    </message>
    <message>
        <source>&amp;Accept Round</source>
        <translation>Acep&amp;tar ronda</translation>
    </message>
    <message>
        <source>Set Clock O&amp;ffset…</source>
        <translation>C&amp;orregir el reloj…</translation>
    </message>
    <message>
        <source>Try W&amp;hat If</source>
        <translation>Probar &amp;qué pasa si</translation>
    </message>
    <message>
        <source>Mark Rest as Not &amp;Turned</source>
        <translation>Anotar el resto como no &amp;girado</translation>
    </message>
    <message>
        <source>Restore Advised &amp;Order</source>
        <translation>Restablecer &amp;orden aconsejado</translation>
    </message>
</context>
<context>
    <name>ww::ui::CommentPanel</name>
    <message>
        <source>Comment</source>
        <translation>Comentario</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Responder</translation>
    </message>
    <message>
        <source>Resolve</source>
        <translation>Resolver</translation>
    </message>
    <message>
        <source>Comments of the round</source>
        <translation>Comentarios de la ronda</translation>
    </message>
    <message>
        <source>Text of the comment</source>
        <translation>Texto del comentario</translation>
    </message>
    <message>
        <source>%1 — %2</source>
        <translation>%1 — %2</translation>
    </message>
    <message>
        <source>resolved</source>
        <translation>resuelto</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>Comments</source>
        <translation>Comentarios</translation>
    </message>
    <message numerus="yes">
        <source>Comments (%n open)</source>
        <translation>
            <numerusform>Comentarios (%n abierto)</numerusform>
            <numerusform>Comentarios (%n abiertos)</numerusform>
        </translation>
    </message>
    <message>
        <source>Comment on %1 (Ctrl+Alt+C)</source>
        <translation>Comentario a %1 (Ctrl+Alt+C)</translation>
    </message>
    <message>
        <source>Reopen</source>
        <translation>Reabrir</translation>
    </message>
    <message>
        <source>Answer %1 on %2</source>
        <translation>Respuesta a %1 sobre %2</translation>
    </message>
    <message>
        <source>answer, Enter</source>
        <translation>respuesta, Enter</translation>
    </message>
    <message>
        <source>new comment, Enter</source>
        <translation>comentario nuevo, Enter</translation>
    </message>
</context>
<context>
    <name>ww::ui::ControlKeys</name>
    <message>
        <source>Enter stores</source>
        <translation>Intro guarda</translation>
    </message>
    <message>
        <source>Esc restores</source>
        <translation>Esc restaura</translation>
    </message>
    <message>
        <source>Tab right</source>
        <translation>Tab derecha</translation>
    </message>
    <message>
        <source>type to change a cell</source>
        <translation>teclear para cambiar</translation>
    </message>
    <message>
        <source>Enter down</source>
        <translation>Intro baja</translation>
    </message>
    <message>
        <source>F6 leaves the table</source>
        <translation>F6 sale de la tabla</translation>
    </message>
    <message>
        <source>Tab next field</source>
        <translation>Tab campo siguiente</translation>
    </message>
    <message>
        <source>type to change it</source>
        <translation>teclear para cambiar</translation>
    </message>
    <message>
        <source>Ctrl+Enter stores</source>
        <translation>Ctrl+Intro guarda</translation>
    </message>
    <message>
        <source>Space changes the tick</source>
        <translation>Espacio cambia la marca</translation>
    </message>
    <message>
        <source>Up, Down choose</source>
        <translation>Arriba, Abajo elegir</translation>
    </message>
    <message>
        <source>Enter presses the button</source>
        <translation>Intro pulsa el botón</translation>
    </message>
    <message>
        <source>Space presses the button</source>
        <translation>Espacio pulsa el botón</translation>
    </message>
    <message>
        <source>Up, Down rows</source>
        <translation>Arriba, Abajo filas</translation>
    </message>
    <message>
        <source>Left, Right pages</source>
        <translation>Izquierda, Derecha páginas</translation>
    </message>
    <message>
        <source>Up, Down scroll</source>
        <translation>Arriba, Abajo desplazar</translation>
    </message>
    <message>
        <source>Enter next cell</source>
        <translation>Intro celda siguiente</translation>
    </message>
</context>
<context>
    <name>ww::ui::CountedRows</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
</context>
<context>
    <name>ww::ui::CurvesPage</name>
    <message>
        <source>Index-circuit check</source>
        <translation>Control del circuito más desfavorable</translation>
    </message>
    <message>
        <source>Duty and design flow</source>
        <translation>Punto de trabajo y caudal de diseño</translation>
    </message>
    <message>
        <source>Duty and index-circuit check</source>
        <translation>Punto de trabajo y control del circuito más desfavorable</translation>
    </message>
    <message>
        <source>Enter two points of the pump&apos;s curve on the page Pump Data (Ctrl+Alt+0), or make the job from tables that have a curve.</source>
        <translation>Introduzca dos puntos de la curva de la bomba en la página Datos de bomba (Ctrl+Alt+0), o cree la obra desde tablas con curva.</translation>
    </message>
</context>
<context>
    <name>ww::ui::DataPage</name>
    <message>
        <source>Add Pump</source>
        <translation>Añadir bomba</translation>
    </message>
    <message>
        <source>Maker&apos;s curve</source>
        <translation>Curva del fabricante</translation>
    </message>
    <message>
        <source>Remove Point</source>
        <translation>Quitar punto</translation>
    </message>
    <message>
        <source>Load of a year</source>
        <translation>Carga de un año</translation>
    </message>
    <message>
        <source>Remove Hours</source>
        <translation>Quitar horas</translation>
    </message>
    <message>
        <source>Plate and data of the pumps</source>
        <translation>Placa y datos de las bombas</translation>
    </message>
    <message>
        <source>&amp;Curve of pump</source>
        <translation>&amp;Curva de la bomba</translation>
    </message>
    <message>
        <source>Price of a &amp;kWh</source>
        <translation>&amp;Precio del kWh</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Rodete</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Caudal</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Rendimiento</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>NPSH</source>
        <translation>NPSH</translation>
    </message>
    <message>
        <source>flow and head</source>
        <translation>caudal y altura</translation>
    </message>
    <message>
        <source>Hours a year</source>
        <translation>Horas al año</translation>
    </message>
    <message>
        <source>Of design flow</source>
        <translation>Del caudal de diseño</translation>
    </message>
    <message>
        <source>hours and a part of the design flow</source>
        <translation>horas y una parte del caudal de diseño</translation>
    </message>
    <message>
        <source>Hours a &amp;year, if no table</source>
        <translation>Horas al &amp;año, sin tabla</translation>
    </message>
</context>
<context>
    <name>ww::ui::DecisionPage</name>
    <message>
        <source>Pumps that run</source>
        <translation>Bombas en marcha</translation>
    </message>
    <message>
        <source>Pumps &amp;that run</source>
        <translation>Bombas en &amp;marcha</translation>
    </message>
    <message>
        <source>all that are marked</source>
        <translation>todas las marcadas</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 sola</translation>
    </message>
</context>
<context>
    <name>ww::ui::DecisionPanel</name>
    <message>
        <source>Send Round</source>
        <translation>Enviar ronda</translation>
    </message>
    <message>
        <source>Accept Round</source>
        <translation>Aceptar ronda</translation>
    </message>
    <message>
        <source>Send Back</source>
        <translation>Devolver</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>State of the round</source>
        <translation>Estado de la ronda</translation>
    </message>
    <message>
        <source>Reason for sending back or withdrawing</source>
        <translation>Motivo para devolver o retirar</translation>
    </message>
    <message>
        <source>reason, to send back or withdraw</source>
        <translation>motivo, para devolver o retirar</translation>
    </message>
    <message>
        <source>Withdrawing needs a reason.</source>
        <translation>Para retirar hace falta un motivo.</translation>
    </message>
    <message>
        <source>Round %1: %2</source>
        <translation>Ronda %1: %2</translation>
    </message>
    <message>
        <source>sent by</source>
        <translation>enviada por</translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation>motivo: %1</translation>
    </message>
    <message>
        <source>begun early: %1</source>
        <translation>empezada antes: %1</translation>
    </message>
    <message>
        <source>at this desk: %1</source>
        <translation>en este puesto: %1</translation>
    </message>
    <message>
        <source>no person chosen: decisions name the account %1</source>
        <translation>ninguna persona elegida: las decisiones nombran la cuenta %1</translation>
    </message>
    <message>
        <source>Change Person</source>
        <translation>Cambiar persona</translation>
    </message>
    <message>
        <source>Lists who may decide on this round</source>
        <translation>Nombra quién puede decidir sobre esta ronda</translation>
    </message>
    <message>
        <source>sent back by</source>
        <translation>devuelta por</translation>
    </message>
    <message>
        <source>accepted by</source>
        <translation>aceptada por</translation>
    </message>
    <message>
        <source>withdrawn by</source>
        <translation>retirada por</translation>
    </message>
    <message>
        <source>To the People of the Job</source>
        <translation>A las personas de la obra</translation>
    </message>
    <message>
        <source>accepted by the limits: share ±%1 %, of design %2 to +%3 %</source>
        <translation>aceptada por los límites: cuota ±%1 %, del diseño %2 a +%3 %</translation>
    </message>
</context>
<context>
    <name>ww::ui::DeficiencyPage</name>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Qué está mal</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Oficio</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Raised</source>
        <translation>Señalada el</translation>
    </message>
    <message>
        <source>Re-tested</source>
        <translation>Nueva prueba</translation>
    </message>
    <message>
        <source>List Deficiency</source>
        <translation>Anotar deficiencia</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Deficiencias</translation>
    </message>
    <message>
        <source>Photos of the deficiency</source>
        <translation>Fotos de la deficiencia</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Justificante</translation>
    </message>
    <message>
        <source>Status: open, remedied, closed or left as it is.</source>
        <translation>Estado: abierto, subsanado, cerrado o se deja así.</translation>
    </message>
    <message>
        <source>Locatio&amp;n</source>
        <translation>&amp;Lugar</translation>
    </message>
    <message>
        <source>Conse&amp;quence</source>
        <translation>Conse&amp;cuencia</translation>
    </message>
    <message>
        <source>Re&amp;medy proposed</source>
        <translation>Re&amp;medio propuesto</translation>
    </message>
    <message>
        <source>R&amp;e-test result</source>
        <translation>R&amp;esultado nueva prueba</translation>
    </message>
    <message>
        <source>round %1: %2</source>
        <translation>ronda %1: %2</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>sin lectura</translation>
    </message>
    <message>
        <source>, raised by %1</source>
        <translation>, señalada por %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::DevicePage</name>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Before it</source>
        <translation>Aguas arriba</translation>
    </message>
    <message>
        <source>D before</source>
        <translation>D aguas arriba</translation>
    </message>
    <message>
        <source>D behind</source>
        <translation>D aguas abajo</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Dealt with as</source>
        <translation>Tratado como</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Where the devices sit</source>
        <translation>Dónde están los dispositivos</translation>
    </message>
    <message>
        <source>D: straight pipe in diameters. Before it: %1. Dealt with as: %2. Type a word or its first letters.</source>
        <translation>D: tramo recto en diámetros, aguas arriba y aguas abajo. Aguas arriba: %1. Tratado como: %2. Escriba una palabra o sus primeras letras.</translation>
    </message>
    <message>
        <source>Show Other Columns</source>
        <translation>Ver otras columnas</translation>
    </message>
</context>
<context>
    <name>ww::ui::FieldTableModel</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Dato</translation>
    </message>
</context>
<context>
    <name>ww::ui::HandbookWindow</name>
    <message>
        <source>Go &amp;Back</source>
        <translation>&amp;Volver</translation>
    </message>
    <message>
        <source>Go For&amp;ward</source>
        <translation>&amp;Avanzar</translation>
    </message>
    <message>
        <source>Find &amp;Next</source>
        <translation>Buscar &amp;siguiente</translation>
    </message>
    <message>
        <source>Handbook</source>
        <translation>Manual</translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation>Capítulo</translation>
    </message>
    <message>
        <source>Find in the handbook</source>
        <translation>Buscar en el manual</translation>
    </message>
    <message>
        <source>Result of the search</source>
        <translation>Resultado de la búsqueda</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Contenido</translation>
    </message>
    <message>
        <source>Release notes</source>
        <translation>Novedades</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>&amp;Buscar</translation>
    </message>
    <message>
        <source>%1 is no page of the handbook</source>
        <translation>%1 no es una página del manual</translation>
    </message>
    <message>
        <source>Handbook: %1</source>
        <translation>Manual: %1</translation>
    </message>
    <message>
        <source>“%1” does not occur in the handbook; try one word of it</source>
        <translation>«%1» no aparece en el manual; pruebe una palabra</translation>
    </message>
</context>
<context>
    <name>ww::ui::HistoryDialog</name>
    <message>
        <source>Round</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Reason, note</source>
        <translation>Motivo, nota</translation>
    </message>
    <message>
        <source>Use This Value</source>
        <translation>Usar este valor</translation>
    </message>
    <message>
        <source>History of %1</source>
        <translation>Historial de %1</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>deshecho</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>Stored, newest first</source>
        <translation>Guardado, lo más nuevo primero</translation>
    </message>
</context>
<context>
    <name>ww::ui::ImportDialog</name>
    <message>
        <source>&amp;Leave Out All with Faults</source>
        <translation>&amp;Omitir todas con fallos</translation>
    </message>
    <message>
        <source>Show Next &amp;Fault</source>
        <translation>Mostrar el siguiente &amp;fallo</translation>
    </message>
    <message>
        <source>Go &amp;Back</source>
        <translation>&amp;Volver</translation>
    </message>
    <message>
        <source>Readings of a walk</source>
        <translation>Lecturas de un recorrido</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Ramales</translation>
    </message>
    <message>
        <source>Valve tables</source>
        <translation>Tablas de válvulas</translation>
    </message>
    <message>
        <source>Pumps</source>
        <translation>Bombas</translation>
    </message>
    <message>
        <source>Pump curves</source>
        <translation>Curvas de bomba</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Readings at pumps</source>
        <translation>Lecturas en bombas</translation>
    </message>
    <message>
        <source>State of the import</source>
        <translation>Estado de la importación</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation>&amp;Hoja</translation>
    </message>
    <message>
        <source>The rows &amp;are</source>
        <translation>Las filas &amp;son</translation>
    </message>
    <message>
        <source>&amp;Headings stand in row</source>
        <translation>&amp;Encabezados en la fila</translation>
    </message>
    <message>
        <source>Say which of your columns is which, and the unit where the heading has none. Columns with * are needed.</source>
        <translation>Diga cuál de sus columnas es cuál, y la unidad donde el encabezado no la tenga. Las columnas con * son necesarias.</translation>
    </message>
    <message>
        <source>Rows to import</source>
        <translation>Filas a importar</translation>
    </message>
    <message>
        <source>What is wrong with this row</source>
        <translation>Qué está mal en esta fila</translation>
    </message>
    <message>
        <source>Nothing is in the job yet. Type over a cell to mend it; take the mark away (Space) to leave a row out.</source>
        <translation>Aún no hay nada en la obra. Escriba sobre una celda para corregirla; quite la marca (Espacio) para omitir una fila.</translation>
    </message>
    <message>
        <source>Show &amp;Rows</source>
        <translation>Mostrar &amp;filas</translation>
    </message>
    <message>
        <source>Still to choose: %1.</source>
        <translation>Falta elegir: %1.</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Import %n Row(s)</source>
        <translation>
            <numerusform>&amp;Importar %n fila</numerusform>
            <numerusform>&amp;Importar %n filas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) must be mended or left out.</source>
        <translation>
            <numerusform>Hay que corregir u omitir %n fila.</numerusform>
            <numerusform>Hay que corregir u omitir %n filas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Import: %1</source>
        <translation>Importación: %1</translation>
    </message>
    <message>
        <source>Headings stand in row</source>
        <translation>Encabezados en la fila</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no row of this table; type one from 1 to %2</source>
        <translation>«%1» no es una fila de esta tabla; escriba una de 1 a %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::ImportModel</name>
    <message>
        <source>left out</source>
        <translation>omitida</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>tomada</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Tomar</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>What is wrong; what to do</source>
        <translation>Qué está mal; qué hacer</translation>
    </message>
    <message>
        <source>left blank, not taken</source>
        <translation>dejado en blanco, no se toma</translation>
    </message>
</context>
<context>
    <name>ww::ui::InstrumentModel</name>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Serie</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Rango</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Precisión</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Calibrado</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificado</translation>
    </message>
    <message>
        <source>If overdue, why</source>
        <translation>Si venció, por qué</translation>
    </message>
    <message>
        <source>Fixed error</source>
        <translation>Error fijo</translation>
    </message>
</context>
<context>
    <name>ww::ui::JobPlace</name>
    <message>
        <source>Add Instrument</source>
        <translation>Añadir instrumento</translation>
    </message>
    <message>
        <source>Add Person</source>
        <translation>Añadir persona</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Pages of the job</source>
        <translation>Páginas de la obra</translation>
    </message>
    <message>
        <source>Instruments and people</source>
        <translation>Instrumentos y personas</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Preparación</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Deficiencias</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluido</translation>
    </message>
    <message>
        <source>&amp;Units shown</source>
        <translation>&amp;Unidades mostradas</translation>
    </message>
    <message>
        <source>&amp;Fluid</source>
        <translation>&amp;Fluido</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Site</source>
        <translation>&amp;Lugar</translation>
    </message>
    <message>
        <source>C&amp;lient</source>
        <translation>&amp;Cliente</translation>
    </message>
    <message>
        <source>Loop</source>
        <translation>Red</translation>
    </message>
    <message>
        <source>&amp;Glycol by mass</source>
        <translation>&amp;Glicol en masa</translation>
    </message>
    <message>
        <source>&amp;Temperature</source>
        <translation>&amp;Temperatura</translation>
    </message>
    <message>
        <source>F&amp;ill pressure</source>
        <translation>Pres&amp;ión de llenado</translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation>&amp;Altitud</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>Off design, l&amp;owest</source>
        <translation>Des&amp;vío de diseño, mínimo</translation>
    </message>
    <message>
        <source>Off design, &amp;highest</source>
        <translation>Desvío de diseño, má&amp;ximo</translation>
    </message>
    <message>
        <source>&amp;Band of target, ±</source>
        <translation>&amp;Banda del objetivo, ±</translation>
    </message>
    <message>
        <source>Old after, &amp;minutes</source>
        <translation>Lectura antigua tras (&amp;min)</translation>
    </message>
    <message>
        <source>Pump energy</source>
        <translation>Energía de la bomba</translation>
    </message>
    <message>
        <source>&amp;Price of a kWh</source>
        <translation>&amp;Precio del kWh</translation>
    </message>
    <message>
        <source>Currenc&amp;y</source>
        <translation>Mone&amp;da</translation>
    </message>
    <message>
        <source>Hours a yea&amp;r</source>
        <translation>H&amp;oras al año</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Show Other Columns</source>
        <translation>Ver otras columnas</translation>
    </message>
    <message>
        <source>Remove Instrument</source>
        <translation>Quitar instrumento</translation>
    </message>
    <message>
        <source>Remove Person</source>
        <translation>Quitar persona</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Ningún libro abierto. Abra uno (Ctrl+O) o cree una obra (Ctrl+N).</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Lo que falta aquí</translation>
    </message>
</context>
<context>
    <name>ww::ui::JobStrip</name>
    <message>
        <source>Save a Copy Elsewhere…</source>
        <translation>Guardar copia en otro sitio…</translation>
    </message>
    <message>
        <source>Job strip</source>
        <translation>Franja de la obra</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progreso</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Medidor</translation>
    </message>
    <message>
        <source>Stored</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>Display</source>
        <translation>Pantalla</translation>
    </message>
    <message>
        <source>Conflicts to decide</source>
        <translation>Conflictos por decidir</translation>
    </message>
    <message>
        <source>Writes the whole workbook to another disk, with what could not be stored, and goes on there</source>
        <translation>Escribe todo el libro en otro disco, con lo que no se pudo guardar, y sigue allí</translation>
    </message>
    <message>
        <source>Valves read</source>
        <translation>Válvulas leídas</translation>
    </message>
    <message numerus="yes">
        <source>%n to decide</source>
        <translation>
            <numerusform>%n por decidir</numerusform>
            <numerusform>%n por decidir</numerusform>
        </translation>
    </message>
    <message>
        <source>Places and commands</source>
        <translation>Áreas y órdenes</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
</context>
<context>
    <name>ww::ui::JournalDialog</name>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Stored actions</source>
        <translation>Acciones guardadas</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Of target, %</source>
        <translation>% del objetivo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>The job as it stood</source>
        <translation>La obra como estaba</translation>
    </message>
    <message>
        <source>The Job as It Stood</source>
        <translation>La obra como estaba</translation>
    </message>
    <message>
        <source>Export Its Tables…</source>
        <translation>Exportar sus tablas…</translation>
    </message>
    <message>
        <source>Writes the job as it stood then as tables</source>
        <translation>Escribe la obra de entonces en tablas</translation>
    </message>
    <message>
        <source>Round %1, %2 of %3 terminals read.</source>
        <translation>Ronda %1, %2 de %3 terminales leídos.</translation>
    </message>
    <message>
        <source>No round was open yet.</source>
        <translation>Aún no había ninguna ronda abierta.</translation>
    </message>
    <message>
        <source>After record %1: %2</source>
        <translation>Tras el registro %1: %2</translation>
    </message>
    <message>
        <source>Folder for the Tables</source>
        <translation>Carpeta para las tablas</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Escrito en %1</translation>
    </message>
    <message>
        <source>Stored, newest first</source>
        <translation>Guardado, lo más nuevo primero</translation>
    </message>
    <message>
        <source>Computer</source>
        <translation>Equipo</translation>
    </message>
</context>
<context>
    <name>ww::ui::KeyList</name>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Store the reading and go to the next valve</source>
        <translation>Guardar la lectura y pasar a la siguiente válvula</translation>
    </message>
    <message>
        <source>digits, Enter</source>
        <translation>cifras, Intro</translation>
    </message>
    <message>
        <source>Walk past a valve</source>
        <translation>Pasar de largo una válvula</translation>
    </message>
    <message>
        <source>Enter alone</source>
        <translation>Intro solo</translation>
    </message>
    <message>
        <source>Record that a valve cannot be read</source>
        <translation>Anotar que una válvula no se puede leer</translation>
    </message>
    <message>
        <source>x, Enter</source>
        <translation>x, Intro</translation>
    </message>
    <message>
        <source>Change this valve&apos;s setting</source>
        <translation>Cambiar el ajuste de esta válvula</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>Go back one valve</source>
        <translation>Volver una válvula</translation>
    </message>
    <message>
        <source>Shift+Enter</source>
        <translation>Mayús+Intro</translation>
    </message>
    <message>
        <source>Store and move up or down</source>
        <translation>Guardar y subir o bajar</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Arriba, Abajo</translation>
    </message>
    <message>
        <source>Take back what is being typed</source>
        <translation>Retirar lo que se teclea</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Type a unit behind the digits</source>
        <translation>Escribir una unidad tras las cifras</translation>
    </message>
    <message>
        <source>k kPa, m mbar, p psi, i inH₂O, f ftH₂O</source>
        <translation>k kPa, m mbar, p psi, i inH₂O, f ftH₂O</translation>
    </message>
    <message>
        <source>Leave the grid</source>
        <translation>Salir de la tabla</translation>
    </message>
    <message>
        <source>Ctrl+Tab, F6</source>
        <translation>Ctrl+Tab, F6</translation>
    </message>
    <message>
        <source>In Adjust: log a try at the setting shown</source>
        <translation>En Ajustar: intento con el ajuste mostrado</translation>
    </message>
    <message>
        <source>In Adjust: follow the hand by one step, by one turn</source>
        <translation>En Ajustar: seguir el volante un paso, una vuelta</translation>
    </message>
    <message>
        <source>Up, Down; PgUp, PgDn</source>
        <translation>Arriba, Abajo; RePág, AvPág</translation>
    </message>
    <message>
        <source>In Adjust: take an advised setting from the table</source>
        <translation>En Ajustar: tomar un ajuste aconsejado de la tabla</translation>
    </message>
    <message>
        <source>Enter in the table</source>
        <translation>Intro en la tabla</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Órdenes y sus teclas</translation>
    </message>
    <message>
        <source>In Instruments and People: remove the row in hand</source>
        <translation>En instrumentos y personas: quitar la fila</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>In the diagram of System: follow the pipe, open the valve</source>
        <translation>En el esquema de Sistema: seguir el tubo, abrir la válvula</translation>
    </message>
    <message>
        <source>arrows, Enter</source>
        <translation>flechas, Intro</translation>
    </message>
    <message>
        <source>In the diagram of System: larger, smaller, the whole loop</source>
        <translation>En el esquema de Sistema: más grande, más pequeño, toda la red</translation>
    </message>
    <message>
        <source>+, -, 0</source>
        <translation>+, -, 0</translation>
    </message>
</context>
<context>
    <name>ww::ui::Ladder</name>
    <message>
        <source>Ladder of dp</source>
        <translation>Escala de Δp</translation>
    </message>
</context>
<context>
    <name>ww::ui::MainWindow</name>
    <message>
        <source>Read-only</source>
        <translation>Solo lectura</translation>
    </message>
    <message>
        <source>Keys of this place</source>
        <translation>Teclas de esta área</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Sistema</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>Adjust</source>
        <translation>Ajustar</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Informe</translation>
    </message>
    <message>
        <source> — Round %1</source>
        <translation> — Ronda %1</translation>
    </message>
    <message>
        <source>Read-only. %1</source>
        <translation>Solo lectura. %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>&amp;Deshacer %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>&amp;Rehacer %1</translation>
    </message>
    <message>
        <source>&amp;Hold Here, Go to Next Valve</source>
        <translation>Mantener aquí, válvula si&amp;guiente</translation>
    </message>
    <message>
        <source>%1 (missing)</source>
        <translation>%1 (falta)</translation>
    </message>
    <message>
        <source>Remove from List</source>
        <translation>Quitar de la lista</translation>
    </message>
    <message>
        <source>Make a New Job</source>
        <translation>Crear una obra</translation>
    </message>
    <message>
        <source>/new_job.wwj</source>
        <translation>/obra_nueva.wwj</translation>
    </message>
    <message>
        <source>Folder with the Tables of the Job</source>
        <translation>Carpeta con las tablas de la obra</translation>
    </message>
    <message>
        <source>Write the New Workbook</source>
        <translation>Escribir el libro nuevo</translation>
    </message>
    <message>
        <source>Folder for the Tables</source>
        <translation>Carpeta para las tablas</translation>
    </message>
    <message>
        <source>%1 copy.wwj</source>
        <translation>%1 copia.wwj</translation>
    </message>
    <message>
        <source>Save a Copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>Save a Copy Elsewhere and Go On There</source>
        <translation>Guardar una copia en otro sitio y seguir allí</translation>
    </message>
    <message>
        <source>Waterwright</source>
        <translation>Waterwright</translation>
    </message>
    <message>
        <source>Waterwright %1

A field-balancing workbook for closed water loops.

Free software under the GNU General Public License, version 3 or later. There is no warranty: check results before you act on them.</source>
        <translation>Waterwright %1

Libro de equilibrado en obra para redes cerradas de agua.

Software libre bajo la GNU General Public License, versión 3 o posterior. Sin garantía: compruebe los resultados antes de actuar.</translation>
    </message>
    <message>
        <source>As the &amp;System</source>
        <translation>Como el &amp;sistema</translation>
    </message>
    <message>
        <source>Make a Practice Job</source>
        <translation>Crear una obra de práctica</translation>
    </message>
    <message>
        <source>/practice_%1.wwj</source>
        <translation>/practica_%1.wwj</translation>
    </message>
    <message>
        <source>A&amp;djust This Valve</source>
        <translation>&amp;Ajustar esta válvula</translation>
    </message>
    <message>
        <source>Save a Checkpoint</source>
        <translation>Guardar punto de control</translation>
    </message>
    <message>
        <source>Everything is stored already. A checkpoint gives this state of the job a name.</source>
        <translation>Todo está ya guardado. Un punto de control da un nombre a este estado de la obra.</translation>
    </message>
    <message>
        <source>state at %1</source>
        <translation>estado a las %1</translation>
    </message>
    <message>
        <source>New Job from a Sample</source>
        <translation>Nueva obra de ejemplo</translation>
    </message>
    <message>
        <source>Export a Spreadsheet</source>
        <translation>Exportar una hoja de cálculo</translation>
    </message>
    <message>
        <source>Spreadsheets (*.xlsx)</source>
        <translation>Hojas de cálculo (*.xlsx)</translation>
    </message>
    <message>
        <source>Export as JSON</source>
        <translation>Exportar como JSON</translation>
    </message>
    <message>
        <source>JSON documents (*.json)</source>
        <translation>Documentos JSON (*.json)</translation>
    </message>
    <message>
        <source>Write the Walk Sheet</source>
        <translation>Escribir la hoja de recorrido</translation>
    </message>
    <message>
        <source>Paper (*.pdf);;Table to fill in (*.csv)</source>
        <translation>Papel (*.pdf);;Tabla para rellenar (*.csv)</translation>
    </message>
    <message>
        <source>Import a Table</source>
        <translation>Importar una tabla</translation>
    </message>
    <message>
        <source>Tables (*.csv *.xlsx *.xlsm)</source>
        <translation>Tablas (*.csv *.xlsx *.xlsm)</translation>
    </message>
    <message>
        <source>Walk sheet</source>
        <translation>Hoja de recorrido</translation>
    </message>
    <message>
        <source>Print the Walk Sheet</source>
        <translation>Imprimir la hoja de recorrido</translation>
    </message>
    <message>
        <source>Work in a Copy and Merge Later…</source>
        <translation>Trabajar en una copia y fusionar después…</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>Escribiendo %1</translation>
    </message>
    <message>
        <source>Take Advised Sett&amp;ing</source>
        <translation>Tomar el a&amp;juste aconsejado</translation>
    </message>
    <message>
        <source>Ctrl+Alt+1 to 0, Ctrl+Alt+Z pages</source>
        <translation>Ctrl+Alt+1 a 0, Ctrl+Alt+Z páginas</translation>
    </message>
    <message>
        <source>Ctrl+T numbers as a table</source>
        <translation>Ctrl+T números en tabla</translation>
    </message>
    <message>
        <source>Ctrl+Alt+C comment on the cell</source>
        <translation>Ctrl+Alt+C comentar la celda</translation>
    </message>
    <message>
        <source>Ctrl+H its history</source>
        <translation>Ctrl+H su historial</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Down next open item</source>
        <translation>Ctrl+Mayús+Abajo siguiente abierto</translation>
    </message>
    <message>
        <source>Ctrl+P export as PDF</source>
        <translation>Ctrl+P exportar a PDF</translation>
    </message>
    <message>
        <source>Ctrl+O opens a workbook</source>
        <translation>Ctrl+O abre un libro</translation>
    </message>
    <message>
        <source>Ctrl+N new job</source>
        <translation>Ctrl+N obra nueva</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P practice</source>
        <translation>Ctrl+Mayús+P practicar</translation>
    </message>
    <message>
        <source>F1 handbook</source>
        <translation>F1 manual</translation>
    </message>
    <message>
        <source>Ctrl+L takes the meter&apos;s value</source>
        <translation>Ctrl+L toma el valor del medidor</translation>
    </message>
    <message>
        <source>Ctrl+Z undo %1</source>
        <translation>Ctrl+Z deshacer %1</translation>
    </message>
    <message>
        <source>Take Advised Sett&amp;ing (the valve holds)</source>
        <translation>Tomar el a&amp;juste aconsejado (la válvula se mantiene)</translation>
    </message>
    <message>
        <source>Del removes the row</source>
        <translation>Supr quita la fila</translation>
    </message>
    <message>
        <source>Up, Down places</source>
        <translation>Arriba, Abajo áreas</translation>
    </message>
    <message>
        <source>Ctrl+Z undo</source>
        <translation>Ctrl+Z deshacer</translation>
    </message>
    <message>
        <source>Move Valve U&amp;p the Working Order</source>
        <translation>Su&amp;bir válvula en el orden de trabajo</translation>
    </message>
    <message>
        <source>Move Branch U&amp;p the Route</source>
        <translation>S&amp;ubir ramal en la ruta</translation>
    </message>
    <message>
        <source>Move Valve Do&amp;wn the Working Order</source>
        <translation>Ba&amp;jar válvula en el orden de trabajo</translation>
    </message>
    <message>
        <source>Move Branch Do&amp;wn the Route</source>
        <translation>Bajar ra&amp;mal en la ruta</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Save Checkpoint</source>
        <translation>&amp;Guardar punto de control</translation>
    </message>
    <message>
        <source>Invented jobs, each with rounds that were read.</source>
        <translation>Obras inventadas, cada una con rondas leídas.</translation>
    </message>
    <message>
        <source>&amp;Sample</source>
        <translation>&amp;Ejemplo</translation>
    </message>
    <message>
        <source>&amp;Make Job…</source>
        <translation>&amp;Crear obra…</translation>
    </message>
    <message numerus="yes">
        <source>%n open comment(s)</source>
        <translation>
            <numerusform>%n comentario abierto</numerusform>
            <numerusform>%n comentarios abiertos</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::MarkShape</name>
    <message>
        <source>passed</source>
        <translation>superado</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>no superado</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
</context>
<context>
    <name>ww::ui::MatchPanel</name>
    <message>
        <source>choose a unit</source>
        <translation>elegir una unidad</translation>
    </message>
    <message>
        <source>choose a column</source>
        <translation>elegir una columna</translation>
    </message>
    <message>
        <source>not in this table</source>
        <translation>no está en esta tabla</translation>
    </message>
    <message>
        <source>Column for %1</source>
        <translation>Columna para %1</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Unidad de %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::MergeDialog</name>
    <message>
        <source>Merge Another Laptop&apos;s Work</source>
        <translation>Fusionar el trabajo de otro portátil</translation>
    </message>
    <message>
        <source>“%1”, last changed by %2 on %3.</source>
        <translation>«%1», cambiado por última vez por %2 en %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n action(s) will be taken over as one step for undo.</source>
        <translation>
            <numerusform>Se tomará %n acción como un paso para deshacer.</numerusform>
            <numerusform>Se tomarán %n acciones como un paso para deshacer.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) only there will be added.</source>
        <translation>
            <numerusform>Se añadirá %n lectura que solo está allí.</numerusform>
            <numerusform>Se añadirán %n lecturas que solo están allí.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) read alike on both: nothing to do.</source>
        <translation>
            <numerusform>%n lugar es igual en ambos: nada que hacer.</numerusform>
            <numerusform>%n lugares son iguales en ambos: nada que hacer.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) differ: pick now or later, none is picked yet.</source>
        <translation>
            <numerusform>%n valor difiere: elija ahora o después, aún no se eligió.</numerusform>
            <numerusform>%n valores difieren: elija ahora o después, aún no se eligió ninguno.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Merge</source>
        <translation>&amp;Fusionar</translation>
    </message>
    <message>
        <source>Decide What Merging Left Open</source>
        <translation>Decidir lo que dejó la fusión</translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) differ between the laptops. What you do not pick stays open.</source>
        <translation>
            <numerusform>%n valor difiere entre los portátiles. Lo que no elija queda abierto.</numerusform>
            <numerusform>%n valores difieren entre los portátiles. Lo que no elija queda abierto.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Store Choices</source>
        <translation>&amp;Guardar elección</translation>
    </message>
    <message>
        <source>What merging does</source>
        <translation>Qué hace la fusión</translation>
    </message>
    <message>
        <source>Values that differ</source>
        <translation>Valores que difieren</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>This laptop</source>
        <translation>Este portátil</translation>
    </message>
    <message>
        <source>Other laptop</source>
        <translation>Otro portátil</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Ambos</translation>
    </message>
    <message>
        <source>The value that is not picked stays in the history.</source>
        <translation>El valor no elegido queda en el historial.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>this laptop, %1</source>
        <translation>este portátil, %1</translation>
    </message>
    <message>
        <source>other laptop, %1</source>
        <translation>otro portátil, %1</translation>
    </message>
    <message>
        <source>both</source>
        <translation>ambos</translation>
    </message>
</context>
<context>
    <name>ww::ui::NewPracticeDialog</name>
    <message>
        <source>New Practice Job</source>
        <translation>Nueva obra de práctica</translation>
    </message>
    <message>
        <source>Name of the job</source>
        <translation>Nombre de la obra</translation>
    </message>
    <message>
        <source>Difficulty</source>
        <translation>Dificultad</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Qué está mal</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Difficulty</source>
        <translation>&amp;Dificultad</translation>
    </message>
    <message>
        <source>&amp;Make Job…</source>
        <translation>&amp;Crear obra…</translation>
    </message>
    <message>
        <source>A simulated building answers every reading. It is no real plant: nothing of it may be reported as a measurement.</source>
        <translation>Un edificio simulado responde a cada lectura. No es una instalación real: nada de ello puede informarse como medición.</translation>
    </message>
    <message>
        <source>Building number</source>
        <translation>Número del edificio</translation>
    </message>
    <message>
        <source>&amp;Building number</source>
        <translation>Nú&amp;mero del edificio</translation>
    </message>
</context>
<context>
    <name>ww::ui::NotePanel</name>
    <message>
        <source>Photos of the valve</source>
        <translation>Fotos de la válvula</translation>
    </message>
    <message>
        <source>Go Back to Walk</source>
        <translation>Volver a Recorrido</translation>
    </message>
    <message>
        <source>Note to this &amp;reading</source>
        <translation>Nota a esta &amp;lectura</translation>
    </message>
    <message>
        <source>&amp;Notes on the valve</source>
        <translation>&amp;Notas de la válvula</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Note to this reading</source>
        <translation>Nota a esta lectura</translation>
    </message>
    <message>
        <source>Notes on the valve</source>
        <translation>Notas de la válvula</translation>
    </message>
    <message>
        <source>Ctrl+Enter stores and goes back</source>
        <translation>Ctrl+Intro guarda y vuelve</translation>
    </message>
    <message>
        <source>Notes and photos of %1</source>
        <translation>Notas y fotos de %1</translation>
    </message>
    <message>
        <source>No valve in hand</source>
        <translation>Ninguna válvula en mano</translation>
    </message>
</context>
<context>
    <name>ww::ui::NoticeLine</name>
    <message>
        <source>Notice</source>
        <translation>Aviso</translation>
    </message>
</context>
<context>
    <name>ww::ui::NumberPad</name>
    <message>
        <source>Number pad</source>
        <translation>Teclado numérico</translation>
    </message>
    <message>
        <source>Delete last digit</source>
        <translation>Borrar la última cifra</translation>
    </message>
    <message>
        <source>set %1</source>
        <comment>a step of the setting; short</comment>
        <translation>aj. %1</translation>
    </message>
    <message>
        <source>Setting one step down</source>
        <translation>Ajuste un paso abajo</translation>
    </message>
    <message>
        <source>Setting one step up</source>
        <translation>Ajuste un paso arriba</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>Cannot be read</source>
        <translation>Sin lectura posible</translation>
    </message>
    <message>
        <source>Store and go on</source>
        <translation>Guardar y seguir</translation>
    </message>
    <message>
        <source>Digit %1</source>
        <translation>Cifra %1</translation>
    </message>
    <message>
        <source>note</source>
        <comment>a key of the number pad; short</comment>
        <translation>nota</translation>
    </message>
    <message>
        <source>Write a note</source>
        <translation>Escribir una nota</translation>
    </message>
</context>
<context>
    <name>ww::ui::OpenRoundPanel</name>
    <message>
        <source>&amp;Kind of round</source>
        <translation>&amp;Tipo de ronda</translation>
    </message>
    <message>
        <source>Kind of round</source>
        <translation>Tipo de ronda</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>Me&amp;didor</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Medidor</translation>
    </message>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Persona</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Who lets the survey begin, and why</source>
        <translation>Quién deja empezar el levantamiento y por qué</translation>
    </message>
    <message>
        <source>name: reason</source>
        <translation>nombre: motivo</translation>
    </message>
    <message>
        <source>Open round %1</source>
        <translation>Abrir la ronda %1</translation>
    </message>
    <message>
        <source>Open Round %1</source>
        <translation>Abrir la ronda %1</translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation>, venció el %1</translation>
    </message>
    <message>
        <source>, calibrated to %1</source>
        <translation>, calibrado hasta %1</translation>
    </message>
    <message numerus="yes">
        <source>%n mandatory line(s) of readiness are open, the first: %1. A supervisor may let the survey begin and say why.</source>
        <translation>
            <numerusform>%n línea obligatoria de preparación está abierta, la primera: %1. Un supervisor puede dejar empezar el levantamiento y decir por qué.</numerusform>
            <numerusform>%n líneas obligatorias de preparación están abiertas, la primera: %1. Un supervisor puede dejar empezar el levantamiento y decir por qué.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::PagePreview</name>
    <message>
        <source>Page %1: %2</source>
        <translation>Página %1: %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::PeopleModel</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificado</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Empresa</translation>
    </message>
    <message>
        <source>Person %1</source>
        <translation>Persona %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::PhotoList</name>
    <message>
        <source>Attach Photo…</source>
        <translation>Adjuntar foto…</translation>
    </message>
    <message>
        <source>Remove Photo</source>
        <translation>Quitar foto</translation>
    </message>
    <message>
        <source>Attach a Photo</source>
        <translation>Adjuntar una foto</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>ww::ui::PreferencesDialog</name>
    <message>
        <source>Use &amp;large targets</source>
        <translation>Botones &amp;grandes</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Display</source>
        <translation>Pantalla</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>&amp;Display</source>
        <translation>Pant&amp;alla</translation>
    </message>
    <message>
        <source>&amp;Text size</source>
        <translation>&amp;Tamaño del texto</translation>
    </message>
    <message>
        <source>Units, tolerances and the route are facts of the job and stay as they are.</source>
        <translation>Unidades, tolerancias y la ruta son datos de la obra y quedan como están.</translation>
    </message>
    <message>
        <source>Reset Settings</source>
        <translation>Restablecer ajustes</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Como el sistema</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>I&amp;dioma</translation>
    </message>
    <message>
        <source>Display, text size, language, targets, window and the list of recent files become as they were at first</source>
        <translation>Pantalla, tamaño del texto, idioma, botones, ventana y lista de archivos recientes vuelven a como eran al principio</translation>
    </message>
</context>
<context>
    <name>ww::ui::PressurePage</name>
    <message>
        <source>Pump &amp;off too</source>
        <translation>Con bomba &amp;parada también</translation>
    </message>
    <message>
        <source>Valve on the other &amp;side too</source>
        <translation>Válvula en otro la&amp;do también</translation>
    </message>
    <message>
        <source>Circuit</source>
        <translation>Circuito</translation>
    </message>
    <message>
        <source>Cir&amp;cuit</source>
        <translation>Cir&amp;cuito</translation>
    </message>
    <message>
        <source>%1, index circuit</source>
        <translation>%1, circuito más desfavorable</translation>
    </message>
    <message>
        <source>The job has no circuits yet; add branches in System.</source>
        <translation>La obra aún no tiene circuitos; añada ramales en Sistema.</translation>
    </message>
</context>
<context>
    <name>ww::ui::PumpChooser</name>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
</context>
<context>
    <name>ww::ui::PumpPlace</name>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>Pages of the pump</source>
        <translation>Páginas de la bomba</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Curvas</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Resultados</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Decisión</translation>
    </message>
    <message>
        <source>Read and Set</source>
        <translation>Leer y ajustar</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Presión</translation>
    </message>
    <message>
        <source>Energy Code</source>
        <translation>Código energético</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Dispositivos</translation>
    </message>
    <message>
        <source>Set-Point</source>
        <translation>Consigna</translation>
    </message>
    <message>
        <source>Pump Data</source>
        <translation>Datos de bomba</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonas</translation>
    </message>
    <message>
        <source>Page of the pump</source>
        <translation>Página de la bomba</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Ningún libro abierto. Abra uno (Ctrl+O) o cree una obra (Ctrl+N).</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReadinessPage</name>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Must</source>
        <translation>Obligatoria</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Justificante</translation>
    </message>
    <message>
        <source>Take Usual List</source>
        <translation>Tomar la lista usual</translation>
    </message>
    <message>
        <source>Add Line</source>
        <translation>Añadir línea</translation>
    </message>
    <message>
        <source>Remove Line</source>
        <translation>Quitar línea</translation>
    </message>
    <message>
        <source>Readiness list</source>
        <translation>Lista de preparación</translation>
    </message>
    <message>
        <source>New line</source>
        <translation>Línea nueva</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>State: open, done or does not apply. No survey begins while a mandatory line is open.</source>
        <translation>Estado: abierto, hecho o no procede. Ningún levantamiento empieza mientras una línea obligatoria esté abierta.</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReadyList</name>
    <message>
        <source>To Job</source>
        <translation>A Obra</translation>
    </message>
    <message>
        <source>To System</source>
        <translation>A Sistema</translation>
    </message>
    <message>
        <source>To Walk</source>
        <translation>A Recorrido</translation>
    </message>
    <message>
        <source>To Pump</source>
        <translation>A Bomba</translation>
    </message>
    <message>
        <source>To Review</source>
        <translation>A Revisión</translation>
    </message>
    <message>
        <source>Decide Conflicts…</source>
        <translation>Decidir conflictos…</translation>
    </message>
    <message>
        <source>List Deficiency</source>
        <translation>Anotar deficiencia</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Ver</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Ver %1</translation>
    </message>
    <message>
        <source>give the reason, Enter</source>
        <translation>dé el motivo, Intro</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Motivo: %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReportPlace</name>
    <message>
        <source>Pages of the report</source>
        <translation>Páginas del informe</translation>
    </message>
    <message>
        <source>Page as printed</source>
        <translation>Página como se imprime</translation>
    </message>
    <message>
        <source>Ready to sign?</source>
        <translation>¿Listo para firmar?</translation>
    </message>
    <message>
        <source>&amp;Export Unsigned Draft…</source>
        <translation>&amp;Exportar borrador sin firmar…</translation>
    </message>
    <message>
        <source>Verif&amp;y a Report…</source>
        <translation>&amp;Verificar un informe…</translation>
    </message>
    <message>
        <source>Readiness and signing</source>
        <translation>Preparación y firma</translation>
    </message>
    <message>
        <source>The loop is being learned; the pages follow.</source>
        <translation>Se aprende la red; las páginas siguen.</translation>
    </message>
    <message>
        <source>Page %1</source>
        <translation>Página %1</translation>
    </message>
    <message>
        <source>Ready to sign</source>
        <translation>Listo para firmar</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Export Unsigned Draft</source>
        <translation>Exportar borrador sin firmar</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Verify a Report</source>
        <translation>Verificar un informe</translation>
    </message>
    <message>
        <source>Balance report</source>
        <translation>Informe de equilibrado</translation>
    </message>
    <message>
        <source>The loop is being learned; the file is written when that is done.</source>
        <translation>Se aprende la red; el archivo se escribe al terminar.</translation>
    </message>
    <message>
        <source>Stopped; no file was written.</source>
        <translation>Detenido; no se escribió ningún archivo.</translation>
    </message>
    <message>
        <source>&amp;Lay Out the Pages</source>
        <translation>&amp;Componer las páginas</translation>
    </message>
    <message>
        <source>Stop &amp;Laying Out</source>
        <translation>&amp;Detener la composición</translation>
    </message>
    <message>
        <source>Laying out the pages was stopped.</source>
        <translation>Se detuvo la composición de las páginas.</translation>
    </message>
    <message>
        <source>The report is being computed; the pages follow.</source>
        <translation>Se está calculando el informe; las páginas siguen.</translation>
    </message>
    <message>
        <source>The pages are being laid out; so far: %1</source>
        <translation>Se están componiendo las páginas; hasta ahora: %1</translation>
    </message>
    <message>
        <source>Let the pages be laid out, then sign.</source>
        <translation>Deje componer las páginas y firme después.</translation>
    </message>
    <message>
        <source>The pages are being laid out; sign when that is done.</source>
        <translation>Se están componiendo las páginas; firme cuando termine.</translation>
    </message>
    <message>
        <source>No page is laid out yet.</source>
        <translation>Todavía no hay ninguna página compuesta.</translation>
    </message>
    <message>
        <source>The pages follow.</source>
        <translation>Las páginas siguen.</translation>
    </message>
    <message>
        <source>The loop is being learned; sign when that is done.</source>
        <translation>Se está aprendiendo la red; firme cuando haya terminado.</translation>
    </message>
    <message>
        <source>The pages are being laid out; the file is written when that is done.</source>
        <translation>Se están componiendo las páginas; el archivo se escribe cuando termine.</translation>
    </message>
    <message>
        <source>Round of the report</source>
        <translation>Ronda del informe</translation>
    </message>
    <message>
        <source>Round %1: draft</source>
        <translation>Ronda %1: borrador</translation>
    </message>
    <message>
        <source>Round %1: %2</source>
        <translation>Ronda %1: %2</translation>
    </message>
    <message>
        <source>Choose the newest round above the pages to sign its report.</source>
        <translation>Elija la ronda más nueva sobre las páginas para firmar su informe.</translation>
    </message>
    <message>
        <source>Not ready to sign yet</source>
        <translation>Aún no listo para firmar</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Lo que falta aquí</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Ningún libro abierto. Abra uno (Ctrl+O) o cree una obra (Ctrl+N).</translation>
    </message>
    <message>
        <source>Writes these pages as a PDF file; every page says that it is not signed</source>
        <translation>Escribe estas páginas como archivo PDF; cada página dice que no está firmada</translation>
    </message>
</context>
<context>
    <name>ww::ui::ResultsPage</name>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>The job has no pump yet; add one on the page Pump Data.</source>
        <translation>La obra aún no tiene bomba; añada una en la página Datos de bomba.</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReviewPlace</name>
    <message>
        <source>Round</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>On share</source>
        <translation>En cuota</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Dispersión</translation>
    </message>
    <message>
        <source>Changed &amp;only</source>
        <translation>Solo cam&amp;bios</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>DP</source>
        <translation>Δp</translation>
    </message>
    <message>
        <source>Of target, %</source>
        <translation>% del objetivo</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Who, when</source>
        <translation>Quién, cuándo</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rondas</translation>
    </message>
    <message>
        <source>Two rounds compared</source>
        <translation>Dos rondas comparadas</translation>
    </message>
    <message>
        <source>Earlier round</source>
        <translation>Ronda anterior</translation>
    </message>
    <message>
        <source>Later round</source>
        <translation>Ronda posterior</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Comparar</translation>
    </message>
    <message>
        <source>&amp;with</source>
        <translation>co&amp;n</translation>
    </message>
    <message>
        <source>Spread and share by round</source>
        <translation>Dispersión y cuota por ronda</translation>
    </message>
    <message>
        <source>Nothing to review yet. Read and close a round on the place Walk (Alt+3).</source>
        <translation>Aún nada que revisar. Lea y cierre una ronda en Recorrido (Alt+3).</translation>
    </message>
    <message>
        <source>Round %1, %2</source>
        <translation>Ronda %1, %2</translation>
    </message>
    <message>
        <source>Spread, %: %1.   On share: %2 of %3.</source>
        <translation>Dispersión, %: %1.   En cuota: %2 de %3.</translation>
    </message>
    <message>
        <source>The same round twice: nothing to compare</source>
        <translation>Dos veces la misma ronda: nada que comparar</translation>
    </message>
    <message>
        <source>Order of the comparison</source>
        <translation>Orden de la comparación</translation>
    </message>
    <message>
        <source>Along the route</source>
        <translation>A lo largo de la ruta</translation>
    </message>
    <message>
        <source>Farthest from target first</source>
        <translation>Primero los más alejados</translation>
    </message>
    <message>
        <source>Largest change first</source>
        <translation>Primero el mayor cambio</translation>
    </message>
    <message>
        <source>&amp;Order</source>
        <translation>O&amp;rden</translation>
    </message>
    <message>
        <source>State, walked</source>
        <translation>Estado, recorrida</translation>
    </message>
    <message>
        <source>Pages of the review</source>
        <translation>Páginas de la revisión</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparación</translation>
    </message>
    <message>
        <source>Convergence</source>
        <translation>Convergencia</translation>
    </message>
    <message>
        <source>DP, %1</source>
        <translation>Δp, %1</translation>
    </message>
    <message>
        <source>Judging the rounds…</source>
        <translation>Evaluando las rondas…</translation>
    </message>
    <message>
        <source>%1 read</source>
        <translation>%1 leídos</translation>
    </message>
    <message>
        <source>%1 of %2 readings changed</source>
        <translation>%1 de %2 lecturas cambiadas</translation>
    </message>
    <message>
        <source>How the round was read</source>
        <translation>Cómo se leyó la ronda</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Ronda %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>medidor %1</translation>
    </message>
    <message numerus="yes">
        <source>%n doubtful</source>
        <translation>
            <numerusform>%n dudosa</numerusform>
            <numerusform>%n dudosas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n corrected</source>
        <translation>
            <numerusform>%n corregida</numerusform>
            <numerusform>%n corregidas</numerusform>
        </translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Ningún libro abierto. Abra uno (Ctrl+O) o cree una obra (Ctrl+N).</translation>
    </message>
    <message>
        <source>The first round: all its rows</source>
        <translation>La primera ronda: todas sus filas</translation>
    </message>
    <message>
        <source>Rd %1: %2</source>
        <translation>Rda. %1: %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::SectionView</name>
    <message>
        <source>%1, statements</source>
        <translation>%1, enunciados</translation>
    </message>
    <message>
        <source>%1, findings</source>
        <translation>%1, observaciones</translation>
    </message>
</context>
<context>
    <name>ww::ui::SetPointPage</name>
    <message>
        <source>Set-point %1</source>
        <translation>Consigna %1</translation>
    </message>
    <message>
        <source>Add Set-Point</source>
        <translation>Añadir consigna</translation>
    </message>
    <message>
        <source>Remove Set-Point</source>
        <translation>Quitar consigna</translation>
    </message>
    <message>
        <source>Dp set-points</source>
        <translation>Consignas de Δp</translation>
    </message>
    <message>
        <source>Found by: %1. Reset law: %2. Type a word or its first letters.</source>
        <translation>Hallada por: %1. Ley: %2. Escriba una palabra o sus primeras letras.</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>Place in the loop</source>
        <translation>Lugar en la red</translation>
    </message>
    <message>
        <source>Found by</source>
        <translation>Hallada por</translation>
    </message>
    <message>
        <source>Zero, pumps off</source>
        <translation>Cero, bombas paradas</translation>
    </message>
    <message>
        <source>Dp set-point</source>
        <translation>Consigna de Δp</translation>
    </message>
    <message>
        <source>Flow there</source>
        <translation>Caudal allí</translation>
    </message>
    <message>
        <source>Speed there</source>
        <translation>Velocidad allí</translation>
    </message>
    <message>
        <source>Reset law</source>
        <translation>Ley de variación</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Low limit</source>
        <translation>Límite inferior</translation>
    </message>
    <message>
        <source>High limit</source>
        <translation>Límite superior</translation>
    </message>
    <message>
        <source>Set by</source>
        <translation>Fijada por</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>ww::ui::SideList</name>
    <message>
        <source>Places</source>
        <translation>Áreas</translation>
    </message>
    <message>
        <source>Alt and the number opens a place</source>
        <translation>Alt y el número abre un área</translation>
    </message>
    <message>
        <source>%1, Alt+%2</source>
        <translation>%1, Alt+%2</translation>
    </message>
</context>
<context>
    <name>ww::ui::SignedVersions</name>
    <message>
        <source>withdrawn: %1</source>
        <translation>retirado: %1</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>vigente</translation>
    </message>
    <message>
        <source>superseded, the workbook was changed since</source>
        <translation>sustituido, el libro cambió desde entonces</translation>
    </message>
    <message>
        <source>Signed versions: none</source>
        <translation>Versiones firmadas: ninguna</translation>
    </message>
    <message>
        <source>Withdraw Report</source>
        <translation>Retirar informe</translation>
    </message>
    <message>
        <source>Signed versions</source>
        <translation>Versiones firmadas</translation>
    </message>
    <message>
        <source>reason, to withdraw</source>
        <translation>motivo, para retirar</translation>
    </message>
    <message>
        <source>Reason for withdrawing the report</source>
        <translation>Motivo para retirar el informe</translation>
    </message>
    <message>
        <source>Revision %1, %2: %3, %4
%5 — %6</source>
        <translation>Revisión %1, %2: %3, %4
%5 — %6</translation>
    </message>
    <message>
        <source> (self-made certificate)</source>
        <translation> (certificado autofirmado)</translation>
    </message>
    <message>
        <source>Withdrawing needs a reason.</source>
        <translation>Para retirar hace falta un motivo.</translation>
    </message>
    <message>
        <source>Revision %1 is signed by %2; nothing was changed since</source>
        <translation>La revisión %1 está firmada por %2; desde entonces no se ha cambiado nada</translation>
    </message>
</context>
<context>
    <name>ww::ui::SigningPanel</name>
    <message>
        <source>Choose…</source>
        <translation>Elegir…</translation>
    </message>
    <message>
        <source>Make a Certificate…</source>
        <translation>Crear un certificado…</translation>
    </message>
    <message>
        <source>Sign…</source>
        <translation>Firmar…</translation>
    </message>
    <message>
        <source>key file, .p12</source>
        <translation>archivo de clave, .p12</translation>
    </message>
    <message>
        <source>Key file</source>
        <translation>Archivo de clave</translation>
    </message>
    <message>
        <source>Choose the key file</source>
        <translation>Elegir el archivo de clave</translation>
    </message>
    <message>
        <source>Makes a key whose certificate vouches for itself; nobody else confirms the name</source>
        <translation>Crea una clave cuyo certificado responde de sí mismo; nadie más confirma el nombre</translation>
    </message>
    <message>
        <source>asked each time, never kept</source>
        <translation>se pide cada vez, nunca se guarda</translation>
    </message>
    <message>
        <source>Passphrase of the key</source>
        <translation>Contraseña de la clave</translation>
    </message>
    <message>
        <source>Readings taken by me</source>
        <translation>Lecturas hechas por mí</translation>
    </message>
    <message>
        <source>Reviewed and accepted by me</source>
        <translation>Revisado y aceptado por mí</translation>
    </message>
    <message>
        <source>Meaning of my signature</source>
        <translation>Significado de mi firma</translation>
    </message>
    <message>
        <source>Technician and supervisor</source>
        <translation>Técnico y supervisor</translation>
    </message>
    <message>
        <source>Technician only</source>
        <translation>Solo técnico</translation>
    </message>
    <message>
        <source>Who signs this report</source>
        <translation>Quién firma este informe</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Clave</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Significado</translation>
    </message>
    <message>
        <source>Signers</source>
        <translation>Firmantes</translation>
    </message>
    <message>
        <source>This workbook can only be read here.</source>
        <translation>Aquí este libro solo se puede leer.</translation>
    </message>
    <message>
        <source>Choose the Key File</source>
        <translation>Elegir el archivo de clave</translation>
    </message>
    <message>
        <source>Sign the Report</source>
        <translation>Firmar el informe</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Signed by %1 as %2: %3</source>
        <translation>Firmado por %1 como %2: %3</translation>
    </message>
    <message>
        <source>The certificate is self-made: nobody else vouches for the name.</source>
        <translation>El certificado es autofirmado: nadie más responde del nombre.</translation>
    </message>
    <message>
        <source>Keep the Key</source>
        <translation>Guardar la clave</translation>
    </message>
    <message>
        <source>Next the supervisor signs this file: Reviewed and accepted by me.</source>
        <translation>Después firma este archivo el supervisor: Revisado y aceptado por mí.</translation>
    </message>
    <message>
        <source>Next the technician signs this file: Readings taken by me.</source>
        <translation>Después firma este archivo el técnico: Lecturas hechas por mí.</translation>
    </message>
    <message>
        <source>Why nothing can be signed</source>
        <translation>Por qué no se puede firmar nada</translation>
    </message>
    <message>
        <source>Still to do before signing: %1</source>
        <translation>Falta antes de firmar: %1</translation>
    </message>
    <message>
        <source>Keys (*.p12 *.pfx)</source>
        <translation>Claves (*.p12 *.pfx)</translation>
    </message>
</context>
<context>
    <name>ww::ui::SpeedFields</name>
    <message>
        <source>A speed becomes a reading when it is typed, or confirmed with Enter in its field.</source>
        <translation>Una velocidad es una lectura si se teclea, o se confirma con Intro en su campo.</translation>
    </message>
    <message>
        <source>Speed of %1, %2: as read</source>
        <translation>Velocidad de %1, %2: leída</translation>
    </message>
    <message>
        <source>Speed of %1, %2: as before</source>
        <translation>Velocidad de %1, %2: como antes</translation>
    </message>
</context>
<context>
    <name>ww::ui::SystemModel</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Sirve a</translation>
    </message>
    <message>
        <source>Fed by</source>
        <translation>Alimentado por</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Válvula</translation>
    </message>
    <message>
        <source>Setting
found</source>
        <translation>Ajuste
hallado</translation>
    </message>
    <message>
        <source>Fully
open</source>
        <translation>Totalmente
abierta</translation>
    </message>
    <message>
        <source>Design
flow</source>
        <translation>Caudal
de diseño</translation>
    </message>
    <message>
        <source>Target
share %</source>
        <translation>Cuota
objetivo %</translation>
    </message>
    <message>
        <source>Run
loss</source>
        <translation>Pérdida
tramo</translation>
    </message>
    <message>
        <source>Circuit
loss</source>
        <translation>Pérdida
circuito</translation>
    </message>
    <message>
        <source>Readable
from</source>
        <translation>Legible
desde</translation>
    </message>
</context>
<context>
    <name>ww::ui::SystemPlace</name>
    <message>
        <source>&amp;Try What If</source>
        <translation>Probar q&amp;ué pasa si</translation>
    </message>
    <message>
        <source>Add Branch</source>
        <translation>Añadir ramal</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Sistema</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Ramales</translation>
    </message>
    <message>
        <source>Type to change a cell; Enter goes down, Tab goes right</source>
        <translation>Teclee para cambiar una celda; Intro baja, Tab va a la derecha</translation>
    </message>
    <message>
        <source>Sums of the system</source>
        <translation>Sumas del sistema</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Lo que falta aquí</translation>
    </message>
    <message>
        <source>Try what if</source>
        <translation>Probar qué pasa si</translation>
    </message>
    <message>
        <source>&amp;Find branch</source>
        <translation>&amp;Buscar ramal</translation>
    </message>
    <message>
        <source>Find branch</source>
        <translation>Buscar ramal</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Ningún libro abierto. Abra uno (Ctrl+O) o cree una obra (Ctrl+N).</translation>
    </message>
    <message numerus="yes">
        <source>%n terminal(s)</source>
        <translation>
            <numerusform>%n terminal</numerusform>
            <numerusform>%n terminales</numerusform>
        </translation>
    </message>
    <message>
        <source>sum of design &lt;b&gt;%1 %2&lt;/b&gt;</source>
        <translation>suma de diseño &lt;b&gt;%1 %2&lt;/b&gt;</translation>
    </message>
    <message>
        <source>target shares add to &lt;b&gt;%1 %&lt;/b&gt;</source>
        <translation>las cuotas objetivo suman &lt;b&gt;%1 %&lt;/b&gt;</translation>
    </message>
    <message numerus="yes">
        <source>%n terminal(s) without a valve table</source>
        <translation>
            <numerusform>%n terminal sin tabla de válvula</numerusform>
            <numerusform>%n terminales sin tabla de válvula</numerusform>
        </translation>
    </message>
    <message>
        <source>Valve Ta&amp;bles</source>
        <translation>Ta&amp;blas de válvulas</translation>
    </message>
    <message>
        <source>Show Other Columns</source>
        <translation>Ver otras columnas</translation>
    </message>
    <message>
        <source>arrows follow the pipe</source>
        <translation>flechas siguen el tubo</translation>
    </message>
    <message>
        <source>Enter opens the valve</source>
        <translation>Intro abre la válvula</translation>
    </message>
    <message>
        <source>+, - zoom</source>
        <translation>+, - zoom</translation>
    </message>
    <message>
        <source>Enter goes to the branch</source>
        <translation>Intro va al ramal</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A adds a branch</source>
        <translation>Ctrl+Mayús+A añade un ramal</translation>
    </message>
    <message>
        <source>Ctrl+J find</source>
        <translation>Ctrl+J buscar</translation>
    </message>
    <message>
        <source>Ctrl+T diagram</source>
        <translation>Ctrl+T esquema</translation>
    </message>
    <message>
        <source>Alt+Shift+Up, Alt+Shift+Down along the route</source>
        <translation>Alt+Mayús+Arriba, Alt+Mayús+Abajo en la ruta</translation>
    </message>
    <message>
        <source>Ctrl+Alt+F what if</source>
        <translation>Ctrl+Alt+F qué pasa si</translation>
    </message>
    <message>
        <source>Show the diagram smaller</source>
        <translation>Ver el esquema más pequeño</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Encajar</translation>
    </message>
    <message>
        <source>Fit the whole loop into the diagram</source>
        <translation>Encajar toda la red en el esquema</translation>
    </message>
    <message>
        <source>Show the diagram larger</source>
        <translation>Ver el esquema más grande</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Ver</translation>
    </message>
    <message>
        <source>Paste Table</source>
        <translation>Pegar tabla</translation>
    </message>
    <message>
        <source>Show the first terminal without a valve table</source>
        <translation>Ver el primer terminal sin tabla de válvula</translation>
    </message>
    <message>
        <source>Add the first branch (Ctrl+Shift+A), paste a branch table (Ctrl+V), or make the job from tables (Ctrl+Shift+I).</source>
        <translation>Añada el primer ramal (Ctrl+Mayús+A), pegue una tabla de ramales (Ctrl+V) o cree la obra a partir de tablas (Ctrl+Mayús+I).</translation>
    </message>
</context>
<context>
    <name>ww::ui::TestPage</name>
    <message>
        <source>Pumps off</source>
        <translation>Bombas paradas</translation>
    </message>
    <message>
        <source>Shutoff</source>
        <translation>Caudal nulo</translation>
    </message>
    <message>
        <source>Full open</source>
        <translation>Totalmente abierta</translation>
    </message>
    <message>
        <source>Throttled</source>
        <translation>Estrangulada</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>As it runs</source>
        <translation>Tal como marcha</translation>
    </message>
    <message>
        <source>Pump test sheet</source>
        <translation>Hoja de prueba de bomba</translation>
    </message>
    <message>
        <source>Type to enter a value; Enter goes down, Tab goes right</source>
        <translation>Teclee para introducir un valor; Intro baja, Tab va a la derecha</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>Open a round first (Ctrl+Shift+N): readings are kept with one.</source>
        <translation>Abra antes una ronda (Ctrl+Mayús+N): las lecturas van con una.</translation>
    </message>
    <message>
        <source>Readings of round %1, %2.</source>
        <translation>Lecturas de la ronda %1, %2.</translation>
    </message>
    <message>
        <source>Readings of round %1, %2. New ones need the next round (Ctrl+Shift+N).</source>
        <translation>Lecturas de la ronda %1, %2. Las nuevas necesitan la ronda siguiente (Ctrl+Mayús+N).</translation>
    </message>
</context>
<context>
    <name>ww::ui::TextTable</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>struck through</source>
        <translation>tachado</translation>
    </message>
</context>
<context>
    <name>ww::ui::TruthWindow</name>
    <message>
        <source>Truth against Found</source>
        <translation>Lo real y lo hallado</translation>
    </message>
    <message>
        <source>What the work came to</source>
        <translation>En qué quedó el trabajo</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Losses at design flow</source>
        <translation>Pérdidas a caudal de diseño</translation>
    </message>
    <message>
        <source>Loss at design flow, kPa</source>
        <translation>Pérdida a caudal de diseño, kPa</translation>
    </message>
    <message>
        <source>%1 run</source>
        <translation>%1 tramo</translation>
    </message>
    <message>
        <source>%1 circuit</source>
        <translation>%1 circuito</translation>
    </message>
    <message>
        <source>No fault was planted in this building.</source>
        <translation>En este edificio no se escondió ningún fallo.</translation>
    </message>
    <message>
        <source>Faults of the building</source>
        <translation>Fallos del edificio</translation>
    </message>
    <message>
        <source>True is what the simulated building really has; found is what was learned from your readings.</source>
        <translation>Real es lo que el edificio simulado tiene de verdad; hallado es lo aprendido de sus lecturas.</translation>
    </message>
    <message>
        <source>Before the work</source>
        <translation>Antes del trabajo</translation>
    </message>
    <message>
        <source>By design</source>
        <translation>Según el diseño</translation>
    </message>
    <message>
        <source>True (simulated)</source>
        <translation>Real (simulado)</translation>
    </message>
    <message>
        <source>Found from readings</source>
        <translation>Hallado por lecturas</translation>
    </message>
    <message>
        <source>± 1 sd of found</source>
        <translation>± 1 desv. típ. de lo hallado</translation>
    </message>
    <message>
        <source>Found / true</source>
        <translation>Hallado / real</translation>
    </message>
    <message>
        <source>Classical method</source>
        <translation>Método clásico</translation>
    </message>
    <message>
        <source>Practice building %1, number %2</source>
        <translation>Edificio de práctica %1, número %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::ValveCard</name>
    <message>
        <source>Go Bac&amp;k</source>
        <translation>&amp;Atrás</translation>
    </message>
    <message>
        <source>Go to Ne&amp;xt</source>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>Valve in hand</source>
        <translation>Válvula en mano</translation>
    </message>
    <message>
        <source>Place on the route</source>
        <translation>Lugar en la ruta</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Sirve a</translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation>Última lectura</translation>
    </message>
    <message>
        <source>Share against target</source>
        <translation>Cuota frente al objetivo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Setting of the valve in hand</source>
        <translation>Ajuste de la válvula en mano</translation>
    </message>
    <message>
        <source>DP of the valve in hand</source>
        <translation>Δp de la válvula en mano</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Notes, photos (%1)</source>
        <translation>Notas, fotos (%1)</translation>
    </message>
    <message>
        <source>Flow of the valve in hand</source>
        <translation>Caudal de la válvula en mano</translation>
    </message>
    <message>
        <source>%1 % of target  %2</source>
        <comment>share, state</comment>
        <translation>%1 % del objetivo  %2</translation>
    </message>
    <message>
        <source>Valve stored last</source>
        <translation>Última válvula guardada</translation>
    </message>
    <message>
        <source>%1 % of target</source>
        <translation>%1 % del objetivo</translation>
    </message>
    <message>
        <source>A&amp;djust</source>
        <translation>A&amp;justar</translation>
    </message>
    <message>
        <source>Takes the valve in hand to the place Adjust</source>
        <translation>Lleva la válvula en mano al área Ajustar</translation>
    </message>
</context>
<context>
    <name>ww::ui::ValvePage</name>
    <message>
        <source>Points</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Ramales</translation>
    </message>
    <message>
        <source>Add Valve &amp;Model</source>
        <translation>Añadir &amp;modelo de válvula</translation>
    </message>
    <message>
        <source>Remove Model</source>
        <translation>Quitar modelo</translation>
    </message>
    <message>
        <source>Valve tables</source>
        <translation>Tablas de válvulas</translation>
    </message>
    <message>
        <source>Valve models</source>
        <translation>Modelos de válvulas</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Cv or Kv</source>
        <translation>Cv o Kv</translation>
    </message>
    <message>
        <source>setting and coefficient</source>
        <translation>ajuste y coeficiente</translation>
    </message>
    <message>
        <source>Table of the model</source>
        <translation>Tabla del modelo</translation>
    </message>
    <message>
        <source>Remove Point</source>
        <translation>Quitar punto</translation>
    </message>
</context>
<context>
    <name>ww::ui::ValvePanel</name>
    <message>
        <source>Of target by round, %</source>
        <translation>% del objetivo por ronda</translation>
    </message>
    <message>
        <source>This reading</source>
        <translation>Esta lectura</translation>
    </message>
    <message>
        <source>Valve in hand</source>
        <translation>Válvula en mano</translation>
    </message>
    <message>
        <source>Design and valve</source>
        <translation>Diseño y válvula</translation>
    </message>
    <message>
        <source>Of target by round</source>
        <translation>Del objetivo por ronda</translation>
    </message>
    <message>
        <source>Of target by round, drawn</source>
        <translation>Del objetivo por ronda, dibujado</translation>
    </message>
    <message>
        <source>Reading as entered</source>
        <translation>Lectura como se introdujo</translation>
    </message>
    <message>
        <source>Reading against the learned loop</source>
        <translation>Lectura frente a la red aprendida</translation>
    </message>
    <message>
        <source>Open comments</source>
        <translation>Comentarios abiertos</translation>
    </message>
    <message>
        <source>valve %1 %2</source>
        <translation>válvula %1 %2</translation>
    </message>
    <message>
        <source>setting %1 of %2 %3%4</source>
        <translation>ajuste %1 de %2 %3%4</translation>
    </message>
    <message>
        <source>, fully open</source>
        <translation>, totalmente abierta</translation>
    </message>
    <message>
        <source>readable from %1</source>
        <translation>legible desde %1</translation>
    </message>
    <message>
        <source>not read in this round</source>
        <translation>sin leer en esta ronda</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>marked doubtful</source>
        <translation>marcado dudoso</translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation>motivo: %1</translation>
    </message>
    <message>
        <source>Open comment: %1, %2: %3</source>
        <translation>Comentario abierto: %1, %2: %3</translation>
    </message>
    <message>
        <source>No valve in hand</source>
        <translation>Ninguna válvula en mano</translation>
    </message>
    <message>
        <source>design %1 %2</source>
        <translation>diseño %1 %2</translation>
    </message>
    <message>
        <source>Ctrl+U takes what explains it, Ctrl+R reads again.</source>
        <translation>Ctrl+U toma lo que la explica, Ctrl+R relee.</translation>
    </message>
    <message>
        <source>Ctrl+R reads again.</source>
        <translation>Ctrl+R relee.</translation>
    </message>
    <message>
        <source>Notes of the valve in hand</source>
        <translation>Notas de la válvula en mano</translation>
    </message>
    <message>
        <source>Notes, photos (%1)</source>
        <translation>Notas, fotos (%1)</translation>
    </message>
    <message>
        <source>About the valve in hand, scrolled</source>
        <translation>Sobre la válvula en mano, desplazado</translation>
    </message>
    <message>
        <source>What the grid has no room for</source>
        <translation>Lo que no cabe en la tabla</translation>
    </message>
    <message>
        <source>Rd %1:</source>
        <comment>round, short</comment>
        <translation>Rda. %1:</translation>
    </message>
</context>
<context>
    <name>ww::ui::VerifyDialog</name>
    <message>
        <source>Verify a Report</source>
        <translation>Verificar un informe</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Trust a Root Certificate…</source>
        <translation>Confiar en un certificado raíz…</translation>
    </message>
    <message>
        <source>The certificate of the signer&apos;s firm or issuer, as a PEM file</source>
        <translation>El certificado de la empresa o del emisor del firmante, en archivo PEM</translation>
    </message>
    <message>
        <source>Trust a Root Certificate</source>
        <translation>Confiar en un certificado raíz</translation>
    </message>
    <message>
        <source>Certificates (*.pem *.crt *.cer)</source>
        <translation>Certificados (*.pem *.crt *.cer)</translation>
    </message>
    <message>
        <source>%1: unchanged since it was signed</source>
        <translation>%1: sin cambios desde la firma</translation>
    </message>
    <message>
        <source>%1: NOT proved to be as it was signed</source>
        <translation>%1: NO demostrado que siga como se firmó</translation>
    </message>
    <message>
        <source>Not signed yet.</source>
        <translation>Aún sin firmar.</translation>
    </message>
    <message>
        <source>Beside the open workbook</source>
        <translation>Comparado con el libro abierto</translation>
    </message>
</context>
<context>
    <name>ww::ui::WalkGrid</name>
    <message>
        <source>Valves in walking order</source>
        <translation>Válvulas en orden de recorrido</translation>
    </message>
    <message>
        <source>Type the dp, or the flow where a valve has no table, and press Enter; Ctrl+Tab or F6 leaves the grid</source>
        <translation>Escriba la Δp, o el caudal donde una válvula no tiene tabla, y pulse Intro; Ctrl+Tab o F6 sale de la tabla</translation>
    </message>
</context>
<context>
    <name>ww::ui::WalkModel</name>
    <message>
        <source>not readable</source>
        <translation>ilegible</translation>
    </message>
    <message>
        <source>%1 mean</source>
        <translation>%1 media</translation>
    </message>
    <message>
        <source>%1 | %2</source>
        <translation>%1 | %2</translation>
    </message>
    <message>
        <source>%1, reason</source>
        <translation>%1, motivo</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>%1 percent of target</source>
        <translation>%1 por ciento del objetivo</translation>
    </message>
    <message>
        <source>comment: %1</source>
        <translation>comentario: %1</translation>
    </message>
    <message>
        <source>Route</source>
        <translation>Ruta</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Sirve a</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>DP
%1</source>
        <translation>Δp
%1</translation>
    </message>
    <message>
        <source>Last DP
%1</source>
        <translation>Última Δp
%1</translation>
    </message>
    <message>
        <source>Flow
%1</source>
        <translation>Caudal
%1</translation>
    </message>
    <message>
        <source>Share
%</source>
        <translation>Cuota
%</translation>
    </message>
    <message>
        <source>Target
%</source>
        <translation>Objetivo
%</translation>
    </message>
    <message>
        <source>Of target
%</source>
        <translation>% del
objetivo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Added later</source>
        <translation>Añadido después</translation>
    </message>
</context>
<context>
    <name>ww::ui::WalkPlace</name>
    <message>
        <source>Walk</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>Totals of the round</source>
        <translation>Totales de la ronda</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Lo que falta aquí</translation>
    </message>
    <message>
        <source>&amp;Find valve</source>
        <translation>&amp;Buscar válvula</translation>
    </message>
    <message>
        <source>Find valve</source>
        <translation>Buscar válvula</translation>
    </message>
    <message>
        <source>tag or number</source>
        <translation>etiqueta o número</translation>
    </message>
    <message>
        <source>No valve to read yet. Add the branches in System (Alt+2).</source>
        <translation>Aún no hay válvula que leer. Añada los ramales en Sistema (Alt+2).</translation>
    </message>
    <message>
        <source>No round yet. Open Round 1 (Ctrl+Shift+N).</source>
        <translation>Aún sin ronda. Abra la ronda 1 (Ctrl+Mayús+N).</translation>
    </message>
    <message>
        <source>Close Round %1…</source>
        <translation>Cerrar la ronda %1…</translation>
    </message>
    <message>
        <source>Open Round 1…</source>
        <translation>Abrir la ronda 1…</translation>
    </message>
    <message>
        <source>Open Round %1…</source>
        <translation>Abrir la ronda %1…</translation>
    </message>
    <message>
        <source>of design</source>
        <translation>del diseño</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>on share</source>
        <translation>en cuota</translation>
    </message>
    <message>
        <source>carried over</source>
        <translation>heredados</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>dispersión</translation>
    </message>
    <message>
        <source>doubts</source>
        <translation>dudas</translation>
    </message>
    <message>
        <source>oldest reading</source>
        <translation>lectura más antigua</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O), make a new job (Ctrl+N), or practice on a simulated building (Ctrl+Shift+P). F1 shows the handbook.</source>
        <translation>Ningún libro abierto. Abra uno (Ctrl+O), cree una obra (Ctrl+N), o practique con un edificio simulado (Ctrl+Mayús+P). F1 muestra el manual.</translation>
    </message>
    <message>
        <source>Ctrl+T numbers as a table</source>
        <translation>Ctrl+T números en tabla</translation>
    </message>
    <message>
        <source>Ctrl+G back to the grid</source>
        <translation>Ctrl+G volver a la tabla</translation>
    </message>
    <message>
        <source>Alt+2 system</source>
        <translation>Alt+2 sistema</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N opens round 1</source>
        <translation>Ctrl+Mayús+N abre la ronda 1</translation>
    </message>
    <message>
        <source>Enter opens the round</source>
        <translation>Intro abre la ronda</translation>
    </message>
    <message>
        <source>Tab next choice</source>
        <translation>Tab siguiente</translation>
    </message>
    <message>
        <source>Esc back to the grid</source>
        <translation>Esc volver a la tabla</translation>
    </message>
    <message>
        <source>Esc back to the walk</source>
        <translation>Esc volver al recorrido</translation>
    </message>
    <message>
        <source>Enter closes the round</source>
        <translation>Intro cierra la ronda</translation>
    </message>
    <message>
        <source>Enter stores the reason</source>
        <translation>Intro guarda el motivo</translation>
    </message>
    <message>
        <source>Tab next item</source>
        <translation>Tab punto siguiente</translation>
    </message>
    <message>
        <source>digits Enter next valve</source>
        <translation>cifras Intro válvula siguiente</translation>
    </message>
    <message>
        <source>digits Enter correct the reading</source>
        <translation>cifras Intro corrige la lectura</translation>
    </message>
    <message>
        <source>Tab setting</source>
        <translation>Tab ajuste</translation>
    </message>
    <message>
        <source>x cannot read</source>
        <translation>x ilegible</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N opens the next round</source>
        <translation>Ctrl+Mayús+N abre la ronda siguiente</translation>
    </message>
    <message>
        <source>Alt+4 adjust</source>
        <translation>Alt+4 ajustar</translation>
    </message>
    <message>
        <source>Ctrl+J find</source>
        <translation>Ctrl+J buscar</translation>
    </message>
    <message>
        <source>Ctrl+R again</source>
        <translation>Ctrl+R otra vez</translation>
    </message>
    <message>
        <source>Ctrl+G convergence</source>
        <translation>Ctrl+G convergencia</translation>
    </message>
    <message>
        <source>F6 leaves the grid</source>
        <translation>F6 sale de la tabla</translation>
    </message>
    <message>
        <source>Enter stores</source>
        <translation>Intro guarda</translation>
    </message>
    <message>
        <source>Esc restores</source>
        <translation>Esc restaura</translation>
    </message>
    <message>
        <source>Enter goes to the valve</source>
        <translation>Intro va a la válvula</translation>
    </message>
    <message>
        <source>terminals read</source>
        <translation>terminales leídos</translation>
    </message>
    <message>
        <source>Round %1: nothing read yet</source>
        <translation>Ronda %1: aún sin lecturas</translation>
    </message>
    <message>
        <source>%1, %2 doubtful in it</source>
        <translation>%1, %2 en duda</translation>
    </message>
    <message>
        <source>total flow</source>
        <translation>caudal total</translation>
    </message>
    <message>
        <source>Ctrl+Alt+X marks the rest as not turned</source>
        <translation>Ctrl+Alt+X resto no girado</translation>
    </message>
    <message>
        <source>Enter takes the speed</source>
        <translation>Intro toma la velocidad</translation>
    </message>
    <message>
        <source>%1 of %2 terminals</source>
        <translation>%1 de %2 terminales</translation>
    </message>
</context>
<context>
    <name>ww::ui::WordSign</name>
    <message>
        <source>What to do at the valve</source>
        <translation>Qué hacer en la válvula</translation>
    </message>
</context>
<context>
    <name>ww::ui::WorkbookBridge</name>
    <message>
        <source>Opening %1</source>
        <translation>Abriendo %1</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>Escribiendo %1</translation>
    </message>
    <message>
        <source>Comparing with %1</source>
        <translation>Comparando con %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::ZonePage</name>
    <message>
        <source>&amp;Add Zone</source>
        <translation>Aña&amp;dir zona</translation>
    </message>
    <message>
        <source>Re&amp;move Zone</source>
        <translation>&amp;Quitar zona</translation>
    </message>
    <message>
        <source>Chan&amp;ge Flow</source>
        <translation>C&amp;ambiar caudal</translation>
    </message>
    <message>
        <source>&amp;Start Anew</source>
        <translation>E&amp;mpezar de nuevo</translation>
    </message>
    <message>
        <source>&amp;Keep as New Revision</source>
        <translation>&amp;Guardar como revisión</translation>
    </message>
    <message>
        <source>&amp;Tag</source>
        <translation>E&amp;tiqueta</translation>
    </message>
    <message>
        <source>of a new zone, or of one there is</source>
        <translation>de una zona nueva o existente</translation>
    </message>
    <message>
        <source>Design fl&amp;ow</source>
        <translation>Caudal de di&amp;seño</translation>
    </message>
    <message>
        <source>such as 12.5 gpm or 0.8 L/s</source>
        <translation>p. ej. 12.5 gpm o 0.8 L/s</translation>
    </message>
    <message>
        <source>Fe&amp;d by</source>
        <translation>A&amp;limentado por</translation>
    </message>
    <message>
        <source>tag; empty: the pump</source>
        <translation>etiqueta; vacío: la bomba</translation>
    </message>
    <message>
        <source>C&amp;ircuit loss</source>
        <translation>Pérdida c&amp;ircuito</translation>
    </message>
    <message>
        <source>at that flow, without valve</source>
        <translation>a ese caudal, sin válvula</translation>
    </message>
    <message>
        <source>Ru&amp;n loss</source>
        <translation>Pérdida t&amp;ramo</translation>
    </message>
    <message>
        <source>of the new pipe to it</source>
        <translation>del tubo nuevo hasta ella</translation>
    </message>
    <message>
        <source>Va&amp;lve</source>
        <translation>&amp;Válvula</translation>
    </message>
    <message>
        <source>model and size of the job</source>
        <translation>modelo y tamaño de la obra</translation>
    </message>
    <message>
        <source>Tried on a copy; the job stays as it is until it is kept.</source>
        <translation>Probado en una copia; la obra queda igual hasta guardarlo.</translation>
    </message>
    <message>
        <source>Changes tried</source>
        <translation>Cambios probados</translation>
    </message>
    <message>
        <source>add %1, %2</source>
        <translation>añadir %1, %2</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>The changed loop is being solved.</source>
        <translation>Se calcula la red cambiada.</translation>
    </message>
    <message>
        <source>Type a tag and a flow at the left, and add a zone, remove one or change its flow: the changed loop is solved, and what it does to the balance, the pump and the signed report stands here.</source>
        <translation>Escriba a la izquierda una etiqueta y un caudal, y añada una zona, quite una o cambie su caudal: la red cambiada se calcula, y aquí queda lo que eso hace al equilibrado, a la bomba y al informe firmado.</translation>
    </message>
    <message>
        <source>Save St&amp;udy…</source>
        <translation>Guardar est&amp;udio…</translation>
    </message>
    <message>
        <source>Save Study</source>
        <translation>Guardar estudio</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Change the design flows above too</source>
        <translation>Cambiar también los caudales de diseño de arriba</translation>
    </message>
    <message>
        <source>Kept as one step: %1.</source>
        <translation>Guardado como un paso: %1.</translation>
    </message>
    <message>
        <source>Next: set the valves of new branches fully open and read them in round %1, which is open: place Walk (Alt+3).</source>
        <translation>Después: abra del todo las válvulas de los ramales nuevos y léalos en la ronda %1, que está abierta: lugar Recorrido (Alt+3).</translation>
    </message>
    <message>
        <source>Next: set the valves of new branches fully open, then open a round (Ctrl+Shift+N) and read every valve. Rounds that are closed keep the design they were judged by.</source>
        <translation>Después: abra del todo las válvulas de los ramales nuevos, abra luego una ronda (Ctrl+Mayús+N) y lea cada válvula. Las rondas cerradas conservan el diseño por el que se juzgaron.</translation>
    </message>
</context>
<context>
    <name>ww::ui::charts::ChartView</name>
    <message>
        <source>%1, as a table</source>
        <translation>%1, como tabla</translation>
    </message>
</context>
<context>
    <name>ww::ui::schematic::SchematicKey</name>
    <message>
        <source>Key to the diagram</source>
        <translation>Leyenda del esquema</translation>
    </message>
    <message>
        <source>open part of a valve</source>
        <translation>parte abierta de una válvula</translation>
    </message>
    <message>
        <source>index circuit, * its end</source>
        <translation>circuito más desfavorable, * su final</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>pump</source>
        <translation>bomba</translation>
    </message>
</context>
<context>
    <name>ww::ui::schematic::SchematicView</name>
    <message>
        <source>One-line diagram</source>
        <translation>Esquema unifilar</translation>
    </message>
    <message numerus="yes">
        <source>%n branch(es). Arrow keys follow the pipe, Enter opens the valve.</source>
        <translation>
            <numerusform>%n ramal. Las flechas siguen el tubo, Intro abre la válvula.</numerusform>
            <numerusform>%n ramales. Las flechas siguen el tubo, Intro abre la válvula.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, not read</source>
        <translation>%1, sin leer</translation>
    </message>
    <message>
        <source>%1, %2 of target</source>
        <translation>%1, %2 del objetivo</translation>
    </message>
    <message>
        <source>, on the index circuit</source>
        <translation>, en el circuito más desfavorable</translation>
    </message>
</context>
<context>
    <name>ww::ui::system::WhatIfBench</name>
    <message>
        <source>Reset to the Last Round</source>
        <translation>Restablecer la última ronda</translation>
    </message>
    <message>
        <source>What if: settings tried and flows predicted</source>
        <translation>Qué pasa si: ajustes probados y caudales previstos</translation>
    </message>
    <message>
        <source>Prediction</source>
        <translation>Predicción</translation>
    </message>
    <message>
        <source>Pump speed, percent of rated</source>
        <translation>Velocidad de la bomba, por ciento del nominal</translation>
    </message>
    <message>
        <source>Pump s&amp;peed, % of rated</source>
        <translation>Velocidad bo&amp;mba, % del nominal</translation>
    </message>
    <message>
        <source>Computed from design losses. Nothing here is stored as a reading.</source>
        <translation>Calculado con pérdidas de diseño. Nada de esto se guarda como lectura.</translation>
    </message>
    <message>
        <source>What is computed from</source>
        <translation>De qué se calcula</translation>
    </message>
    <message>
        <source>Computed from the learned loop. Nothing here is stored as a reading.</source>
        <translation>Calculado con la red aprendida. Nada de esto se guarda como lectura.</translation>
    </message>
</context>
<context>
    <name>ww::ui::system::WhatIfModel</name>
    <message>
        <source>No prediction: %1</source>
        <translation>Sin predicción: %1</translation>
    </message>
    <message>
        <source>No prediction: %1 (and %2 more)</source>
        <translation>Sin predicción: %1 (y %2 más)</translation>
    </message>
    <message>
        <source>%1. No water moves.</source>
        <translation>%1. No se mueve agua.</translation>
    </message>
    <message>
        <source>%1. Shares from %2 to %3 % of target.</source>
        <translation>%1. Cuotas de %2 a %3 % del objetivo.</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Setting now</source>
        <translation>Ajuste actual</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Qué pasa si</translation>
    </message>
    <message>
        <source>Shut off</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Measured %1</source>
        <translation>Medido %1</translation>
    </message>
    <message>
        <source>Predicted %1</source>
        <translation>Previsto %1</translation>
    </message>
    <message>
        <source>Of target %</source>
        <translation>% del objetivo</translation>
    </message>
    <message>
        <source>Of design %</source>
        <translation>% del diseño</translation>
    </message>
    <message>
        <source>Valve dp %1</source>
        <translation>Δp de válvula %1</translation>
    </message>
    <message>
        <source>Pump %1 %2 at %3 %4, %5 % of full speed</source>
        <translation>Bomba %1 %2 a %3 %4, %5 % de la plena velocidad</translation>
    </message>
</context>
</TS>
