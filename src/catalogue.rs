//! Lists that the rest of the program is derived from: each entry is declared once, with all that is known of it.
//!
//! [`catalogue!`] declares an enum whose entries have a name and columns. An entry without one of its
//! columns does not compile, and no list of entries is written twice.

/// Declares an enum and a struct of its columns: `ALL` in order, `name`, `from_name`, and one function for each
/// column. It serialises as its name.
///
/// ```text
/// catalogue! {
///     /// A fruit.
///     pub enum Fruit: FruitEntry {
///         /// What a basket of it weighs.
///         weight: Kilograms,
///     }
///     /// Picked ripe.
///     Mango = "mango" { weight: Kilograms(12.0) };
/// }
/// ```
macro_rules! catalogue {
    (
        $(#[$meta:meta])*
        $vis:vis enum $Kind:ident: $Entry:ident { $($(#[$column_meta:meta])* $column:ident: $Column:ty),* $(,)? }
        $($(#[$variant_meta:meta])* $Variant:ident = $name:literal $({ $($given:ident: $value:expr),* $(,)? })?;)+
    ) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        $vis enum $Kind {
            $($(#[$variant_meta])* $Variant,)+
        }

        #[derive(Debug, Clone, Copy)]
        struct $Entry {
            name: &'static str,
            $($column: $Column,)*
        }

        impl $Kind {
            /// All there are, in order.
            $vis const ALL: [$Kind; [$(stringify!($Variant)),+].len()] = [$($Kind::$Variant),+];

            const fn entry(self) -> $Entry {
                match self {
                    $($Kind::$Variant => $Entry { name: $name, $($($given: $value),*)? },)+
                }
            }

            /// Its name.
            $vis const fn name(self) -> &'static str {
                self.entry().name
            }

            /// The one of this name.
            $vis fn from_name(name: &str) -> Option<Self> {
                Self::ALL.into_iter().find(|one| one.name() == name)
            }

            $(
                $(#[$column_meta])*
                $vis const fn $column(self) -> $Column {
                    self.entry().$column
                }
            )*
        }

        impl serde::Serialize for $Kind {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str(self.name())
            }
        }
    };
}

pub(crate) use catalogue;
