package construct

// Figure is a named length of a draft, in mm.
type Figure struct {
	Name  string // "sleeve head height"
	Value float64
}
