package draft

import "slices"

// Odd is a measurement that hardly goes with another one of the same body.
type Odd struct {
	Name, Beside Measurement
	// Value is what it is, and Usual what goes with the other one, mm.
	Value, Usual float64
	// UsualBeside is what the other one would be beside this one, where the table can
	// say it; otherwise 0.
	UsualBeside float64
}

// How far a measurement may be from what a size table has beside the bust girth, as
// shares of that: bodies differ most in the girths of the trunk, and in the shoulder,
// where the tables themselves do [source.OwnChoice]. All sizes of all tables lie
// within, each against its own table.
var proportions = []proportion{
	{[]Measurement{WaistGirth, HipGirth, UpperArmGirth}, 0.72, 1.38},
	{[]Measurement{ShoulderLength, WristGirth, AcrossFrontWidth, AcrossBackWidth}, 0.72, 1.38},
	{upright, 0.78, 1.27},
	{[]Measurement{NeckBaseGirth}, 0.78, 1.27},
}

type proportion struct {
	names       []Measurement
	least, most float64
}

// proportionOf finds that of a measurement; false where none is known.
func proportionOf(name Measurement) (proportion, bool) {
	for _, p := range proportions {
		if slices.Contains(p.names, name) {
			return p, true
		}
	}
	return proportion{}, false
}

// Odd lists the given measurements that hardly go with the bust girth, as the table of
// that name (the women's if it is empty) has it; one that is a slip is most likely among
// them, or it is the bust girth. None without a bust girth.
func (b Body) Odd(tableName string) []Odd {
	request := Request{Table: tableName}
	if _, given := b[BustGirth]; !given {
		return nil
	}
	table, _ := request.derivingTable()
	var out []Odd
	for _, name := range Measurements() {
		value, given := b[name]
		usually, known := proportionOf(name)
		if !given || !known {
			continue
		}
		usual, _, err := request.deriveFrom(b, name, BustGirth)
		if err != nil || usual <= 0 {
			continue
		}
		if ratio := value / usual; ratio >= usually.least && ratio <= usually.most {
			continue
		}
		one := Odd{Name: name, Beside: BustGirth, Value: value, Usual: usual}
		if beside, ok := table.at(BustGirth, name, value); ok && b[Height] == 0 {
			one.UsualBeside = max(beside, 0)
		}
		out = append(out, one)
	}
	return out
}
