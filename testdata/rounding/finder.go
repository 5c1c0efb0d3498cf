package rounding

import (
	"cmp"
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"math"
	"slices"
)

// finder looks through the files of one package.
type finder struct {
	files *token.FileSet
	info  *types.Info
	// held are the products that a variable, a field, a parameter or the result of
	// a function holds as they are.
	held  map[types.Object][]ast.Node
	found map[ast.Node]bool // products, and names of functions
}

// exactFunctions of math give the same bits everywhere: they are exact, or
// rounded once by IEEE 754.
var exactFunctions = []string{
	"Abs", "Ceil", "Copysign", "Float32bits", "Float32frombits", "Float64bits", "Float64frombits", "Floor", "Frexp",
	"Inf", "IsInf", "IsNaN", "Ldexp", "Max", "Min", "Mod", "Modf", "NaN", "Nextafter", "Nextafter32", "Pow10",
	"Remainder", "Round", "RoundToEven", "Signbit", "Sqrt", "Trunc",
}

func newFinder(files *token.FileSet, info *types.Info) *finder {
	return &finder{files: files, info: info, held: map[types.Object][]ast.Node{}, found: map[ast.Node]bool{}}
}

func (f *finder) find(parsed []*ast.File) []Fault {
	for _, file := range parsed {
		ast.Inspect(file, f.hold)
	}
	for _, file := range parsed {
		ast.Inspect(file, f.use)
	}
	var out []Fault
	for node := range f.found {
		function := ""
		if use, ok := node.(*ast.Ident); ok {
			function = f.info.Uses[use].Pkg().Name() + "." + use.Name
		}
		out = append(out, Fault{f.files.Position(node.Pos()), f.files.Position(node.End()), function})
	}
	slices.SortFunc(out, func(a, b Fault) int {
		return cmp.Or(cmp.Compare(a.Begin.Filename, b.Begin.Filename), cmp.Compare(a.Begin.Offset, b.Begin.Offset))
	})
	return out
}

// hold notes what holds a product.
func (f *finder) hold(node ast.Node) bool {
	switch n := node.(type) {
	case *ast.AssignStmt:
		f.holdAssigned(n)
	case *ast.ValueSpec:
		for i, v := range n.Values {
			if len(n.Names) == len(n.Values) {
				f.holdValue(n.Names[i], v)
			}
		}
	case *ast.KeyValueExpr:
		f.holdValue(n.Key, n.Value)
	case *ast.FuncDecl:
		f.holdResults(n)
	case *ast.CallExpr:
		f.holdArguments(n)
	}
	return true
}

func (f *finder) holdAssigned(n *ast.AssignStmt) {
	for i, v := range n.Rhs {
		object := f.object(n.Lhs[i])
		switch {
		case n.Tok == token.MUL_ASSIGN && object != nil && f.isFloat(n.Lhs[i]) && !f.isExact(v):
			f.held[object] = append(f.held[object], n)
		case len(n.Lhs) == len(n.Rhs) && (n.Tok == token.ASSIGN || n.Tok == token.DEFINE):
			f.holdValue(n.Lhs[i], v)
		}
	}
}

func (f *finder) holdValue(holder, value ast.Expr) {
	object, product := f.object(holder), f.product(value)
	if object != nil && product != nil {
		f.held[object] = append(f.held[object], product)
	}
}

// holdArguments follows products into the parameters of functions of the package.
func (f *finder) holdArguments(n *ast.CallExpr) {
	signature, ok := f.info.TypeOf(n.Fun).(*types.Signature)
	if !ok || signature.Variadic() {
		return
	}
	for i, argument := range n.Args {
		if product := f.product(argument); product != nil && i < signature.Params().Len() {
			parameter := signature.Params().At(i)
			f.held[parameter] = append(f.held[parameter], product)
		}
	}
}

func (f *finder) holdResults(n *ast.FuncDecl) {
	if n.Body == nil {
		return
	}
	ast.Inspect(n.Body, func(node ast.Node) bool {
		if result, ok := node.(*ast.ReturnStmt); ok && len(result.Results) == 1 {
			f.holdValue(n.Name, result.Results[0])
			if n.Name.IsExported() { // other packages may add it
				f.all(result.Results)
			}
		}
		_, inner := node.(*ast.FuncLit)
		return !inner
	})
}

// isInexact reports whether an object is a function of math or math/rand whose
// bits differ from processor to processor.
func (f *finder) isInexact(object types.Object) bool {
	function, ok := object.(*types.Func)
	if !ok || function.Pkg() == nil {
		return false
	}
	switch function.Pkg().Path() {
	case "math":
		return !slices.Contains(exactFunctions, function.Name())
	case "math/rand", "math/rand/v2":
		return function.Name() == "NormFloat64" || function.Name() == "ExpFloat64"
	}
	return false
}

// use notes the products that are added or subtracted, and functions.
func (f *finder) use(node ast.Node) bool {
	switch n := node.(type) {
	case *ast.BinaryExpr:
		if n.Op == token.ADD || n.Op == token.SUB {
			f.term(n.X)
			f.term(n.Y)
		}
	case *ast.Ident:
		if f.isInexact(f.info.Uses[n]) {
			f.found[n] = true
		}
	case *ast.CompositeLit:
		f.all(n.Elts)
	case *ast.ReturnStmt:
		if len(n.Results) > 1 {
			f.all(n.Results)
		}
	case *ast.AssignStmt:
		if n.Tok == token.ADD_ASSIGN || n.Tok == token.SUB_ASSIGN {
			f.term(n.Lhs[0])
			f.term(n.Rhs[0])
		}
	}
	return true
}

// all notes products that are kept where they cannot be followed: as coordinates
// of a point, or as one of several results.
func (f *finder) all(list []ast.Expr) {
	for _, e := range list {
		if product := f.product(e); product != nil {
			f.found[product] = true
		}
	}
}

func (f *finder) term(e ast.Expr) {
	if product := f.product(e); product != nil {
		f.found[product] = true
		return
	}
	e = bare(e)
	if call, ok := e.(*ast.CallExpr); ok {
		e = call.Fun
	}
	if object := f.object(e); object != nil {
		for _, product := range f.held[object] {
			f.found[product] = true
		}
	}
}

// product returns a product that is not exact, or nil for any other expression.
func (f *finder) product(e ast.Expr) ast.Node {
	e = bare(e)
	n, ok := e.(*ast.BinaryExpr)
	if !ok || n.Op != token.MUL || !f.isFloat(n) || f.info.Types[n].Value != nil || f.isExact(n.X) || f.isExact(n.Y) {
		return nil
	}
	return n
}

func (f *finder) isFloat(e ast.Expr) bool {
	t := f.info.TypeOf(e)
	if t == nil {
		return false
	}
	basic, ok := t.Underlying().(*types.Basic)
	return ok && basic.Info()&types.IsFloat != 0
}

// isExact reports whether a factor is a constant power of two, or its negative.
func (f *finder) isExact(e ast.Expr) bool {
	value := f.info.Types[e].Value
	if value == nil {
		return false
	}
	v, _ := constant.Float64Val(constant.ToFloat(value))
	part, _ := math.Frexp(math.Abs(v))
	return part == 0.5
}

func (f *finder) object(e ast.Expr) types.Object {
	switch n := bare(e).(type) {
	case *ast.Ident:
		if object := f.info.Defs[n]; object != nil {
			return object
		}
		return f.info.Uses[n]
	case *ast.SelectorExpr:
		return f.info.Uses[n.Sel]
	}
	return nil
}

// bare is an expression without parentheses and signs.
func bare(e ast.Expr) ast.Expr {
	for {
		switch n := e.(type) {
		case *ast.ParenExpr:
			e = n.X
		case *ast.UnaryExpr:
			if n.Op != token.SUB && n.Op != token.ADD {
				return e
			}
			e = n.X
		default:
			return e
		}
	}
}
