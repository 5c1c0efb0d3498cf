package measure

import "math/big"

// inchesPerFoot: a foot is a third of a yard [source.YardAndPound].
const inchesPerFoot = 12

// parseFeet reads feet and inches, as bodies are measured in some places. The
// parts are those of feetForm: a sign, feet, inches.
func parseFeet(text string, parts []string) (Length, error) {
	feet, fault := parseUnsigned(parts[2])
	if fault != nil {
		return 0, fault.of(text)
	}
	inches := new(big.Rat)
	if parts[3] != "" {
		if !feet.IsInt() {
			return 0, &Fault{Of: FeetNotWhole, Text: text}
		}
		if inches, fault = parseUnsigned(parts[3]); fault != nil {
			return 0, fault.of(text)
		}
		if inches.Cmp(big.NewRat(inchesPerFoot, 1)) >= 0 {
			return 0, &Fault{Of: InchesPastFoot, Text: text}
		}
	}
	inches.Add(inches, feet.Mul(feet, big.NewRat(inchesPerFoot, 1)))
	mm, _ := inches.Mul(inches, big.NewRat(Inch.tenths(), 10)).Float64()
	if mm > longest {
		return 0, &Fault{Of: Longest, Text: text}
	}
	if parts[1] != "" {
		mm = -mm
	}
	return Length(mm), nil
}
