package store

// format of an entry. It changes when a field goes or means another thing; entries of
// another format count as none.
const format = 2

// Search is what a search depends on beside its problem.
type Search struct {
	Seed   uint64 `json:"seed"`
	Effort string `json:"effort"`
	Passes int    `json:"passes"`
}

type file struct {
	Format    int       `json:"format_version"`
	Signature string    `json:"signature"`
	Searched  []Search  `json:"searched"`
	Lays      []keptLay `json:"lays"`
}

type keptLay struct {
	Lay      string  `json:"lay"`
	FoldedIn float64 `json:"folded_in_mm"`
	// OnPlain says that it is laid without the repeat of the cloth.
	OnPlain bool `json:"on_plain,omitempty"`
	// Along and Across are the places of match points on a repeat, mm.
	Along  []place `json:"along,omitempty"`
	Across []place `json:"across,omitempty"`
	Pieces []piece `json:"pieces"`
}

// place of something on a repeat; what that is as lay.Node has it.
type place struct {
	Kind  uint8   `json:"kind"`
	Index int     `json:"index"`
	Name  string  `json:"name"`
	At    float64 `json:"at_mm"`
}

type piece struct {
	Name     string  `json:"name"`
	Garment  string  `json:"garment"`
	Size     string  `json:"size"`
	Part     int     `json:"part"`
	OnFold   bool    `json:"on_fold"`
	Mirrored bool    `json:"mirrored"`
	Turn     float64 `json:"turn_deg"`
	X        float64 `json:"x_mm"`
	Y        float64 `json:"y_mm"`
}
